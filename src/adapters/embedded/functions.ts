import {
  ArrayValueObject,
  BaseFunction,
  BooleanValueObject,
  ErrorType,
  ErrorValueObject,
  FunctionType,
  NullValueObject,
  NumberValueObject,
  StringValueObject,
  type BaseValueObject,
  type IFunctionInfo,
} from '@univerjs/engine-formula';
import type { Nullable } from '@univerjs/core';
import { callFunction } from '../../engine/call';
import { errorValueOf } from '../../engine/errors';
import type { AnyFunction, ArgSpec, Block, Cell, CellError } from '../../functions/define';
import { isRepeating, requiredCount } from '../../functions/describe';
import { NAMESPACE } from '../../functions/index';
import { ENGLISH, type Wording } from '../../functions/words/wording';
import { describeArgument, exampleOf } from './function-help';

const ERRORS = new Map<string, ErrorType>(Object.values(ErrorType).map((error) => [error, error]));

const cellOf = (value: Nullable<BaseValueObject>): Cell => {
  if (!value || value.isNull()) return null;
  if (value.isError()) return { error: (value as ErrorValueObject).getErrorType() };
  if (value.isBoolean()) return value.getValue() === true || value.getValue() === 1;
  return value.getValue();
};

const argumentOf = (value: BaseValueObject): Cell | Block => {
  if (!value.isArray()) return cellOf(value);
  const array = value as ArrayValueObject;
  const block: Cell[][] = [];
  for (let row = 0; row < array.getRowCount(); row++) {
    const cells: Cell[] = [];
    for (let column = 0; column < array.getColumnCount(); column++) cells.push(cellOf(array.get(row, column)));
    block.push(cells);
  }
  return block.length === 1 && block[0]?.length === 1 ? (block[0][0] ?? null) : block;
};

const errorObject = ({ error }: CellError): ErrorValueObject =>
  ErrorValueObject.create(ERRORS.get(error) ?? ErrorType.VALUE);

const valueOf = (cell: Cell): BaseValueObject => {
  if (cell === null) return NullValueObject.create();
  if (typeof cell === 'number') return NumberValueObject.create(cell);
  if (typeof cell === 'string') return StringValueObject.create(cell);
  if (typeof cell === 'boolean') return BooleanValueObject.create(cell);
  return errorObject(cell);
};

const arrayOf = (block: Block): BaseValueObject =>
  block.length === 0 || block[0]?.length === 0
    ? NullValueObject.create()
    : ArrayValueObject.create({
        calculateValueList: block.map((row) => row.map(valueOf)),
        rowCount: block.length,
        columnCount: block[0]?.length ?? 0,
        unitId: '',
        sheetId: '',
        row: -1,
        column: -1,
      });

/** An exception inside a function would end the calculation of the whole workbook, so none may leave. */
const compute = (fn: AnyFunction, given: readonly BaseValueObject[]): BaseValueObject => {
  try {
    const called = callFunction(fn, given.map(argumentOf));
    if (!called.ok) return errorObject({ error: errorValueOf(called.issue.code) });
    return Array.isArray(called.value) ? arrayOf(called.value) : valueOf(called.value);
  } catch {
    return ErrorValueObject.create(ErrorType.VALUE);
  }
};

const MOST_ARGUMENTS = 255;

type FunctionClass = new (name: string) => BaseFunction;

const hostFunction = (fn: AnyFunction): FunctionClass => {
  const specs = Object.values(fn.args) as ArgSpec[];
  return class extends BaseFunction {
    override minParams = requiredCount(fn);
    override maxParams = specs.some(isRepeating) ? MOST_ARGUMENTS : specs.length;
    override calculate(...given: BaseValueObject[]): BaseValueObject {
      return compute(fn, given);
    }
  };
};

const hostName = (fn: AnyFunction): string => `${NAMESPACE}.${fn.name}`;

/** What the calculation engine runs: one class for each function of the catalogue. */
export const functionClasses = (functions: readonly AnyFunction[]): [FunctionClass, string][] =>
  functions.map((fn) => [hostFunction(fn), hostName(fn)]);

/** What the grid shows while a person types one of our functions. */
export const functionDescriptions = (functions: readonly AnyFunction[], wording: Wording = ENGLISH): IFunctionInfo[] =>
  functions.map((fn) => ({
    functionName: hostName(fn),
    functionType: FunctionType.User,
    description: wording.say(fn.summary),
    abstract: wording.say(fn.summary),
    functionParameter: Object.entries(fn.args as Record<string, ArgSpec>).map(([name, spec], i) => ({
      name,
      detail: describeArgument(spec, wording),
      example: exampleOf(fn, i),
      require: i < requiredCount(fn) ? 1 : 0,
      repeat: isRepeating(spec) ? 1 : 0,
    })),
  }));
