import { PARTS } from '../../plan/choosing/candidate';
import { limitText } from '../../plan/choosing/candidate-reasons';
import { marginWords, massWords } from '../../plan/choosing/candidate-words';
import type { Candidate } from '../../plan/choosing/rank';
import { countsWords, nowWords, openWords, worstWords } from '../../plan/choosing/rank-several';
import type { WaysOut } from '../../plan/choosing/relax';
import { answerSentence } from '../../plan/choosing/relax-answer-words';
import { conflictSentence, relaxationSentence, unknownSentence } from '../../plan/choosing/relax-words';
import type { Limits } from '../../plan/limits';
import { levelLadder } from '../../plots/level-ladder';
import { spanBar } from '../../plots/span-bar';
import { thermalStrip } from '../../plots/thermal-strip';
import { make } from '../dom';
import type { PaneState } from '../pane-state';
import { PLOT_WIDTH, plotView } from '../plot-view';
import { verdictWord } from '../verdict-mark';
import { CANDIDATE_ORDERS, type CandidateOrder } from '../../plan/choosing/rank-order';
import { FILTERS, type ChooseState, type Target } from './choose-state';
import { CHOOSE_PANE_WORDS, type ChoosePaneWords } from './choose-words';

/** Types shown at first; the rest on request. */
const FIRST = 5;
/** More than this in one plot is no longer compared. */
const MOST_COMPARED = 3;

/** The part of an open row in which a sensor is chosen for it, or for several rows at once. */
export const chooseView = (state: PaneState, choose: ChooseState): HTMLElement => {
  const words = CHOOSE_PANE_WORDS[state.language];
  return make(
    'section',
    { class: 'cw-choose', 'aria-label': words.title },
    make('h3', {}, words.title),
    targetView(state, choose, words),
    freeView(choose, words),
    make(
      'div',
      { class: 'cw-actions' },
      make(
        'button',
        {
          type: 'button',
          class: 'plain',
          'data-key': 'rank',
          'aria-disabled': choose.isBusy ? 'true' : undefined,
          onclick: () => void state.rank(),
        },
        choose.isBusy ? words.ranking : words.rank,
      ),
      choose.isBusy ? make('progress', { class: 'cw-progress', 'aria-label': words.ranking }) : null,
    ),
    choose.hasNoRows ? make('p', { class: 'cw-message', role: 'alert' }, words.noneSelected) : null,
    ...resultViews(state, choose, words),
  );
};

const targetView = (state: PaneState, choose: ChooseState, words: ChoosePaneWords): HTMLElement => {
  const label: Readonly<Record<Target, string>> = {
    row: words.thisRow,
    part: words.part(choose.part, state.count(choose.rowsOf('part').length)),
    shown: words.shown(state.count(choose.rowsOf('shown').length)),
    selected: words.selected,
  };
  const targets: readonly Target[] =
    choose.part === '' ? ['row', 'shown', 'selected'] : ['row', 'part', 'shown', 'selected'];
  return make(
    'p',
    {},
    make('label', { for: 'cw-choose-target' }, `${words.target} `),
    make(
      'select',
      {
        id: 'cw-choose-target',
        'data-key': 'choose-target',
        onchange: (event) => choose.setTarget((event.target as HTMLSelectElement).value as Target),
      },
      ...targets.map((target) => make('option', { value: target, selected: target === choose.target }, label[target])),
    ),
  );
};

const freeView = (choose: ChooseState, words: ChoosePaneWords): HTMLElement =>
  make(
    'fieldset',
    {},
    make('legend', {}, words.free),
    ...PARTS.map((part) =>
      make(
        'label',
        {},
        make('input', {
          type: 'checkbox',
          'data-key': `free-${part}`,
          checked: choose.free.has(part),
          onchange: (event) => choose.setFree(part, (event.target as HTMLInputElement).checked),
        }),
        ` ${words.parts[part]}`,
      ),
    ),
  );

const resultViews = (
  state: PaneState,
  choose: ChooseState,
  words: ChoosePaneWords,
): readonly (HTMLElement | null)[] => {
  const { candidates, ways } = choose;
  const limits = state.session.source.judged?.limits;
  if (!candidates || !limits) return [];
  const passing = candidates.filter(({ verdict }) => verdict === 'PASS').length;
  const { listed } = choose;
  const shown = choose.isLong ? listed : listed.slice(0, FIRST);
  const rest = listed.length - shown.length;
  return [
    make(
      'p',
      { class: 'quiet' },
      `${words.fitting(state.count(passing), state.count(candidates.length))} ${words.marginNote}`,
    ),
    candidates[0]?.verdict === 'PASS' ? null : waysView(state, ways, openTitle(state, choose, candidates, words)),
    sieveView(choose, words),
    listed.length === 0 ? make('p', { class: 'quiet' }, words.noneLeft) : null,
    make('ol', { class: 'cw-candidates' }, ...shown.map((one) => candidateView(state, choose, one, limits, words))),
    make(
      'div',
      { class: 'cw-actions' },
      rest > 0
        ? make('button', { type: 'button', class: 'plain', 'data-key': 'candidates-more', onclick: () => choose.showAll() }, words.more(state.count(rest))) // prettier-ignore
        : null,
      make('button', { type: 'button', class: 'plain', 'data-key': 'candidates-plots', 'aria-expanded': String(choose.hasPlots), onclick: () => choose.showPlots() }, words.plots), // prettier-ignore
    ),
    choose.hasPlots ? comparedView(state, listed.slice(0, MOST_COMPARED), limits) : null,
  ];
};

/** Order and kinds of the types that are listed. */
const sieveView = (choose: ChooseState, words: ChoosePaneWords): HTMLElement => {
  const picker = (
    key: string,
    label: string,
    chosen: string,
    options: readonly (readonly [string, string])[],
    pick: (value: string) => void,
  ) =>
    // prettier-ignore
    make(
      'label',
      {},
      make('span', { class: 'quiet' }, `${label} `),
      make(
        'select',
        { 'data-key': `sieve-${key}`, onchange: (event) => pick((event.target as HTMLSelectElement).value) },
        ...options.map(([value, text]) => make('option', { value, selected: value === chosen }, text)),
      ),
    );
  return make(
    'div',
    { class: 'cw-sieve' },
    picker(
      'order',
      words.order,
      choose.order,
      CANDIDATE_ORDERS.map((order) => [order, words.orders[order]]),
      (order) => choose.setOrder(order as CandidateOrder),
    ),
    ...FILTERS.flatMap((filter) => {
      const kinds = choose.wordsOf(filter);
      if (kinds.length < 2) return [];
      const options = [['', words.any] as const, ...kinds.map((kind) => [kind, kind] as const)];
      return [
        picker(filter, words.filters[filter], choose.filters[filter], options, (word) =>
          choose.setFilter(filter, word),
        ),
      ];
    }),
  );
};

const openTitle = (
  { language }: PaneState,
  { channels }: ChooseState,
  candidates: readonly Candidate[],
  words: ChoosePaneWords,
): string => {
  if (channels.length > 1) return openWords(candidates, channels, language);
  return candidates[0]?.verdict === 'WARN' ? words.onlyWarn : words.nothing;
};

const waysView = ({ language }: PaneState, ways: WaysOut | undefined, title: string): HTMLElement => {
  if (!ways) return make('div', { class: 'cw-message note' }, title);
  const sentences = [
    ...(ways.unknown.length > 0 ? [unknownSentence(ways.unknown, language)] : []),
    ...ways.conflicts.map((conflict) => conflictSentence(conflict, language)),
    ...ways.relaxations.map((relaxation) => relaxationSentence(relaxation, language)),
    ...ways.answers.map((answer) => answerSentence(answer, language)),
  ];
  return make(
    'div',
    { class: 'cw-message note' },
    title,
    make('ul', {}, ...sentences.map((text) => make('li', {}, text))),
  );
};

const candidateView = (
  state: PaneState,
  choose: ChooseState,
  candidate: Candidate,
  limits: Limits,
  words: ChoosePaneWords,
): HTMLElement => {
  const { language } = state;
  const { sensor, verdict, margin, mass, worst } = candidate;
  const { mount, cable, input } = worst.combination;
  const parts = [mount, cable, input].flatMap((part) => (part ? [part.name] : [])).join(' · ');
  const why = limitText(worst, limits, language);
  const { channels } = choose;
  const count = channels.length;
  const counted = countsWords(candidate, channels, language);
  const facts = [
    `${words.margin} ${marginWords(margin, language)}`,
    mass === undefined ? undefined : `${words.added} ${massWords(mass, language)}`,
    nowWords(candidate, channels, language),
  ];
  return make(
    'li',
    {},
    make('div', { class: 'head' }, make('strong', {}, sensor.name), verdictWord(verdict)),
    counted === undefined ? null : make('div', {}, counted),
    make(
      'div',
      { class: 'quiet' },
      [worstWords(candidate, channels, language), parts, ...facts].filter(Boolean).join(' · '),
    ),
    why === '' ? null : make('div', {}, verdict === 'PASS' ? why : `${words.whyNot} ${why}`),
    make(
      'button',
      {
        type: 'button',
        class: 'plain',
        'data-key': `use-${sensor.name}`,
        onclick: () => void state.useCandidate(candidate),
      },
      words.use(state.count(count), count === 1),
    ),
  );
};

const comparedView = (state: PaneState, candidates: readonly Candidate[], limits: Limits): HTMLElement => {
  const { language } = state;
  const rows = candidates.map(({ sensor, worst }) => ({ label: sensor.name, check: worst.check }));
  const plots = [levelLadder, spanBar, thermalStrip].map((draw) => draw(rows, { width: PLOT_WIDTH, limits, language }));
  return make('div', {}, ...plots.map((plot) => plotView(plot, language)));
};
