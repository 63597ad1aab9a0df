import type { InLanguages } from '../../core/language';

export const HTML_WORDS: InLanguages<{
  readonly contents: string;
  readonly channels: string;
  readonly notDrawn: (count: number) => string;
}> = {
  en: {
    contents: 'Contents',
    channels: 'Channels in plots',
    notDrawn: (count) => `${count} more channels are not drawn; the channel list holds them all.`,
  },
  de: {
    contents: 'Inhalt',
    channels: 'Kanäle im Bild',
    notDrawn: (count) => `${count} weitere Kanäle sind nicht gezeichnet; die Kanalliste enthält alle.`,
  },
  fr: {
    contents: 'Sommaire',
    channels: 'Voies en images',
    notDrawn: (count) => `${count} autres voies ne sont pas dessinées ; la liste des voies les contient toutes.`,
  },
};
