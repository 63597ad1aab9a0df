import type { Translations } from '../wording';

export const choosing: Translations = {
  'Every sensor type of a list for one channel or several, best first, each with the parts that suit it best.':
    'Chaque type de capteur d’une liste pour une ou plusieurs voies, le meilleur d’abord, avec les éléments qui lui conviennent le mieux.',
  'The channel list with its heading row, or some rows of it below that heading.':
    'La liste des voies avec sa ligne d’en-tête, ou quelques-unes de ses lignes sous cet en-tête.',
  'What comes first among equal verdicts: the largest margin, the least mass, or the most in stock.':
    'Ce qui passe d’abord à verdict égal : la plus grande marge (margin), la plus petite masse (mass) ou le plus grand stock (stock).',
  'Whether mount, cable and input that a row names are kept, or are free to change.':
    'Si la fixation, le câble et l’entrée que nomme une ligne restent (kept) ou peuvent changer (free).',
  'How many types to show; blank: all.': 'Combien de types montrer ; vide : tous.',
  'A heading row and one row for each type: worst verdict over the channels, smallest margin, what limits it, the best parts for the hardest channel, added mass, verdicts, how many channels pass, number in stock.':
    'Une ligne d’en-tête et une ligne par type : pire verdict sur les voies, plus petite marge, ce qui la limite, les meilleurs éléments pour la voie la plus difficile, masse ajoutée, verdicts, combien de voies passent, nombre en stock.',
};
