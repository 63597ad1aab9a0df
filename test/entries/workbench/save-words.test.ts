import { SAVE_WORDS, savedWords } from '../../../src/entries/workbench/save-words';

const SAVED = { bytes: new Uint8Array(), counts: { edited: 3, renewed: 1, own: 40, looks: 2 }, added: ['Summary', 'W001'], stale: ['A!B2', 'A!B3', 'A!B4', 'A!B5', 'A!B6', 'A!B7'], told: ['As the editor says.'] }; // prettier-ignore
const numerals = (text: string) => (text.match(/\d+/g) ?? []).sort();
const ENGLISH = /\b(the|and|were|was|cells?|yours|sheets?|rows|columns|workbook|with|saved)\b/i;

it('tells what was saved, what keeps its old value and what the copy leaves as it was', () => {
  const said = savedWords('Plan (planned).xlsx', SAVED, ['sizes', 'frozen'], 'en');
  expect(said).toBe(
    'Saved Plan (planned).xlsx: 3 cells of yours changed, 40 cells of ours written. 2 cells of yours look as here. ' +
      'New sheets: Summary, W001. 1 formula of yours has its new value. The copy keeps these as they are in the file, ' +
      'although they were changed here: widths, heights and hidden rows or columns, frozen panes. As the editor says. ' +
      'A!B2, A!B3, A!B4, A!B5, A!B6 and 1 more: formulas that read changed cells and cannot be worked out here keep ' +
      'their old values until a spreadsheet program renews them.',
  );
});

it.each(['de', 'fr'] as const)('says the same in %s', (language) => {
  const words = SAVE_WORDS[language];
  const said = savedWords('Plan.xlsx', { ...SAVED, told: [] }, ['notes'], language);
  expect(numerals(said)).toEqual(numerals(savedWords('Plan.xlsx', { ...SAVED, told: [] }, ['notes'], 'en')));
  const changes = [
    ...(['rows', 'columns'] as const).flatMap((what) => (['inserted', 'removed', 'moved'] as const).map((how) => ({ what, how, sheet: 'Q' }))), // prettier-ignore
    ...(['sheet', 'merges'] as const).map((what) => ({ what, sheet: 'Q' })),
  ].map(words.restructured);
  expect(new Set(changes).size).toBe(8);
  const all = [said.replace('Summary, W001', ''), ...changes, ...Object.values(words.beside), ...Object.values(words.lost), words.savedNew('x')]; // prettier-ignore
  expect(all.filter((text) => ENGLISH.test(text))).toEqual([]);
});
