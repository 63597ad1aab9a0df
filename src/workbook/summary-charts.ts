import { VERDICTS, type Verdict } from '../core/verdict';
import type { BarChart, ChartSeries } from './charts';
import type { RangeAddress } from './port';
import type { Section, SectionKey } from './report/section';

/** Rows kept free for the charts below the heading of the summary. */
export const CHART_ROWS = 17;
const HEIGHT = 336;
const WIDTH = 358;
const GAP = 10;
/** Sections that are drawn, from left to right, and the columns whose numbers are. */
const DRAWN: readonly { readonly key: SectionKey; readonly series: 'verdicts' | 'first' }[] = [
  { key: 'parts', series: 'verdicts' },
  { key: 'checks', series: 'verdicts' },
  { key: 'technologies', series: 'first' },
];
/** More bars than this are no longer read. */
const MOST_BARS = 24;
const FIRST_COLUMN = 2;

/** Where a section stands: the row of its heading, 0-based. */
export interface PlacedSection {
  readonly section: Section;
  readonly row: number;
}

/** Charts over the cells of the placed sections; `unit` says what the bars count. */
export const summaryCharts = (placed: readonly PlacedSection[], row: number, unit: string): readonly BarChart[] =>
  DRAWN.flatMap(({ key, series }) => {
    const found = placed.find(({ section }) => section.key === key);
    return found ? [{ ...found, series }] : [];
  }).map(({ section, row: heading, series }, n): BarChart => {
    const all = section.hasTotal ? section.lines.length - 1 : section.lines.length;
    const rows = Math.min(all, MOST_BARS);
    const lines = section.lines.slice(0, rows);
    const column = (c: number): RangeAddress => ({ row: heading + 1, column: c, rows, columns: 1 });
    const seriesAt = (i: number, verdict?: Verdict): ChartSeries => ({
      name: { row: heading, column: FIRST_COLUMN + i },
      values: column(FIRST_COLUMN + i),
      caption: section.columns[i] ?? '',
      numbers: lines.map((line) => Number(line[FIRST_COLUMN + i] ?? 0)),
      ...(verdict && { verdict }),
    });
    const verdicts = section.columns.flatMap((caption, i) => {
      const verdict = VERDICTS.find((word) => word === caption);
      return verdict ? [seriesAt(i, verdict)] : [];
    });
    return {
      title: section.title,
      valueTitle: unit,
      categories: column(0),
      labels: lines.map((line) => String(line[0] ?? '')),
      series: series === 'verdicts' ? verdicts : [seriesAt(0)],
      place: { row, column: 0, x: n * (WIDTH + GAP), width: WIDTH, height: HEIGHT },
    };
  });
