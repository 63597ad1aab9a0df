import { DEFAULT_LIMITS, type Bound } from '../plan/limits';
import { fieldByKey } from '../plan/fields';
import { OWN_KEYS, type OwnKey } from './own-columns';
import {
  LINE_KEYS,
  quoted,
  ROW_NUMBER,
  rowSources,
  type LookupTable,
  type PlanTables,
  type RowSources,
} from './row-sources';

type Expression = string | undefined;

/** `CHAN.NAME(a,,c)`: absent arguments stay blank, absent ones at the end are left out. */
const call = (name: string, ...args: readonly Expression[]): string => {
  const last = args.findLastIndex((arg) => arg !== undefined);
  return `CHAN.${name}(${args
    .slice(0, last + 1)
    .map((arg) => arg ?? '')
    .join(',')})`;
};
const orWhenBlank = (cell: Expression, otherwise: string): string =>
  cell === undefined ? otherwise : `IF(${cell}="",${otherwise},${cell})`;

const MASS_LIMITS = { survey: 'Mass ratio, survey', modal: 'Mass ratio, modal', shock: 'Mass ratio, shock' } as const;

/** Properties that every row needs, whatever the sensor's output mode. */
const NEEDED_PROPERTIES = [
  ['sensors', 'sensor', ['mass', 'fullScale', 'resonance', 'qualityFactor', 'temperatureMin', 'temperatureMax']],
  ['mounts', 'mount', ['mountMass']],
  ['cables', 'cable', ['cableMass', 'cableCapacitance']],
  ['inputs', 'input', ['range', 'dynamicRange', 'sampleRate', 'couplingPoles']],
] as const satisfies readonly (readonly [LookupTable, string, readonly string[]])[];

/** One row's expressions, each written once. */
const expressionsOf = (from: RowSources) => {
  const s = (key: string) => from.lookup('sensors', key);
  const m = (key: string) => from.lookup('mounts', key);
  const c = (key: string) => from.lookup('cables', key);
  const i = (key: string) => from.lookup('inputs', key);
  const output = s('output');
  const when = (mode: string, then: string, otherwise: string): string =>
    output === undefined ? otherwise : `IF(${output}=${quoted(mode)},${then},${otherwise})`;
  const bound = (name: string, which: 'pass' | 'warn', { pass, warn }: Bound, scale = 1): string =>
    from.limit(name, which, (which === 'pass' ? pass : (warn ?? pass)) * scale);
  const massLimit = (which: 'pass' | 'warn'): string => {
    const of = (purpose: keyof typeof MASS_LIMITS) =>
      bound(MASS_LIMITS[purpose], which, DEFAULT_LIMITS.massRatio[purpose]);
    const purpose = from.channel('purpose');
    return purpose === undefined
      ? of('survey')
      : `IF(${purpose}="modal",${of('modal')},IF(${purpose}="shock",${of('shock')},${of('survey')}))`;
  };
  return {
    s,
    m,
    c,
    i,
    output,
    when,
    massLimit,
    signalToNoise: (which: 'pass' | 'warn') => bound('Signal to noise', which, DEFAULT_LIMITS.signalToNoise),
    headroom: (which: 'pass' | 'warn') => bound('Headroom', which, DEFAULT_LIMITS.headroom),
    thermalTolerance: orWhenBlank(
      from.channel('thermalTolerance'),
      bound('Thermal tolerance', 'pass', DEFAULT_LIMITS.thermalTolerance, 100),
    ),
    spanTolerance: orWhenBlank(
      from.channel('spanTolerance'),
      bound('Span tolerance', 'pass', DEFAULT_LIMITS.spanTolerance, 100),
    ),
    wideTolerance: bound('Span tolerance', 'warn', DEFAULT_LIMITS.spanTolerance, 100),
    band: [from.channel('bandLow'), from.channel('bandHigh')] as const,
    most: call('SENSITIVITY.MOST', from.own('sensitivity'), from.own('thermalHigh')),
    least: call('SENSITIVITY.LEAST', from.own('sensitivity'), from.own('thermalLow')),
  };
};

const thermalArguments = (from: RowSources): readonly Expression[] =>
  [
    from.lookup('sensors', 'deviation'),
    from.channel('temperatureLow'),
    from.channel('temperatureHigh'),
    from.lookup('sensors', 'calibrationTemperature'),
    from.lookup('sensors', 'coefficient'),
    from.lookup('sensors', 'coefficientSign'),
  ] as const;

const frequencyArguments = (from: RowSources, tolerance: string): readonly Expression[] => {
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
const missingOf = (from: RowSources): string => {
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

type Writer = (from: RowSources) => string;

const WRITERS: Readonly<Record<OwnKey, Writer>> = {
  sensorLine: (from) => from.line('sensors') ?? 'NA()',
  mountLine: (from) => from.line('mounts') ?? 'NA()',
  cableLine: (from) => from.line('cables') ?? 'NA()',
  inputLine: (from) => from.line('inputs') ?? 'NA()',
  sensitivity: (from) => {
    const { s, i, when } = expressionsOf(from);
    const voltage = call('READ', s('sensitivity') ?? '""', '"mV/g"');
    return when('charge', call('SENSITIVITY.CHARGE', s('chargeSensitivity'), i('gain')), voltage);
  },
  noise: (from) => {
    const { s, c, i, when, band, least } = expressionsOf(from);
    const line = from.channel('lineSpacing');
    const charge = `${least}/${call('READ', i('gain') ?? '""', '"mV/pC"')}`;
    const ofSensor = when(
      'charge',
      call(
        'NOISE.CHARGE',
        i('noiseVoltage'),
        s('capacitance'),
        c('cableCapacitance'),
        i('feedbackCapacitance'),
        charge,
        ...band,
        line,
      ),
      call('NOISE.BAND', s('noiseDensity'), ...band, line),
    );
    return call(
      'NOISE.SUM',
      ofSensor,
      call('NOISE.INPUT', i('range'), i('dynamicRange'), i('sampleRate'), least, ...band, line),
    );
  },
  ceiling: (from) => {
    const { s, i, output, most } = expressionsOf(from);
    return call(
      'CEILING',
      s('fullScale'),
      output,
      most,
      i('range'),
      i('supply'),
      s('biasMin'),
      s('biasMax'),
      i('sourceDrop'),
      i('biasFloor'),
      i('outputLimit'),
    );
  },
  signalToNoise: (from) => call('SIGNAL.TO.NOISE', from.channel('levelLow'), from.own('noise')),
  headroom: (from) => call('HEADROOM', from.channel('levelHigh'), from.own('ceiling')),
  levelVerdict: (from) => {
    const { output, i, signalToNoise, headroom } = expressionsOf(from);
    return call(
      'VERDICT.WORST',
      call('VERDICT.ATLEAST', from.own('signalToNoise'), signalToNoise('pass'), signalToNoise('warn')),
      call('VERDICT.ATLEAST', from.own('headroom'), headroom('pass'), headroom('warn')),
      call('VERDICT.MODE', output, i('mode')),
    );
  },
  massRatio: (from) => {
    const { s, m, c } = expressionsOf(from);
    return call('MASS.RATIO', s('mass'), m('mountMass'), c('cableMass'), from.channel('localMass'));
  },
  massVerdict: (from) => {
    const { massLimit } = expressionsOf(from);
    return call('VERDICT.ATMOST', from.own('massRatio'), massLimit('pass'), massLimit('warn'));
  },
  thermalLow: (from) => call('THERMAL.LOW', ...thermalArguments(from)),
  thermalHigh: (from) => call('THERMAL.HIGH', ...thermalArguments(from)),
  thermalVerdict: (from) => {
    const { s, m, c, thermalTolerance } = expressionsOf(from);
    return call(
      'VERDICT.THERMAL',
      from.own('thermalLow'),
      from.own('thermalHigh'),
      thermalTolerance,
      from.channel('temperatureLow'),
      from.channel('temperatureHigh'),
      s('temperatureMin'),
      s('temperatureMax'),
      m('mountTemperatureMin'),
      m('mountTemperatureMax'),
      c('cableTemperatureMin'),
      c('cableTemperatureMax'),
    );
  },
  spanLow: (from) => call('FREQUENCY.LOW', ...frequencyArguments(from, expressionsOf(from).spanTolerance)),
  spanHigh: (from) => call('FREQUENCY.HIGH', ...frequencyArguments(from, expressionsOf(from).spanTolerance)),
  frequencyVerdict: (from) => {
    const { band, wideTolerance } = expressionsOf(from);
    const wide = frequencyArguments(from, wideTolerance);
    return call(
      'VERDICT.SPAN',
      ...band,
      from.own('spanLow'),
      from.own('spanHigh'),
      call('FREQUENCY.LOW', ...wide),
      call('FREQUENCY.HIGH', ...wide),
    );
  },
  verdict: (from) => {
    const keys = ['levelVerdict', 'massVerdict', 'thermalVerdict', 'frequencyVerdict'] as const;
    return call('VERDICT.WORST', ...keys.map((key) => from.own(key)));
  },
  reason: (from) => {
    const { m, c, band, signalToNoise, headroom, massLimit, thermalTolerance } = expressionsOf(from);
    return call(
      'REASON',
      from.own('levelVerdict'),
      from.own('signalToNoise'),
      from.own('headroom'),
      from.own('massVerdict'),
      from.own('massRatio'),
      call('MASS.ALLOWED', from.channel('localMass'), massLimit('pass'), m('mountMass'), c('cableMass')),
      from.own('thermalVerdict'),
      from.own('thermalLow'),
      from.own('thermalHigh'),
      from.own('frequencyVerdict'),
      from.own('spanLow'),
      from.own('spanHigh'),
      ...band,
      signalToNoise('pass'),
      headroom('pass'),
      massLimit('pass'),
      thermalTolerance,
      missingOf(from),
    );
  },
};

/**
 * Writes our cells of a channel row (0-based), in the order of OWN_COLUMNS: readable formulas that refer to the row and
 * look properties up. All rows have the same formulas but for the row's number, so they are worked out once.
 */
export const rowWriter = (tables: PlanTables, ownColumn: number): ((row: number) => string[]) => {
  const from = rowSources(tables, ownColumn);
  const pieces = OWN_KEYS.map((key) => `=${WRITERS[key](from)}`.split(ROW_NUMBER));
  return (row) => pieces.map((parts) => parts.join(String(row + 1)));
};
