import type { Curve } from '../core/curve';
import type { Outcome, Statistic } from '../core/issue';
import type { UnitId } from '../core/units';

/** One cell as every host hands it over: blank is null, an error value is an object with its text. */
export type Cell = number | string | boolean | null | CellError;
export interface CellError {
  readonly error: string;
}
export const isCellError = (cell: unknown): cell is CellError =>
  typeof cell === 'object' && cell !== null && 'error' in cell;
export type Block = readonly (readonly Cell[])[];

interface ArgBase {
  /** What the argument is, one sentence for a planner. */
  text: string;
  symbol?: string;
  /** A blank cell or an omitted argument is allowed and arrives as undefined (or as `default`). */
  optional?: true;
}
/** A number in the documented unit, or a text with any unit of the same quantity. Arrives in SI. */
export interface QuantityArg extends ArgBase {
  kind?: 'quantity';
  unit: UnitId;
  /** Limits and default in the documented unit. */
  above?: number;
  atLeast?: number;
  below?: number;
  atMost?: number;
  default?: number;
  /** A level's statistic: text that names another one is refused unless it converts exactly. */
  statistic?: Extract<Statistic, 'rms' | 'peak'>;
  /** Text that is a range ("-54..121 °C") fills this argument and the named one when that one is blank. */
  rangeWith?: string;
  /** An error, text or blank cell arrives as undefined instead of an issue: for verdicts, which answer INCOMPLETE. */
  forgiving?: true;
}
/** Text pairs "x:y; x:y", or a two-column (or two-row) range. Arrives in SI. */
export interface CurveArg extends ArgBase {
  kind: 'curve';
  x: UnitId;
  y: UnitId;
}
/** One number, a range of numbers, or a text "0.16; 0.5 Hz". "none" is an empty list. Arrives in SI. */
export interface ListArg extends ArgBase {
  kind: 'list';
  unit: UnitId;
  above?: number;
  atLeast?: number;
  /** May be given again and again as the last arguments; all are joined. */
  repeating?: true;
}
export interface ChoiceArg extends ArgBase {
  kind: 'choice';
  choices: readonly string[];
  default?: string;
  /** As of a quantity: an error or an unknown word arrives as undefined. */
  forgiving?: true;
}
export interface TextArg extends ArgBase {
  kind: 'text';
}
/** Raw cells of one or more ranges: for functions that judge text, errors and blanks themselves. */
export interface BlockArg extends ArgBase {
  kind: 'block';
  repeating?: true;
}
/** One raw cell, errors included. */
export interface CellArg extends ArgBase {
  kind: 'cell';
}
export type ArgSpec = QuantityArg | CurveArg | ListArg | ChoiceArg | TextArg | BlockArg | CellArg;
export type ArgSpecs = Readonly<Record<string, ArgSpec>>;

type Given<S extends ArgSpec> = S extends { kind: 'curve' }
  ? Curve
  : S extends { kind: 'list' }
    ? readonly number[]
    : S extends { kind: 'choice'; choices: readonly (infer C)[] }
      ? C
      : S extends { kind: 'text' }
        ? string
        : S extends { kind: 'block'; repeating: true }
          ? readonly Block[]
          : S extends { kind: 'block' }
            ? Block
            : S extends { kind: 'cell' }
              ? Cell
              : number;
type MaybeAbsent<S extends ArgSpec> = S extends { default: unknown }
  ? never
  : S extends { optional: true } | { forgiving: true }
    ? undefined
    : never;
export type Values<A extends ArgSpecs> = { readonly [K in keyof A]: Given<A[K]> | MaybeAbsent<A[K]> };

export type ResultSpec =
  /** One number, computed in SI, shown in the unit. */
  | { kind?: 'quantity'; unit: UnitId; symbol?: string; text: string }
  | { kind: 'text'; text: string }
  /** One row of numbers, one column per entry, each computed in SI. */
  | { kind: 'row'; columns: readonly { title: string; unit: UnitId; text: string }[] }
  /** Cells computed as they shall be shown. */
  | { kind: 'block'; text: string };

type Computed<R extends ResultSpec> = R extends { kind: 'text' }
  ? string
  : R extends { kind: 'row' }
    ? readonly number[]
    : R extends { kind: 'block' }
      ? readonly (readonly (number | string | boolean)[])[] | number | string
      : number;

export type Source =
  | { kind: 'standard' | 'book' | 'paper'; cite: string; locator: string; read: 'read' | 'from memory' }
  | { kind: 'derivation'; from: string }
  | { kind: 'practice'; note: 'common practice, no source' };

export interface Example {
  /** Cells as typed: numbers, texts, null for a blank, nested arrays for a range. */
  args: readonly (Cell | readonly (readonly Cell[])[])[];
  result: number | string | readonly (readonly (number | string)[])[];
  /** Relative tolerance of a numeric result that the stated route's rounding allows. */
  within?: number;
  /** Who computed the result and how; never this program. */
  from: string;
}

export interface FunctionDeclaration<A extends ArgSpecs = ArgSpecs, R extends ResultSpec = ResultSpec> {
  /** Upper case, words by dots; frozen once released. */
  readonly name: string;
  readonly family: Family;
  readonly summary: string;
  readonly equation: string;
  readonly args: A;
  readonly result: R;
  readonly validity: string;
  readonly source: Source;
  readonly compute: (values: Values<A>) => Computed<R> | Outcome<Computed<R>>;
  readonly examples: readonly Example[];
}
export type Family =
  | 'level and dynamic range'
  | 'mass loading'
  | 'thermal'
  | 'frequency span'
  | 'trust'
  | 'verdict'
  | 'choosing'
  | 'text and units';

/** A declaration whose argument types have been erased, as the registry, the engine and the hosts see it. */
// eslint-disable-next-line @typescript-eslint/no-explicit-any
export type AnyFunction = FunctionDeclaration<any, ResultSpec>;

export const defineFunction = <const A extends ArgSpecs, const R extends ResultSpec>(
  declaration: FunctionDeclaration<A, R>,
): FunctionDeclaration<A, R> => declaration;
