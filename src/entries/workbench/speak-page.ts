import type { Language } from '../../core/language';
import { element } from './elements';
import { PAGE_WORDS, type PageText } from './page-words';

/** Puts the page itself into a language: texts where `data-word` stands, names of parts where `data-label` does. */
export const speakPage = (language: Language): void => {
  const { texts } = PAGE_WORDS[language];
  document.documentElement.lang = language;
  for (const found of document.querySelectorAll<HTMLElement>('[data-word]'))
    found.textContent = texts[found.dataset['word'] as PageText];
  for (const found of document.querySelectorAll<HTMLElement>('[data-label]'))
    found.setAttribute('aria-label', texts[found.dataset['label'] as PageText]);
  if (language !== 'en') element<HTMLAnchorElement>('help').href = `help.${language}.html`;
};
