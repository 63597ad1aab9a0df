/** Buttons of the grid that show a picture only, by where they are, and the words they get. */
const LABELS: readonly (readonly [string, string])[] = [
  ['[data-u-comp="defined-name"] input', 'Address of the active cell'],
  ['[data-u-comp="defined-name"] a', 'Names in this workbook'],
  ['[data-u-comp="formula-bar"] button', 'Make the formula bar taller'],
  ['[aria-haspopup="menu"] > [data-u-comp="sheet-bar-append-button"]', 'List of sheets'],
  ['[data-u-comp="sheet-bar-append-button"]', 'Add a sheet'],
];

/** The grid draws its parts late and again, so names are put on whenever it changes. */
export const nameGridButtons = (grid: HTMLElement): void => {
  const name = () => {
    for (const [selector, label] of LABELS)
      for (const found of grid.querySelectorAll(selector))
        if (!found.hasAttribute('aria-label')) found.setAttribute('aria-label', label);
  };
  new MutationObserver(name).observe(grid, { childList: true, subtree: true });
  name();
};
