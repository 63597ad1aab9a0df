/** Buttons of the grid that show a picture only, by where they are, and the words they get. */
const LABELS: readonly (readonly [string, string])[] = [
  ['[data-u-comp="sheet-bar"] button:nth-of-type(1)', 'Add a sheet'],
  ['[data-u-comp="sheet-bar"] button:nth-of-type(2)', 'List of sheets'],
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
