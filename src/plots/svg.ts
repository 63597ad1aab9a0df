import { TEXT_SIZE, type Mark, type Plot, type Tone } from './plot';

/** For light paper; they keep their order of lightness in grey. */
const ON_PAPER: Readonly<Record<Tone, string>> = {
  ink: '#1d2423',
  quiet: '#5d6664',
  hair: '#d9d6cc',
  span: '#8fb8b4',
  wide: '#d3e3e1',
  pass: '#0b5c94',
  warn: '#8a5a00',
  fail: '#b23a0e',
  incomplete: '#5a5a58',
};

export interface SvgElement {
  readonly tag: 'line' | 'rect' | 'polyline' | 'text';
  readonly attributes: Readonly<Record<string, string | number | undefined>>;
  readonly text?: string;
}

const round = (value: number): number => Math.round(value * 100) / 100;

/** A mark as an SVG element. Colours are plain attributes, so that a page's own style sheet may say otherwise. */
export const elementOf = (mark: Mark): SvgElement => {
  const tone = { class: `tone-${mark.tone}` };
  const colour = ON_PAPER[mark.tone];
  switch (mark.kind) {
    case 'line': {
      const { x1, y1, x2, y2, width = 1, dashed } = mark;
      const ends = { x1: round(x1), y1: round(y1), x2: round(x2), y2: round(y2) };
      const stroke = { stroke: colour, 'stroke-width': width, 'stroke-dasharray': dashed ? '3 2' : undefined };
      return { tag: 'line', attributes: { ...tone, ...ends, ...stroke } };
    }
    case 'rect': {
      const { x, y, width, height } = mark;
      const box = { x: round(x), y: round(y), width: round(Math.max(0, width)), height: round(height) };
      return { tag: 'rect', attributes: { ...tone, ...box, fill: colour } };
    }
    case 'path': {
      const points = mark.points.map(([x, y]) => `${round(x)},${round(y)}`).join(' ');
      const stroke = { fill: 'none', stroke: colour, 'stroke-width': mark.width ?? 1.5 };
      return { tag: 'polyline', attributes: { ...tone, points, ...stroke } };
    }
    case 'text': {
      const { x, y, anchor = 'start', bold, text } = mark;
      const place = { x: round(x), y: round(y), 'text-anchor': anchor, 'font-size': TEXT_SIZE };
      return {
        tag: 'text',
        attributes: { ...tone, ...place, fill: colour, 'font-weight': bold ? 600 : undefined },
        text,
      };
    }
  }
};

export const escapeXml = (text: string): string =>
  text
    // Letters that no XML document may hold.
    .replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/g, '')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
    .replaceAll("'", '&#39;');

const written = ({ tag, attributes, text }: SvgElement): string => {
  const said = Object.entries(attributes)

    .map(([name, value]) => (value === undefined ? '' : ` ${name}="${escapeXml(String(value))}"`))
    .join('');
  return text === undefined ? `<${tag}${said}/>` : `<${tag}${said}>${escapeXml(text)}</${tag}>`;
};

/** The plot as a text of SVG 1.1, for a page that is written to a file. */
export const svgText = ({ width, height, title, inWords, marks }: Plot): string =>
  [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}"`,
    ` role="img" font-family="system-ui, 'Segoe UI', sans-serif">`,
    `<title>${escapeXml(title)}</title><desc>${escapeXml(inWords)}</desc>`,
    ...marks.map((mark) => written(elementOf(mark))),
    '</svg>',
  ].join('');
