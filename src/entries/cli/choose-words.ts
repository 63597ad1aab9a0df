import type { InLanguages } from '../../core/language';

interface ChooseWords {
  readonly headings: readonly [string, string, string, string, string];
  readonly channels: (names: string, more: number, count: number) => string;
  readonly together: (names: string, more: number, count: number) => string;
  readonly fitting: (types: number, of: number) => string;
  readonly nothing: string;
  readonly only: string;
  readonly unread: string;
  readonly more: (types: number) => string;
  readonly margins: string;
}

export const CHOOSE_WORDS: InLanguages<ChooseWords> = {
  en: {
    headings: ['Sensor type', 'Verdict', 'Margin', 'Added mass', 'With'],
    channels: (names, more, count) =>
      `${count === 1 ? 'Channel' : `${count} channels that ask the same:`} ${names}${more > 0 ? ` and ${more} more` : ''}`,
    together: (names, more, count) => `One type for ${count} channels: ${names}${more > 0 ? ` and ${more} more` : ''}`,
    fitting: (types, of) => `${types} of ${of} types PASS here.`,
    nothing: 'Nothing fits. What stands against each other, and what would help:',
    only: 'Only with a warning. What would let something PASS:',
    unread: 'Could not be read; counts as not known',
    more: (types) => `${types} more types; a larger --top shows them.`,
    margins: 'Margin: 0 dB is the limit for PASS, +6 dB twice as good. Common practice has no such scale; it is ours.',
  },
  de: {
    headings: ['Aufnehmertyp', 'Urteil', 'Reserve', 'Zusatzmasse', 'Mit'],
    channels: (names, more, count) =>
      `${count === 1 ? 'Kanal' : `${count} Kanäle mit gleicher Anforderung:`} ${names}${more > 0 ? ` und ${more} weitere` : ''}`,
    together: (names, more, count) => `Ein Typ für ${count} Kanäle: ${names}${more > 0 ? ` und ${more} weitere` : ''}`,
    fitting: (types, of) => `${types} von ${of} Typen mit PASS.`,
    nothing: 'Nichts passt. Was einander entgegensteht, und was helfen würde:',
    only: 'Nur mit Warnung. Womit etwas PASS erreichen würde:',
    unread: 'Nicht lesbar; gilt als nicht bekannt',
    more: (types) => `${types} weitere Typen; ein größeres --top zeigt sie.`,
    margins: 'Reserve: 0 dB ist die Grenze für PASS, +6 dB doppelt so gut. Eine eigene Skala, keine allgemein übliche.',
  },
  fr: {
    headings: ['Type de capteur', 'Verdict', 'Marge', 'Masse ajoutée', 'Avec'],
    channels: (names, more, count) =>
      `${count === 1 ? 'Voie' : `${count} voies de même exigence :`} ${names}${more > 0 ? ` et ${more} autres` : ''}`,
    together: (names, more, count) => `Un type pour ${count} voies : ${names}${more > 0 ? ` et ${more} autres` : ''}`,
    fitting: (types, of) => `${types} types sur ${of} obtiennent PASS ici.`,
    nothing: 'Rien ne convient. Ce qui s’oppose, et ce qui aiderait :',
    only: 'Seulement avec un avertissement. Ce qui permettrait un PASS :',
    unread: 'Illisible ; compté comme non connu',
    more: (types) => `${types} autres types ; un --top plus grand les montre.`,
    margins:
      'Marge : 0 dB est la limite du PASS, +6 dB deux fois mieux. Cette échelle est la nôtre, pas un usage établi.',
  },
};
