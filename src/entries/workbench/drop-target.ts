import { element } from './elements';

const hasFiles = (event: DragEvent): boolean => event.dataTransfer?.types.includes('Files') ?? false;

/** The whole page takes a dropped file and shows so while one is over it. */
export const listenForDrops = (open: (files: readonly File[]) => void): void => {
  const target = element('drop');
  let depth = 0;
  const show = (visible: boolean) => {
    target.hidden = !visible;
    if (!visible) depth = 0;
  };
  const on = (name: 'dragenter' | 'dragover' | 'dragleave' | 'drop', act: (event: DragEvent) => void) =>
    // In the capture phase, or the grid would take the event for itself.
    window.addEventListener(
      name,
      (event) => {
        if (!hasFiles(event)) return;
        event.preventDefault();
        event.stopPropagation();
        act(event);
      },
      true,
    );
  on('dragenter', () => {
    depth += 1;
    show(true);
  });
  on('dragover', (event) => {
    if (event.dataTransfer) event.dataTransfer.dropEffect = 'copy';
  });
  on('dragleave', () => {
    depth -= 1;
    if (depth <= 0) show(false);
  });
  on('drop', (event) => {
    show(false);
    open([...(event.dataTransfer?.files ?? [])]);
  });
};
