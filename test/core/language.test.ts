import { languageOf } from '../../src/core/language';

// Tags as BCP 47 writes them: primary language first, subtags after hyphens, case without meaning.
test.each([
  ['de', 'de'],
  ['de-AT', 'de'],
  ['FR-ca', 'fr'],
  ['en-GB', 'en'],
  ['es-ES', 'en'],
  ['deu-DE', 'en'],
  ['', 'en'],
  [undefined, 'en'],
])('a host that speaks %p is answered in %p', (tag, language) => {
  expect(languageOf(tag)).toBe(language);
});
