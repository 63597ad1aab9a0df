import { make } from './dom';
import type { PaneState } from './pane-state';

interface Fold {
  /** Said in lighter ink beside the title. */
  readonly note?: string;
  readonly class?: string;
  readonly openAtFirst?: boolean;
}

/** A part that opens on demand; its content is made only while it is open. */
export const folded = (
  state: PaneState,
  key: string,
  title: string,
  content: () => readonly (HTMLElement | null)[],
  { note, class: name, openAtFirst = false }: Fold = {},
): HTMLDetailsElement => {
  const open = state.isOpen(key, openAtFirst);
  const section = make(
    'details',
    { open, class: name },
    make(
      'summary',
      { 'data-key': key },
      title,
      note === undefined ? null : make('span', { class: 'quiet' }, ` ${note}`),
    ),
    ...(open ? content() : []),
  );
  section.addEventListener('toggle', () => {
    if (section.open !== open) state.setOpen(key, section.open);
  });
  return section;
};
