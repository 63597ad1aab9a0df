import type { InLanguages, Language } from '../../core/language';
import { VERDICTS } from '../../core/verdict';
import type { ChannelCheck } from '../../plan/check';
import { envelopeOf } from '../../plan/choosing/envelope';
import type { EnvelopeBound } from '../../plan/choosing/envelope-bound';
import { askedOfSupplier, boundInWords } from '../../plan/choosing/envelope-words';
import { adviseTechnology } from '../../plan/choosing/technology';
import { adviceNotes, elementWords, standingWords, technologySentence } from '../../plan/choosing/technology-words';
import type { Advised } from '../../plan/choosing/technology-types';
import type { Limits } from '../../plan/limits';
import { make } from '../dom';
import { folded } from '../folded';
import type { PaneState } from '../pane-state';
import { verdictWord } from '../verdict-mark';

const WORDS: InLanguages<Readonly<Record<'envelope' | 'technology' | 'copy' | 'copied' | 'byHand' | 'asked', string>>> =
  {
    en: {
      envelope: 'What a sensor must satisfy here',
      technology: 'Which sensing elements remain',
      copy: 'Copy what to ask a supplier for',
      copied: 'Copied.',
      byHand: 'This host does not let the pane copy. Mark the text and copy it:',
      asked: 'Accelerometer wanted for channel',
    },
    de: {
      envelope: 'Was ein Aufnehmer hier erfüllen muss',
      technology: 'Welche Messelemente bleiben',
      copy: 'Anfrage an einen Lieferanten kopieren',
      copied: 'Kopiert.',
      byHand: 'Dieses Programm lässt das Kopieren aus dem Fenster nicht zu. Text markieren und kopieren:',
      asked: 'Gesuchter Beschleunigungsaufnehmer für Kanal',
    },
    fr: {
      envelope: 'Ce qu’un capteur doit satisfaire ici',
      technology: 'Quels éléments sensibles restent',
      copy: 'Copier la demande à un fournisseur',
      copied: 'Copié.',
      byHand: 'Ce programme ne permet pas de copier depuis le volet. Marquer le texte et le copier :',
      asked: 'Accéléromètre recherché pour la voie',
    },
  };

const ASKED = { class: 'cw-asked' };

/** What the row asks of a supplier, and what kinds of sensor can give it; made only while open. */
export const askedViews = (state: PaneState, check: ChannelCheck, limits: Limits): readonly HTMLElement[] => {
  const { language } = state;
  const words = WORDS[language];
  return [
    folded(
      state,
      'envelope',
      words.envelope,
      () => [envelopeList(check, limits, language), supplierView(check, limits, language)],
      ASKED,
    ),
    folded(state, 'technology', words.technology, () => technologyLists(check, limits, language), ASKED),
  ];
};

/** What this sensor misses comes first. */
const envelopeList = ({ channel }: ChannelCheck, limits: Limits, language: Language): HTMLElement => {
  const severity = ({ verdict }: EnvelopeBound) => VERDICTS.indexOf(verdict ?? 'PASS');
  const bounds = [...envelopeOf(channel, limits).bounds].sort((a, b) => severity(b) - severity(a));
  return make('ul', { class: 'cw-bounds' }, ...bounds.map((bound) => boundView(bound, language)));
};

const boundView = (bound: EnvelopeBound, language: Language): HTMLElement => {
  const { amount, what, why, now } = boundInWords(bound, language);
  return make(
    'li',
    {},
    make(
      'div',
      { class: 'head' },
      make('span', {}, amount === undefined ? null : make('strong', {}, `${amount} `), what),
      bound.verdict === undefined ? null : verdictWord(bound.verdict),
    ),
    now === undefined ? null : make('div', {}, now),
    why === undefined ? null : make('div', { class: 'quiet' }, why),
  );
};

/** The same as plain text for a letter; only the requirement, nothing of the plan's own choice. */
const supplierView = ({ channel }: ChannelCheck, limits: Limits, language: Language): HTMLElement => {
  const words = WORDS[language];
  const asked = askedOfSupplier(envelopeOf(channel, limits).bounds, language);
  const text = [`${words.asked} ${channel.id}:`, ...asked.map((line) => `- ${line}`)].join('\n');
  const told = make('div', { role: 'status', class: 'quiet' });
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(text);
      told.textContent = words.copied;
    } catch {
      told.replaceChildren(words.byHand, make('pre', {}, text));
    }
  };
  return make(
    'div',
    {},
    make(
      'button',
      { type: 'button', class: 'plain', 'data-key': 'copy-asked', onclick: () => void copy() },
      words.copy,
    ),
    told,
  );
};

const technologyLists = ({ channel }: ChannelCheck, limits: Limits, language: Language): readonly HTMLElement[] => {
  const advice = adviseTechnology(channel, limits);
  return [
    kindList(advice.elements, (kind) => elementWords(kind, language), language),
    kindList(advice.outputs, (kind) => kind, language),
    ...adviceNotes(advice, language).map((note) => make('p', {}, note)),
  ];
};

/** Kinds that stand alike, for the same reasons, are told together. */
const kindList = <K extends string>(
  kinds: readonly Advised<K>[],
  nameOf: (kind: K) => string,
  language: Language,
): HTMLElement => {
  const alike = new Map<string, { names: string[]; standing: string; sentences: readonly string[] }>();
  for (const { kind, standing, reasons } of kinds) {
    const sentences = reasons.map((reason) => technologySentence(reason, language));
    const key = JSON.stringify([standing, sentences]);
    const known = alike.get(key);
    if (known) known.names.push(nameOf(kind));
    else alike.set(key, { names: [nameOf(kind)], standing: standingWords(standing, language), sentences });
  }
  return make(
    'ul',
    {},
    ...[...alike.values()].map(({ names, standing, sentences }) =>
      make(
        'li',
        {},
        make('strong', {}, names.join(', ')),
        `: ${standing}`,
        sentences.length > 0 ? make('ul', {}, ...sentences.map((text) => make('li', {}, text))) : null,
      ),
    ),
  );
};
