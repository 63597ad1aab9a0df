import type { PageText } from './page-words';

/** Buttons of the grid that show a picture only, by where they are, and the words they get. */
const LABELS: readonly (readonly [string, PageText])[] = [
  ['[data-u-comp="defined-name"] input', 'cellAddress'],
  ['[data-u-comp="defined-name"] a', 'names'],
  ['[data-u-comp="formula-bar"] button', 'tallerFormula'],
  ['[aria-haspopup="menu"] > [data-u-comp="sheet-bar-append-button"]', 'sheetList'],
  ['[data-u-comp="sheet-bar-append-button"]', 'addSheet'],
];

/** The grid draws its parts late and again, so names are put on whenever it changes. */
export const nameGridButtons = (grid: HTMLElement, texts: Readonly<Record<PageText, string>>): void => {
  const name = () => {
    for (const [selector, label] of LABELS)
      for (const found of grid.querySelectorAll(selector))
        if (!found.hasAttribute('aria-label')) found.setAttribute('aria-label', texts[label]);
  };
  new MutationObserver(name).observe(grid, { childList: true, subtree: true });
  name();
};
