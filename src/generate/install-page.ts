import type { Language } from '../core/language';
import { INSTALL_WORDS } from './install-words';
import { html, linked, points, staticPage, steps } from './static-page';

/** How one person, a team and an organisation get the add-in, a new version of it, and rid of it. */
export const installPage = (language: Language): string => {
  const { title, lead, sections } = INSTALL_WORDS[language];
  const body = sections.map(({ heading, before, steps: todo, points: facts }) =>
    [
      `<h2>${html(heading)}</h2>`,
      ...(before ? [`<p>${linked(before)}</p>`] : []),
      ...(todo ? [steps(todo)] : []),
      ...(facts ? [points(facts)] : []),
    ].join('\n'),
  );
  return staticPage('install', language, {
    title,
    body: [...lead.map((text) => `<p>${linked(text)}</p>`), ...body].join('\n'),
  });
};
