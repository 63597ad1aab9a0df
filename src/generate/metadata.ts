import type { Language } from '../core/language';
import type { AnyFunction, ArgSpec } from '../functions/define';
import { argumentHint, isRepeating, requiredCount } from '../functions/describe';
import { ENGLISH, type Wording } from '../functions/words/wording';
import { fileOf } from './static-page';

export interface ParameterMetadata {
  readonly name: string;
  readonly description: string;
  readonly type: 'any';
  readonly dimensionality?: 'matrix';
  readonly optional?: true;
  readonly repeating?: true;
}
export interface FunctionMetadata {
  readonly id: string;
  readonly name: string;
  readonly description: string;
  readonly helpUrl: string;
  readonly parameters: readonly ParameterMetadata[];
  readonly result: { readonly dimensionality?: 'matrix' };
}
export interface CustomFunctionsMetadata {
  readonly allowCustomDataForDataTypeAny: true;
  readonly allowErrorForDataTypeAny: true;
  readonly functions: readonly FunctionMetadata[];
}

/** The place of a function on the help page, at the address of the development build; a package names its own. */
export const helpUrlOf = (fn: AnyFunction, language: Language): string =>
  `https://localhost:3000/${fileOf('help', language)}#${fn.name}`;

const isMatrix = (spec: ArgSpec): boolean => spec.kind === 'curve' || spec.kind === 'list' || spec.kind === 'block';

export const spills = ({ result }: AnyFunction): boolean => result.kind === 'row' || result.kind === 'block';

const parametersOf = (fn: AnyFunction, wording: Wording): ParameterMetadata[] => {
  const required = requiredCount(fn);
  return Object.entries(fn.args as Record<string, ArgSpec>).map(([name, spec], i) => ({
    name,
    description: argumentHint(spec, wording),
    type: 'any',
    ...(isMatrix(spec) && { dimensionality: 'matrix' }),
    ...(i >= required && { optional: true }),
    ...(isRepeating(spec) && { repeating: true }),
  }));
};

/**
 * What Excel must know before it loads the functions. Every argument is `any`, because numbers with units are texts and
 * because messages about a wrong argument are ours. Errors must reach us: verdicts answer them with INCOMPLETE, and the
 * switch holds for all functions of the file. The id is what a workbook stores. Only descriptions follow the language:
 * one formula then reads the same to everybody who works on a plan.
 */
export const customFunctionsMetadata = (
  functions: readonly AnyFunction[],
  wording: Wording = ENGLISH,
): CustomFunctionsMetadata => ({
  allowCustomDataForDataTypeAny: true,
  allowErrorForDataTypeAny: true,
  functions: functions.map((fn) => ({
    id: fn.name,
    name: fn.name,
    description: wording.say(fn.summary),
    helpUrl: helpUrlOf(fn, wording.language),
    parameters: parametersOf(fn, wording),
    result: spills(fn) ? { dimensionality: 'matrix' } : {},
  })),
});
