import { DEFAULT_LIMITS, type Bound, type ScopedLimit } from '../plan/limits';
import { fieldByKey, type Purpose } from '../plan/fields';
import { quoted } from './address';
import { LINE_KEYS, type LookupTable, type RowSources } from './row-sources';

export type Expression = string | undefined;

/** `CHAN.NAME(a,,c)`: absent arguments stay blank, absent ones at the end are left out. */
export const call = (name: string, ...args: readonly Expression[]): string => {
  const last = args.findLastIndex((arg) => arg !== undefined);
  return `CHAN.${name}(${args
    .slice(0, last + 1)
    .map((arg) => arg ?? '')
    .join(',')})`;
};
const orWhenBlank = (cell: Expression, otherwise: string): string =>
  cell === undefined ? otherwise : `IF(${cell}="",${otherwise},${cell})`;

type Which = 'pass' | 'warn';

/** A blank counts as survey; a word that no purpose has leaves the limit open. */
const surveyed = (purpose: string): string => `IF(${purpose}="","survey",TRIM(${purpose}))="survey"`;

/** Properties that every row needs, whatever the sensor's output mode. */
const NEEDED_PROPERTIES = [
  ['sensors', 'sensor', ['mass', 'fullScale', 'resonance', 'qualityFactor', 'temperatureMin', 'temperatureMax']],
  ['mounts', 'mount', ['mountMass']],
  ['cables', 'cable', ['cableMass', 'cableCapacitance']],
  ['inputs', 'input', ['range', 'dynamicRange', 'sampleRate', 'couplingPoles']],
] as const satisfies readonly (readonly [LookupTable, string, readonly string[]])[];

/** One row's expressions, each written once. */
export const expressionsOf = (from: RowSources) => {
  const s = (key: string) => from.lookup('sensors', key);
  const m = (key: string) => from.lookup('mounts', key);
  const c = (key: string) => from.lookup('cables', key);
  const i = (key: string) => from.lookup('inputs', key);
  const output = s('output');
  const when = (mode: string, then: string, otherwise: string): string =>
    output === undefined ? otherwise : `IF(${output}=${quoted(mode)},${then},${otherwise})`;
  const bound = (limit: ScopedLimit['limit'], which: Which, { pass, warn }: Bound, scale = 1, of?: Purpose): string =>
    from.limit(limit, which, (which === 'pass' ? pass : (warn ?? pass)) * scale, of);
  /** A row's own limit moves the bound for PASS alone. */
  const own = (key: string, which: Which, limit: string): string =>
    which === 'pass' ? orWhenBlank(from.channel(key), limit) : limit;
  const massLimit = (which: Which): string => {
    const of = (purpose: Purpose) => bound('massRatio', which, DEFAULT_LIMITS.massRatio[purpose], 1, purpose);
    const purpose = from.channel('purpose');
    const limit =
      purpose === undefined
        ? of('survey')
        : `IF(TRIM(${purpose})="modal",${of('modal')},IF(TRIM(${purpose})="shock",${of('shock')},IF(${surveyed(purpose)},${of('survey')},NA())))`;
    return own('massRatioLimit', which, limit);
  };
  return {
    s,
    m,
    c,
    i,
    output,
    when,
    massLimit,
    signalToNoise: (which: Which) =>
      own('signalToNoiseLimit', which, bound('signalToNoise', which, DEFAULT_LIMITS.signalToNoise)),
    headroom: (which: Which) => own('headroomLimit', which, bound('headroom', which, DEFAULT_LIMITS.headroom)),
    thermalTolerance: orWhenBlank(
      from.channel('thermalTolerance'),
      bound('thermalTolerance', 'pass', DEFAULT_LIMITS.thermalTolerance, 100),
    ),
    spanTolerance: orWhenBlank(
      from.channel('spanTolerance'),
      bound('spanTolerance', 'pass', DEFAULT_LIMITS.spanTolerance, 100),
    ),
    wideTolerance: bound('spanTolerance', 'warn', DEFAULT_LIMITS.spanTolerance, 100),
    band: [from.channel('bandLow'), from.channel('bandHigh')] as const,
    most: call('SENSITIVITY.MOST', from.own('sensitivity'), from.own('thermalHigh')),
    least: call('SENSITIVITY.LEAST', from.own('sensitivity'), from.own('thermalLow')),
  };
};

export const thermalArguments = (from: RowSources): readonly Expression[] =>
  [
    from.lookup('sensors', 'deviation'),
    from.channel('temperatureLow'),
    from.channel('temperatureHigh'),
    from.lookup('sensors', 'calibrationTemperature'),
    from.lookup('sensors', 'coefficient'),
    from.lookup('sensors', 'coefficientSign'),
  ] as const;

/** Temperatures needed, and the operating limits that they are held against. */
export const temperatureArguments = (from: RowSources): readonly Expression[] =>
  [
    from.channel('temperatureLow'),
    from.channel('temperatureHigh'),
    from.lookup('sensors', 'temperatureMin'),
    from.lookup('sensors', 'temperatureMax'),
    from.lookup('mounts', 'mountTemperatureMin'),
    from.lookup('mounts', 'mountTemperatureMax'),
    from.lookup('cables', 'cableTemperatureMin'),
    from.lookup('cables', 'cableTemperatureMax'),
  ] as const;

export const frequencyArguments = (from: RowSources, tolerance: string): readonly Expression[] => {
  const { s, m, c, i, output, when, most } = expressionsOf(from);
  const sampleRate = i('sampleRate');
  const cableLimit = call(
    'CABLE.LIMIT',
    i('supplyCurrent'),
    i('sensorCurrent'),
    c('cableCapacitance'),
    from.channel('levelHigh'),
    most,
  );
  return [
    call('RESONANCE.MOUNTED', s('resonance'), s('mass'), m('stiffness')),
    s('qualityFactor'),
    output,
    s('lowLimit'),
    s('lowLimitLoss'),
    i('timeConstant'),
    i('couplingPoles'),
    tolerance,
    from.channel('referenceFrequency'),
    // A rate that is not known must not pass as "no limit".
    sampleRate === undefined ? 'NA()' : call('READ', sampleRate, '"Hz"'),
    output === undefined ? undefined : when('IEPE', cableLimit, '""'),
  ];
};

/** What this row cannot do without, named so that a blank, an error or an item that no list has is said in words. */
export const missingOf = (from: RowSources): string => {
  const titled = (key: string) => fieldByKey('channels', key).title;
  const own = ['levelLow', 'levelHigh', 'bandLow', 'bandHigh', 'temperatureLow', 'localMass'].map(
    (key) => [titled(key), from.channel(key)] as const,
  );
  const listed = ([table, name, keys]: readonly [LookupTable, string, readonly string[]]) => [
    [`${name} in its list`, from.line(table) && from.own(LINE_KEYS[table])] as const,
    ...keys.map((key) => [`${name}: ${fieldByKey(table, key).title.toLowerCase()}`, from.lookup(table, key)] as const),
  ];
  const looked = NEEDED_PROPERTIES.flatMap(listed);
  const all = [...own, ...looked];
  return call('MISSING', quoted(all.map(([name]) => name).join('; ')), ...all.map(([, cell]) => cell ?? '""'));
};
