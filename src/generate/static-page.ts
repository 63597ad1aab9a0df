import type { InLanguages, Language } from '../core/language';
import { LANGUAGES } from '../core/language';

/** A page without scripts: nothing on it runs, and it loads its style sheet and its icon from beside it only. */
export interface StaticPage {
  readonly title: string;
  readonly body: string;
}

const NAMES: InLanguages<string> = { en: 'English', de: 'Deutsch', fr: 'Français' };
const POLICY = "default-src 'none'; style-src 'self'; img-src 'self'; base-uri 'none'; form-action 'none'";

export const html = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');
export const code = (text: string): string => `<code>${html(text)}</code>`;
export const paragraphs = (texts: readonly string[]): string => texts.map((text) => `<p>${html(text)}</p>`).join('\n');

/** `text with [words](page.html)` as text with links; other signs are shown as they are. */
export const linked = (text: string): string =>
  html(text)
    .replace(/\[([^\]]+)\]\(([\w.#/-]+)\)/g, '<a href="$2">$1</a>')
    .replace(/`([^`]+)`/g, '<code>$1</code>');
export const steps = (texts: readonly string[]): string =>
  `<ol>\n${texts.map((text) => `<li>${linked(text)}</li>`).join('\n')}\n</ol>`;
export const points = (texts: readonly string[]): string =>
  `<ul>\n${texts.map((text) => `<li>${linked(text)}</li>`).join('\n')}\n</ul>`;

/** "help" in German is help.de.html; English has the plain name. */
export const fileOf = (name: string, language: Language): string =>
  language === 'en' ? `${name}.html` : `${name}.${language}.html`;

const languageLinks = (name: string, current: Language): string =>
  LANGUAGES.map((language) =>
    language === current
      ? `<span lang="${language}" aria-current="true">${NAMES[language]}</span>`
      : `<a lang="${language}" hreflang="${language}" href="${fileOf(name, language)}">${NAMES[language]}</a>`,
  ).join('\n');

export const staticPage = (name: string, language: Language, { title, body }: StaticPage): string => `<!doctype html>
<html lang="${language}">
  <head>
    <meta charset="utf-8" />
    <meta name="viewport" content="width=device-width, initial-scale=1" />
    <meta http-equiv="Content-Security-Policy" content="${POLICY}" />
    <meta name="color-scheme" content="light dark" />
    <title>${html(title)}</title>
    <link rel="icon" href="icon.svg" type="image/svg+xml" />
    <link rel="stylesheet" href="pages.css" />
  </head>
  <body>
    <header>
      <p class="name">Channelwright</p>
      <nav class="languages" aria-label="Language">
${languageLinks(name, language)}
      </nav>
    </header>
    <main>
<h1>${html(title)}</h1>
${body}
    </main>
  </body>
</html>
`;
