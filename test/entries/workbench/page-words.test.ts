import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { PAGE_WORDS, type PageText } from '../../../src/entries/workbench/page-words';

const page = readFileSync(join(__dirname, '../../../src/entries/workbench.html'), 'utf8');
const plain = (text: string) => text.replace(/\s+/g, ' ').trim();
const texts = [...page.matchAll(/data-word="(\w+)"[^>]*>([^<]*)</g)].map(([, word, text]) => [word as PageText, plain(text!)] as const); // prettier-ignore
const labels = [...page.matchAll(/<\w+[^>]*\sdata-label="(\w+)"[^>]*>/g)].map(([tag, word]) => [word as PageText, /aria-label="([^"]+)"/.exec(tag)![1]!] as const); // prettier-ignore

it('says in English what the page says before its script runs', () => {
  expect(texts.length).toBeGreaterThan(15);
  expect(labels.length).toBeGreaterThan(3);
  for (const [word, text] of [...texts, ...labels]) expect([word, PAGE_WORDS.en.texts[word]]).toEqual([word, text]);
});

it.each(['de', 'fr'] as const)('has every text in %s, none left in English', (language) => {
  for (const [word, english] of Object.entries(PAGE_WORDS.en.texts)) {
    const said = PAGE_WORDS[language].texts[word as PageText];
    expect([word, said.length > 0 && said !== english]).toEqual([word, true]);
    expect([word, /\b(the|workbook|sheet|pane|file)\b/i.exec(said)]).toEqual([word, null]);
  }
});
