import type { InLanguages, Language } from '../../core/language';
import type { ChannelCheck } from '../../plan/check';
import { envelopeOf } from '../../plan/choosing/envelope';
import { askedOfSupplier, envelopeSentence } from '../../plan/choosing/envelope-words';
import { adviseTechnology } from '../../plan/choosing/technology';
import { adviceNotes, elementWords, standingWords, technologySentence } from '../../plan/choosing/technology-words';
import type { Advised } from '../../plan/choosing/technology-types';
import type { Limits } from '../../plan/limits';
import { make } from '../dom';
import { folded } from '../folded';
import type { PaneState } from '../pane-state';

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

const envelopeList = ({ channel }: ChannelCheck, limits: Limits, language: Language): HTMLElement =>
  make(
    'ul',
    {},
    ...envelopeOf(channel, limits).bounds.map((bound) => make('li', {}, envelopeSentence(bound, language))),
  );

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
  const item = (name: string, { standing, reasons }: Advised<string>): HTMLElement =>
    make(
      'li',
      {},
      make('strong', {}, name),
      `: ${standingWords(standing, language)}`,
      reasons.length > 0
        ? make('ul', {}, ...reasons.map((reason) => make('li', {}, technologySentence(reason, language))))
        : null,
    );
  return [
    make('ul', {}, ...advice.elements.map((one) => item(elementWords(one.kind, language), one))),
    make('ul', {}, ...advice.outputs.map((one) => item(one.kind, one))),
    ...adviceNotes(advice, language).map((note) => make('p', {}, note)),
  ];
};
