/** Colour roles of a plot; each page gives them its own colours. Meaning never rests on them alone. */
export type Tone = 'ink' | 'quiet' | 'hair' | 'span' | 'wide' | 'pass' | 'warn' | 'fail' | 'incomplete';

/** A drawn thing, in units of 1/96 inch from the upper left corner. */
export type Mark =
  | {
      readonly kind: 'line';
      readonly x1: number;
      readonly y1: number;
      readonly x2: number;
      readonly y2: number;
      readonly tone: Tone;
      readonly width?: number;
      readonly dashed?: boolean;
    }
  | {
      readonly kind: 'rect';
      readonly x: number;
      readonly y: number;
      readonly width: number;
      readonly height: number;
      readonly tone: Tone;
    }
  | {
      readonly kind: 'path';
      readonly points: readonly (readonly [x: number, y: number])[];
      readonly tone: Tone;
      readonly width?: number;
    }
  | {
      readonly kind: 'text';
      readonly x: number;
      readonly y: number;
      readonly text: string;
      readonly anchor?: 'start' | 'middle' | 'end';
      readonly tone: Tone;
      readonly bold?: boolean;
    };

export interface Plot {
  readonly width: number;
  readonly height: number;
  readonly title: string;
  /** Says in sentences what the drawing shows. */
  readonly inWords: string;
  readonly marks: readonly Mark[];
}

/** Lines of the 4 px rhythm that the plots share. */
export const TEXT_SIZE = 11;
export const LINE = 16;
/** Keeps strokes and labels at the ends inside the drawing. */
export const MARGIN = 8;

/** Shares of an average letter; enough to keep labels from each other without measuring fonts. */
const LETTER = 0.6;
export const widthOf = (text: string): number => text.length * LETTER * TEXT_SIZE;

/** Cuts a text to a width, with an ellipsis where something is lost; the whole stands in the words of the plot. */
export const fitted = (text: string, width: number): string => {
  if (widthOf(text) <= width) return text;
  const letters = Math.max(1, Math.floor(width / (LETTER * TEXT_SIZE)) - 1);
  return `${text.slice(0, letters).trimEnd()}…`;
};
