import { checkChannels } from '../../../src/plan/check';
import { DEFAULT_LIMITS } from '../../../src/plan/limits';
import { moduleUse } from '../../../src/plan/rules/modules';
import { INPUT, row } from './rows';

describe('the use of input modules', () => {
  const use = (...runs: readonly (string | undefined)[]) =>
    moduleUse(
      checkChannels(
        runs.map((run, i) => row(`c${i}`, { run, input: INPUT })),
        DEFAULT_LIMITS,
      ),
    ).map(({ needed, modules, channels }) => [needed, modules, channels]);

  it('counts the run that needs most of them at once against two modules of four channels', () => {
    expect(use('A', 'A', 'A', 'B', 'B')).toEqual([[3, 2, 8]]);
    expect(use(undefined, undefined)).toEqual([[2, 2, 8]]);
  });

  it('says nothing of a mode whose modules are not known', () => {
    const unknown = row('c', { input: { name: 'DC', mode: 'voltage' } });
    expect(moduleUse(checkChannels([unknown], DEFAULT_LIMITS))).toEqual([]);
  });
});
