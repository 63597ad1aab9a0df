import { element } from './elements';

const FOCUSABLE = 'button:not(:disabled), input:not(:disabled), select, textarea, a[href], [tabindex="0"]';

/** F6 and Ctrl+F6 move between the grid, which keeps the Tab key for itself, and the pane. */
export const letF6Move = (focusGrid: () => void): void => {
  const pane = element('pane');
  const focusPane = () => {
    if (document.body.classList.contains('is-pane-hidden')) element('pane-toggle').click();
    (pane.querySelector<HTMLElement>(FOCUSABLE) ?? pane).focus();
  };
  window.addEventListener(
    'keydown',
    (event) => {
      if (event.key !== 'F6' || event.altKey || event.metaKey) return;
      event.preventDefault();
      event.stopPropagation();
      if (pane.contains(document.activeElement)) focusGrid();
      else focusPane();
    },
    true,
  );
};

/** Ctrl+S, or ⌘S, wherever the focus is; the browser's own saving of the page makes no sense here. */
export const onSaveKey = (save: () => void): void =>
  window.addEventListener(
    'keydown',
    (event) => {
      if (event.key.toLowerCase() !== 's' || !(event.ctrlKey || event.metaKey) || event.altKey || event.shiftKey)
        return;
      event.preventDefault();
      event.stopPropagation();
      if (!event.repeat) save();
    },
    true,
  );
