import type { Language } from '../core/language';
import type { Spreadsheet } from '../workbook/port';
import { PlanSession } from '../workbook/session';
import { rememberingWriter } from '../workbook/remedies/written-by';
import { keepFrenchSpaces, keepingFocus, replaceContent } from './dom';
import { assignPart, type AssignPart } from './choosing/assign-part';
import { PaneState } from './pane-state';
import { PapersState } from './papers/papers-state';
import { revisionsWith } from './revisions/revisions-state';
import { remedies, RUNNING, type Remedies } from './remedies';
import { ShareState } from './share/share-state';
import { sections } from './sections';
import { PLAIN_SURROUNDINGS, type Surroundings } from './surroundings';
import './pane.css';
import './papers/papers.css';
import './revisions/revisions.css';

export interface MountedPane {
  /** Reads the workbook again, for hosts that have just opened another one. */
  refresh(): Promise<void>;
  dispose(): void;
}

/** An edit is read after this quiet time, so that typing stays quick. */
const SETTLE_MS = 120;

/** Parts that keep their elements stand between those that are drawn anew. */
const arranged = (parts: ReturnType<typeof sections>, aid: Remedies, assign: AssignPart | undefined) => {
  const [first = null, ...rest] = parts;
  return [aid.hints, first, assign?.element, ...rest.slice(0, -1), aid.element, ...rest.slice(-1)];
};

/** The task pane. It knows the port and nothing of the host behind it. */
export const mountPane = (
  element: HTMLElement,
  spreadsheet: Spreadsheet,
  language: Language,
  surroundings: Surroundings = PLAIN_SURROUNDINGS,
): MountedPane => {
  let disposed = false;
  let settle: ReturnType<typeof setTimeout> | undefined;
  let stopFollowing: (() => void) | undefined;

  const draw = () => {
    if (disposed) return;
    assign?.follow();
    const content = arranged(sections(state), aid, assign);
    keepingFocus(element, () => replaceContent(element, ...content));
    if (language === 'fr') keepFrenchSpaces(element);
  };
  const drawProgress = () => {
    const bar = element.querySelector<HTMLProgressElement>('section progress');
    if (!bar || !state.busy?.total) return;
    bar.max = state.busy.total;
    bar.value = state.busy.done;
  };
  const written = rememberingWriter(spreadsheet, RUNNING.version);
  const aid = remedies(written, language, () => void state.follow());
  const session = new PlanSession(written, language);
  const state = new PaneState(session, language, draw, drawProgress);
  state.papers = new PapersState(written, session, language, surroundings, state, draw);
  state.revisions = revisionsWith(surroundings.readPlanFile, written, session, state, draw);
  const assign = surroundings.assign && assignPart(state, written, surroundings.assign);
  state.share = new ShareState(written, session, language, surroundings, state, draw);

  const follow = () => {
    clearTimeout(settle);
    settle = setTimeout(() => {
      if (disposed) return;
      void (state.busy ? follow() : state.follow());
    }, SETTLE_MS);
  };
  void spreadsheet.onChange(follow).then((stop) => {
    if (disposed) stop();
    else stopFollowing = stop;
  });

  element.classList.add('cw-pane');
  element.lang = language;
  void Promise.all([state.refresh(), state.loadRowPart()]);
  return {
    refresh: () => {
      aid.reset();
      assign?.reset();
      return state.refresh();
    },
    dispose() {
      disposed = true;
      state.cancel();
      assign?.dispose();
      clearTimeout(settle);
      stopFollowing?.();
      replaceContent(element);
    },
  };
};
