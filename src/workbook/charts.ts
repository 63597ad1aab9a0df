import type { Verdict } from '../core/verdict';
import type { DrawingPlace } from './drawings';
import type { RangeAddress } from './port';

/** Numbers of one row of headings, drawn as one colour of bars. */
export interface ChartSeries {
  /** The cell that names it, 0-based. */
  readonly name: { readonly row: number; readonly column: number };
  readonly values: RangeAddress;
  readonly verdict?: Verdict;
  /** What the cells hold now, so that a reader without calculation shows the same. */
  readonly caption: string;
  readonly numbers: readonly number[];
}

/** Horizontal bars, one for each category, in a sheet's own chart that stays editable. */
export interface BarChart {
  readonly title: string;
  readonly valueTitle: string;
  readonly categories: RangeAddress;
  readonly labels: readonly string[];
  readonly series: readonly ChartSeries[];
  readonly place: DrawingPlace;
}
