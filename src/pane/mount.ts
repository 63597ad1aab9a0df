import type { Spreadsheet } from '../workbook/port';
import { PlanSession } from '../workbook/session';
import { keepingFocus, replaceContent } from './dom';
import { PaneState } from './pane-state';
import { sections } from './sections';
import './pane.css';

export interface MountedPane {
  /** Reads the workbook again, for hosts that have just opened another one. */
  refresh(): Promise<void>;
  dispose(): void;
}

/** An edit is read after this quiet time, so that typing stays quick. */
const SETTLE_MS = 120;

/** The task pane. It knows the port and nothing of the host behind it. */
export const mountPane = (element: HTMLElement, spreadsheet: Spreadsheet): MountedPane => {
  let disposed = false;
  let settle: ReturnType<typeof setTimeout> | undefined;
  let stopFollowing: (() => void) | undefined;

  const draw = () => {
    if (!disposed) keepingFocus(element, () => replaceContent(element, ...sections(state)));
  };
  const drawProgress = () => {
    const bar = element.querySelector('progress');
    if (!bar || !state.busy?.total) return;
    bar.max = state.busy.total;
    bar.value = state.busy.done;
  };
  const state = new PaneState(new PlanSession(spreadsheet), draw, drawProgress);

  const follow = () => {
    clearTimeout(settle);
    settle = setTimeout(() => {
      if (disposed) return;
      if (state.busy) follow();
      else void state.follow();
    }, SETTLE_MS);
  };
  void spreadsheet.onChange(follow).then((stop) => {
    if (disposed) stop();
    else stopFollowing = stop;
  });

  element.classList.add('cw-pane');
  void state.refresh();
  return {
    refresh: () => state.refresh(),
    dispose() {
      disposed = true;
      state.cancel();
      clearTimeout(settle);
      stopFollowing?.();
      replaceContent(element);
    },
  };
};
