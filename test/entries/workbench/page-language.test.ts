import { pageLanguage } from '../../../src/entries/workbench/page-language';

it.each([
  ['', 'de-CH', 'de'],
  ['', 'fr', 'fr'],
  ['', 'it-IT', 'en'],
  ['', undefined, 'en'],
  ['?lang=fr', 'de-DE', 'fr'],
  ['?other=1&lang=en', 'de-DE', 'en'],
])('with the address "%s" and a browser set to %s the page speaks %s', (search, preferred, language) => {
  expect(pageLanguage(search, preferred)).toBe(language);
});
