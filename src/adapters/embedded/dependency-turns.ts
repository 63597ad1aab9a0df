import { ICommandService, type Injector } from '@univerjs/core';
import {
  FormulaExecuteStageType,
  IFormulaDependencyGenerator,
  IFormulaRuntimeService,
  SetFormulaCalculationNotificationMutation,
} from '@univerjs/engine-formula';
import { Breath } from './breath';
import type { DependencyIndex } from './dependency-patch';
import { PATCHED_VERSION } from './engine-version';

type Tree = object;
interface Generator {
  generate(model: boolean): Promise<Tree[]>;
  _getRangeListByNode(nodeData: unknown): Promise<unknown>;
  _calculateListByFunctionRefNode(trees: Tree[]): Promise<void>;
  _calculateAddressFunction(cache: unknown, tree: Tree): Promise<void>;
}
const METHODS = [
  'generate',
  '_getRangeListByNode',
  '_calculateListByFunctionRefNode',
  '_calculateAddressFunction',
] as const;

/** Longer than elsewhere: each turn may draw the grid, and a single edit should not wait for that. */
const STRETCH_MS = 80;

/**
 * Before it calculates, the engine finds out which formula needs which, for thousands of formulas in one go, and the
 * page stands still meanwhile. With this that work gives way. To the rest of the engine the calculation has begun, so
 * that an edit in between stops and restarts it. Returns whether the patch is in place.
 */
export const patchDependencyTurns = (injector: Injector, index: DependencyIndex, version: string): boolean => {
  const generator = injector.get(IFormulaDependencyGenerator) as unknown as Generator;
  if (version !== PATCHED_VERSION || METHODS.some((name) => typeof generator[name] !== 'function')) return false;
  const runtime = injector.get(IFormulaRuntimeService);
  const commands = injector.get(ICommandService);
  let breath = new Breath(STRETCH_MS);
  let known: readonly Tree[] = [];

  const rest = async () => {
    if (!breath.due()) return;
    const stageInfo = { ...runtime.getRuntimeState(), stage: FormulaExecuteStageType.CURRENTLY_CALCULATING };
    commands.syncExecuteCommand(SetFormulaCalculationNotificationMutation.id, { stageInfo }, { onlyLocal: true });
    await breath.take();
  };

  const [generate, ranges, byFunction, address] = METHODS.map((name) =>
    (generator[name] as (...args: unknown[]) => Promise<unknown>).bind(generator),
  ) as [
    Generator['generate'],
    Generator['_getRangeListByNode'],
    Generator['_calculateListByFunctionRefNode'],
    Generator['_calculateAddressFunction'],
  ];

  generator.generate = async (model) => {
    breath = new Breath(STRETCH_MS);
    index.defer();
    const trees = await generate(model);
    // A calculation without formulas would end as "nothing to do" and forget that it was asked to start again.
    if (trees.length === 0 && runtime.isStopExecution() && known[0]) trees.push(known[0]);
    known = [];
    return trees;
  };
  generator._getRangeListByNode = async (nodeData) => {
    await rest();
    return ranges(nodeData);
  };
  generator._calculateListByFunctionRefNode = async (trees) => {
    known = trees;
    await index.flush(rest);
    return byFunction(trees);
  };
  generator._calculateAddressFunction = async (cache, tree) => {
    await rest();
    return address(cache, tree);
  };
  return true;
};
