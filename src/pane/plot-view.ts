import type { InLanguages, Language } from '../core/language';
import type { Plot } from '../plots/plot';
import { elementOf } from '../plots/svg';
import { make } from './dom';
import './plots.css';

/** What fits the narrowest pane; wider ones keep it, for a stretched plot has stretched letters. */
export const PLOT_WIDTH = 288;

const SVG = 'http://www.w3.org/2000/svg';

const WORDS: InLanguages<string> = { en: 'The same in words', de: 'Dasselbe in Worten', fr: 'La même chose en mots' };

const shape = (tag: string, attributes: Readonly<Record<string, string | number | undefined>>): SVGElement => {
  const element = document.createElementNS(SVG, tag);
  for (const [name, value] of Object.entries(attributes))
    if (value !== undefined) element.setAttribute(name, String(value));
  return element;
};

/** A plot with its title, and its text equivalent on demand. */
export const plotView = ({ width, height, title, inWords, marks }: Plot, language: Language): HTMLElement => {
  const drawing = shape('svg', {
    viewBox: `0 0 ${width} ${height}`,
    width,
    height,
    role: 'img',
    'aria-label': `${title}. ${inWords}`,
  });
  for (const mark of marks) {
    const { tag, attributes, text } = elementOf(mark);
    const element = shape(tag, attributes);
    if (text !== undefined) element.textContent = text;
    drawing.append(element);
  }
  return make(
    'figure',
    { class: 'cw-plot' },
    make('figcaption', {}, title),
    drawing,
    make('details', {}, make('summary', {}, WORDS[language]), make('p', {}, inWords)),
  );
};
