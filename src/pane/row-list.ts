import type { Verdict } from '../core/verdict';
import type { RowDetail } from '../workbook/plan-view';
import { HEADLINES, type Results, type RowResult } from '../workbook/results';
import { make } from './dom';
import { verdictMark } from './verdict-mark';

/** Rows drawn at once; more on request, so that a long plan stays quick. */
const PAGE = 100;

export const verdictWord = (verdict: Verdict): HTMLElement =>
  make('span', { class: `cw-verdict ${verdict.toLowerCase()}` }, verdictMark(verdict), verdict);

const HEADLINE_TITLES: Readonly<Record<(typeof HEADLINES)[number], string>> = {
  level: 'Level range',
  mass: 'Mass loading',
  thermal: 'Thermal deviation',
  frequency: 'Frequency span',
};

/** Only their titles: the texts stand once, under the cautions of the plan. */
const cautionLines = ({ cautions }: RowDetail): HTMLElement[] =>
  cautions.length > 0
    ? [make('p', { class: 'cw-caution' }, `Mind here: ${cautions.map(({ title }) => title.toLowerCase()).join(', ')}.`)]
    : [];

export const detailView = (detail: RowDetail): HTMLElement =>
  make(
    'div',
    { class: 'cw-detail' },
    ...detail.headlines.flatMap(({ name, verdict, lines, sentences }) => [
      make('h3', {}, HEADLINE_TITLES[name], verdictWord(verdict)),
      make(
        'dl',
        {},
        ...lines.flatMap(({ label, value, unit }) => [
          make('dt', {}, label),
          make('dd', {}, value, unit ? make('span', { class: 'unit' }, ` ${unit}`) : null),
        ]),
      ),
      sentences.length > 0 ? make('ul', {}, ...sentences.map((sentence) => make('li', {}, sentence))) : null,
    ]),
    ...cautionLines(detail),
  );

const rowView = (result: RowResult, open: boolean, choose: (row: number) => void): HTMLElement =>
  make(
    'button',
    {
      type: 'button',
      class: 'cw-row',
      'data-key': `row-${result.row}`,
      'aria-expanded': String(open),
      onclick: () => choose(result.row),
    },
    verdictWord(result.verdict),
    make(
      'span',
      { class: 'name' },
      result.channel,
      result.place ? make('span', { class: 'quiet' }, ` ${result.place}`) : null,
    ),
    result.reason ? make('span', { class: 'reason' }, result.reason) : null,
  );

export interface RowListOptions {
  readonly results: Results;
  readonly shown: ReadonlySet<Verdict>;
  readonly pages: number;
  readonly openRow?: number;
  /** Of the open row. */
  readonly detail?: RowDetail;
  readonly choose: (row: number) => void;
  readonly more: () => void;
}

/** Failing rows first, as real text; a click opens the row and jumps to it in the sheet. */
export const rowListView = ({ results, shown, pages, openRow, detail, choose, more }: RowListOptions): HTMLElement => {
  const rows = results.rows.filter((result) => shown.has(result.verdict));
  const drawn = rows.slice(0, pages * PAGE);
  const rest = rows.length - drawn.length;
  return make(
    'div',
    {},
    rows.length === 0 ? make('p', { class: 'quiet' }, 'No channel with the verdicts chosen above.') : null,
    make(
      'ul',
      { class: 'cw-rows', 'aria-label': 'Channels, worst first' },
      ...drawn.map((result) => {
        const open = result.row === openRow;
        return make('li', {}, rowView(result, open, choose), open && detail ? detailView(detail) : null);
      }),
    ),
    rest > 0
      ? make(
          'p',
          { class: 'cw-actions' },
          make(
            'button',
            { type: 'button', class: 'plain', 'data-key': 'more', onclick: more },
            `Show more (${rest} left)`,
          ),
        )
      : null,
  );
};
