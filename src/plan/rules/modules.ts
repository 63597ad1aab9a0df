import type { ChannelCheck } from '../check';
import type { InputMode } from '../fields';
import { modulesNeeded } from '../../core/stock/count';
import { areTogether, folded, grouped, spelling, type AcrossRows } from './rows';

/** Channels of one input mode in a run against the channels of the modules that the input list counts for that mode. */
export const inputModules = (checks: readonly ChannelCheck[]): readonly AcrossRows[] => {
  const capacity = capacities(checks);
  const groups = grouped(checks, ({ channel }) => {
    const mode = channel.input?.mode;
    return mode && capacity.has(mode) ? `${folded(channel.run)}\n${mode}` : undefined;
  });
  return [...groups.values()].flatMap((rows): AcrossRows[] => {
    const of = rows.map((row) => checks[row]!);
    const mode = of[0]!.channel.input!.mode!;
    const { channels, moduleSize } = capacity.get(mode)!;
    if (rows.length <= channels) return [];
    const parts = [...grouped(of, ({ channel }) => folded(channel.group)).values()];
    const isSure = areTogether(of.map(({ channel }) => channel)) || parts.some((part) => part.length > channels);
    return [
      {
        finding: {
          check: 'input modules',
          verdict: isSure ? 'FAIL' : 'WARN',
          mode,
          run: spelling(of.map(({ channel }) => channel.run)),
          number: rows.length,
          limit: channels,
          moduleSize,
          modules: moduleSize === undefined ? undefined : modulesNeeded(rows.length - channels, moduleSize),
        },
        rows,
      },
    ];
  });
};

interface Capacity {
  readonly channels: number;
  readonly modules: number;
  /** Where all modules of the mode are alike. */
  readonly moduleSize?: number;
}

/** Modules of one input mode: what is there, and the channels of the run that needs most of them. */
export interface ModuleUse extends Capacity {
  readonly mode: InputMode;
  readonly needed: number;
}
export const moduleUse = (checks: readonly ChannelCheck[]): readonly ModuleUse[] =>
  [...capacities(checks)].map(([mode, capacity]) => {
    const of = checks.filter(({ channel }) => channel.input?.mode === mode);
    const runs = grouped(of, ({ channel }) => folded(channel.run) ?? '');
    return { mode, ...capacity, needed: Math.max(...[...runs.values()].map(({ length }) => length)) };
  });

const capacities = (checks: readonly ChannelCheck[]): ReadonlyMap<InputMode, Capacity> => {
  const found = new Map<InputMode, Capacity>();
  for (const input of new Set(checks.map(({ channel }) => channel.input))) {
    const { mode, modules, moduleChannels } = input ?? {};
    if (!mode || modules === undefined || moduleChannels === undefined) continue;
    const known = found.get(mode);
    const isAlike = known === undefined || known.moduleSize === moduleChannels;
    const channels = (known?.channels ?? 0) + modules * moduleChannels;
    found.set(mode, {
      channels,
      modules: (known?.modules ?? 0) + modules,
      moduleSize: isAlike ? moduleChannels : undefined,
    });
  }
  return found;
};
