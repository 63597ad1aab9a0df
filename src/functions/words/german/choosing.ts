import type { Translations } from '../wording';

export const choosing: Translations = {
  'Every sensor type of a list for one channel or several, best first, each with the parts that suit it best.':
    'Jeder Aufnehmertyp einer Liste für einen oder mehrere Kanäle, der beste zuerst, jeweils mit den Teilen, die am besten zu ihm passen.',
  'The channel list with its heading row, or some rows of it below that heading.':
    'Die Kanalliste mit ihrer Kopfzeile oder einige ihrer Zeilen unter dieser Kopfzeile.',
  'What comes first among equal verdicts: the largest margin, the least mass, or the most in stock.':
    'Was bei gleichem Urteil vorn steht: die größte Reserve (margin), die kleinste Masse (mass) oder der größte Bestand (stock).',
  'Whether mount, cable and input that a row names are kept, or are free to change.':
    'Ob Ankopplung, Kabel und Eingang, die eine Zeile nennt, bleiben (kept) oder wechseln dürfen (free).',
  'How many types to show; blank: all.': 'Wie viele Typen gezeigt werden; leer: alle.',
  'A heading row and one row for each type: worst verdict over the channels, smallest margin, what limits it, the best parts for the hardest channel, added mass, verdicts, how many channels pass, number in stock.':
    'Eine Kopfzeile und je Typ eine Zeile: schlechtestes Urteil über die Kanäle, kleinste Reserve, was sie begrenzt, die besten Teile für den schwierigsten Kanal, Zusatzmasse, Urteile, wie viele Kanäle bestehen, Bestand.',
};
