import { make } from '../dom';
import type { AssignState } from './assign-state';

export interface AssignProgressView {
  /** Stays in the page, so that what is put in is read aloud. */
  readonly spoken: HTMLElement;
  readonly clock: HTMLElement;
  readonly bar: HTMLProgressElement;
  draw(state: AssignState): void;
}

/** How far the search is. Steps are read aloud; seconds are not. */
export const assignProgress = (title: string): AssignProgressView => {
  const spoken = make('p', { role: 'status', class: 'cw-assign-said' });
  const clock = make('p', { class: 'quiet cw-assign-clock' });
  const bar = make('progress', { class: 'cw-progress', 'aria-label': title });
  const draw = (state: AssignState): void => {
    const { running, words, pane } = state;
    bar.hidden = clock.hidden = !running;
    const text = running ? words.steps[running.progress.step] : state.said;
    if (spoken.textContent !== text) spoken.textContent = text;
    // What a result says itself need not be seen twice.
    spoken.classList.toggle('unseen', !running && (state.found !== undefined || text === ''));
    if (!running) return;
    const { done, of, gap } = running.progress;
    if (done === undefined || !of) bar.removeAttribute('value');
    else [bar.max, bar.value] = [of, done];
    const percent = new Intl.NumberFormat(pane.language, { maximumSignificantDigits: 2 });
    const facts = [
      words.elapsed(pane.count(Math.floor((performance.now() - running.start) / 1000))),
      done !== undefined && of ? words.stepOf(pane.count(done), pane.count(of)) : undefined,
      gap === undefined ? undefined : words.gap(percent.format(100 * gap)),
    ];
    clock.textContent = facts.filter(Boolean).join(' · ');
  };
  return { spoken, clock, bar, draw };
};
