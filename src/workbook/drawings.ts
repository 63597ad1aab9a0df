import type { Plot } from '../plots/plot';
import type { BarChart } from './charts';

/** Where a drawing's upper left corner lies: 0-based cell and pixels of 1/96 inch beside it; and its size. */
export interface DrawingPlace {
  readonly row: number;
  readonly column: number;
  readonly x: number;
  readonly width: number;
  readonly height: number;
}
export interface PlacedPlot {
  readonly plot: Plot;
  readonly place: DrawingPlace;
}
/** A chart of the sheet's own cells, which stays editable, or a picture of a plot. */
export type Drawing = BarChart | PlacedPlot;

export const isPlot = (drawing: Drawing): drawing is PlacedPlot => 'plot' in drawing;

/** Names what we draw, so that a drawing which somebody else put on the sheet is never taken for ours. */
export const OWN_DRAWING = 'Channelwright drawing ';

/** A drawing stands a little below the upper edge of its cell. */
export const DRAWING_DROP = 4;
