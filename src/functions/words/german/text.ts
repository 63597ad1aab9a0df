import type { Translations } from '../wording';

export const text: Translations = {
  'Number in the stated unit that a text such as "±65 g pk", "300 µg/√Hz" or "0,5 kHz" stands for.':
    'Zahl in der angegebenen Einheit, für die ein Text wie "±65 g pk", "300 µg/√Hz" oder "0,5 kHz" steht.',
  'Cell to read. A number passes through; a text without a unit is in the stated unit.':
    'Zu lesende Zelle. Eine Zahl geht unverändert durch; ein Text ohne Einheit gilt in der angegebenen Einheit.',
  'Unit of the answer. It decides what g, mg or lb in the text mean; mass in gram.':
    'Einheit der Antwort. Sie entscheidet, was g, mg oder lb im Text bedeuten; Masse in gram (Gramm).',
  'Decimal mark of texts such as 1,250 that are a number either way; blank: such a text is refused.':
    'Dezimalzeichen von Texten wie 1,250, die so oder so eine Zahl sind; leer: Ein solcher Text wird abgelehnt.',
  'The number, in the stated unit.': 'Die Zahl, in der angegebenen Einheit.',
  'Number converted from one unit to another of the same quantity; a text may carry its own unit.':
    'Zahl, von einer Einheit in eine andere derselben Größe umgerechnet; ein Text darf seine eigene Einheit tragen.',
  'Number in the first unit, or a text; a unit in the text counts before the first unit.':
    'Zahl in der ersten Einheit, oder ein Text; eine Einheit im Text geht der ersten Einheit vor.',
  'Unit of the value. Each unit decides what g, mg or lb in the other mean.':
    'Einheit des Werts. Jede Einheit entscheidet, was g, mg oder lb in der anderen bedeuten.',
  'Unit of the answer.': 'Einheit der Antwort.',
  'The number, in the second unit.': 'Die Zahl, in der zweiten Einheit.',
};
