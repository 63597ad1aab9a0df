import { dittoFormulas, type Dittos } from './dittos';
import { OWN_KEYS, type OwnKey } from './own-columns';
import { HostProblem } from './port';
import {
  call,
  expressionsOf,
  frequencyArguments,
  missingOf,
  temperatureArguments,
  thermalArguments,
} from './row-expressions';
import { ROW_NUMBER, rowSources, type PlanTables, type RowSources } from './row-sources';

/** Characters of a formula that Excel takes, less what row numbers may add. */
const LONGEST = 8000;
/** g, below any level: only an upper limit of 0 is under it. */
const LEAST_CEILING = '0.000000001';

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
      // Without any swing there is no headroom to be judged.
      call('VERDICT.ATLEAST', from.own('ceiling'), LEAST_CEILING),
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
    const { thermalTolerance } = expressionsOf(from);
    return call(
      'VERDICT.THERMAL',
      from.own('thermalLow'),
      from.own('thermalHigh'),
      thermalTolerance,
      ...temperatureArguments(from),
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
    const { m, c, i, output, band, signalToNoise, headroom, massLimit, thermalTolerance } = expressionsOf(from);
    return call(
      'REASON',
      `${from.own('levelVerdict')}&" "&${call('CAUSE.MODE', output, i('mode'), from.own('ceiling'))}`,
      from.own('signalToNoise'),
      from.own('headroom'),
      from.own('massVerdict'),
      from.own('massRatio'),
      call('MASS.ALLOWED', from.channel('localMass'), massLimit('pass'), m('mountMass'), c('cableMass')),
      `${from.own('thermalVerdict')}&" "&${call('CAUSE.TEMPERATURE', ...temperatureArguments(from))}`,
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

/** Our formulas of any channel row, in the order of OWN_COLUMNS, with ROW_NUMBER in place of the row's 1-based number. */
export const rowFormulas = (tables: PlanTables, ownColumn: number): string[] => {
  const from = rowSources(tables, ownColumn);
  const formulas = OWN_KEYS.map((key) => `=${WRITERS[key](from)}`);
  if (formulas.some((formula) => formula.length > LONGEST))
    throw new HostProblem(
      'The limits sheet has so many limits for purposes and structure parts that a formula would be longer than spreadsheets take. Set some of them in the rows themselves, in columns such as "Headroom limit".',
      'too-large',
    );
  return formulas;
};

/**
 * Writes our cells of a channel row (0-based), in the order of OWN_COLUMNS: readable formulas that refer to the row and
 * look properties up. A ditto refers to the cell that it means. All other rows have the same formulas but for the row's number, so they are worked out once.
 */
export const rowWriter = (tables: PlanTables, ownColumn: number, dittos?: Dittos): ((row: number) => string[]) => {
  const formulas = rowFormulas(tables, ownColumn);
  const pieces = formulas.map((formula) => formula.split(ROW_NUMBER));
  return (row) => {
    const here = dittos?.get(row);
    return here ? dittoFormulas(formulas, here) : pieces.map((parts) => parts.join(String(row + 1)));
  };
};
