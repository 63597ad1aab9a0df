import type { Translations } from '../wording';

export const text: Translations = {
  'Number in the stated unit that a text such as "±65 g pk", "300 µg/√Hz" or "0,5 kHz" stands for.':
    'Nombre, dans l’unité indiquée, que représente un texte comme "±65 g pk", "300 µg/√Hz" ou "0,5 kHz".',
  'Cell to read. A number passes through; a text without a unit is in the stated unit.':
    'Cellule à lire. Un nombre passe tel quel ; un texte sans unité est dans l’unité indiquée.',
  'Unit of the answer. It decides what g, mg or lb in the text mean; mass in gram.':
    'Unité de la réponse. Elle décide de ce que g, mg ou lb veulent dire dans le texte ; masse en gram (grammes).',
  'Decimal mark of texts such as 1,250 that are a number either way; blank: such a text is refused.':
    'Signe décimal des textes comme 1,250 qui sont un nombre d’une façon ou de l’autre ; vide : un tel texte est refusé.',
  'The number, in the stated unit.': 'Le nombre, dans l’unité indiquée.',
  'Number converted from one unit to another of the same quantity; a text may carry its own unit.':
    'Nombre converti d’une unité à une autre de la même grandeur ; un texte peut porter sa propre unité.',
  'Number in the first unit, or a text; a unit in the text counts before the first unit.':
    'Nombre dans la première unité, ou texte ; une unité dans le texte passe avant la première unité.',
  'Unit of the value. Each unit decides what g, mg or lb in the other mean.':
    'Unité de la valeur. Chaque unité décide de ce que g, mg ou lb veulent dire dans l’autre.',
  'Unit of the answer.': 'Unité de la réponse.',
  'The number, in the second unit.': 'Le nombre, dans la seconde unité.',
};
