import { element } from './elements';

const SETTLE_MS = 150;

/** Speaks the newest sentence once the selection rests. */
export const createSpeaker = (): ((sentence: () => string) => void) => {
  const region = element('speaker');
  let timer: ReturnType<typeof setTimeout> | undefined;
  return (sentence) => {
    clearTimeout(timer);
    timer = setTimeout(() => {
      region.textContent = sentence();
    }, SETTLE_MS);
  };
};
