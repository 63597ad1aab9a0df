import type { UnitId } from '../core/units';

/** The tables a plan is made of. `limits` has one row per limit. */
export const TABLES = ['channels', 'sensors', 'mounts', 'cables', 'inputs', 'limits'] as const;
export type TableName = (typeof TABLES)[number];

export type FieldKind = 'text' | 'quantity' | 'curve' | 'list' | 'choice' | 'date';

export interface Field {
  readonly table: TableName;
  readonly key: string;
  /** Heading in our own sheets, without its unit. */
  readonly title: string;
  readonly kind: FieldKind;
  /** Unit of a quantity or list; y unit of a curve. */
  readonly unit?: UnitId;
  /** x unit of a curve. */
  readonly xUnit?: UnitId;
  readonly statistic?: 'rms' | 'peak';
  readonly choices?: readonly string[];
  readonly text: string;
}

const field =
  (table: TableName) =>
  (key: string, title: string, rest: Omit<Field, 'table' | 'key' | 'title'>): Field => ({
    table,
    key,
    title,
    ...rest,
  });
const channel = field('channels');
const sensor = field('sensors');
const mount = field('mounts');
const cable = field('cables');
const input = field('inputs');
const limit = field('limits');

export const PURPOSES = ['survey', 'modal', 'shock'] as const;
export type Purpose = (typeof PURPOSES)[number];
export const ROLES = ['response', 'control', 'reference', 'monitor', 'limit'] as const;
export type Role = (typeof ROLES)[number];
export const OUTPUT_MODES = ['IEPE', 'charge', 'DC', 'voltage', 'bridge'] as const;
export type OutputMode = (typeof OUTPUT_MODES)[number];
export const INPUT_MODES = ['IEPE', 'charge', 'voltage', 'bridge'] as const;
export type InputMode = (typeof INPUT_MODES)[number];

export const FIELDS: readonly Field[] = [
  channel('channel', 'Channel', { kind: 'text', text: 'Number or name of the channel; unique in the plan.' }),
  channel('group', 'Structure part', {
    kind: 'text',
    text: 'Part of the structure, test set-up or run the channel belongs to.',
  }),
  channel('run', 'Run', { kind: 'text', text: 'Test run in which the channel is measured; blank: all in one.' }),
  channel('runStart', 'Run start', { kind: 'date', text: 'First day of the run; one row of the run is enough.' }),
  channel('runEnd', 'Run end', { kind: 'date', text: 'Last day of the run; one row of the run is enough.' }),
  channel('point', 'Point', { kind: 'text', text: 'Node or point label.' }),
  channel('direction', 'Direction', { kind: 'text', text: 'Axis and sign, as in +X or 12Z-.' }),
  channel('localAxes', 'Local axes', {
    kind: 'text',
    text: 'Turns from the article’s axes to those of the direction, as in "Z30 Y-10", or nine direction cosines; blank: none.',
  }),
  channel('location', 'Location', { kind: 'text', text: 'Where the point is, in words.' }),
  channel('panel', 'Panel', { kind: 'text', text: 'Panel or part whose added masses are summed.' }),
  channel('role', 'Role', { kind: 'choice', choices: ROLES, text: 'What the channel is for in the test.' }),
  channel('purpose', 'Purpose', {
    kind: 'choice',
    choices: PURPOSES,
    text: 'Decides which limits apply; blank: survey.',
  }),
  channel('levelLow', 'Lowest level', {
    kind: 'quantity',
    unit: 'g',
    statistic: 'rms',
    text: 'Smallest level that must still be read, r.m.s. in the analysed band.',
  }),
  channel('levelHigh', 'Highest level', {
    kind: 'quantity',
    unit: 'g',
    statistic: 'peak',
    text: 'Largest expected peak, unfiltered.',
  }),
  channel('bandLow', 'Band low', { kind: 'quantity', unit: 'Hz', text: 'Lower edge of the needed band.' }),
  channel('bandHigh', 'Band high', { kind: 'quantity', unit: 'Hz', text: 'Upper edge of the needed band.' }),
  channel('lineSpacing', 'Line spacing', {
    kind: 'quantity',
    unit: 'Hz',
    text: 'Line spacing when the lowest level is read in one Hann line; blank: whole band.',
  }),
  channel('temperatureLow', 'Temperature low', {
    kind: 'quantity',
    unit: '°C',
    text: 'Lowest temperature at the sensor.',
  }),
  channel('temperatureHigh', 'Temperature high', {
    kind: 'quantity',
    unit: '°C',
    text: 'Highest temperature at the sensor.',
  }),
  channel('localMass', 'Local mass', {
    kind: 'quantity',
    unit: 'gram',
    text: 'Local effective mass at the point, in its direction, at the upper band edge.',
  }),
  channel('thermalTolerance', 'Thermal tolerance', {
    kind: 'quantity',
    unit: '%',
    text: 'Largest thermal deviation allowed in this row; blank: the plan’s limit.',
  }),
  channel('spanTolerance', 'Span tolerance', {
    kind: 'quantity',
    unit: '%',
    text: 'Flatness asked for in this row; blank: the plan’s limit.',
  }),
  channel('signalToNoiseLimit', 'Signal-to-noise limit', {
    kind: 'quantity',
    unit: 'dB',
    text: 'Signal to noise for PASS in this row; blank: the plan’s limit.',
  }),
  channel('headroomLimit', 'Headroom limit', {
    kind: 'quantity',
    unit: 'dB',
    text: 'Headroom for PASS in this row; blank: the plan’s limit.',
  }),
  channel('massRatioLimit', 'Mass ratio limit', {
    kind: 'quantity',
    unit: '1',
    text: 'Largest mass ratio for PASS in this row; blank: the plan’s limit.',
  }),
  channel('referenceFrequency', 'Reference frequency', {
    kind: 'quantity',
    unit: 'Hz',
    text: 'Frequency of the certified sensitivity; blank: 160 Hz.',
  }),
  channel('sensor', 'Sensor type', { kind: 'text', text: 'Type name, as in the sensor sheet.' }),
  channel('sensorAxis', 'Sensor axis', {
    kind: 'text',
    text: 'Axis of the housing that measures here: 1, 2, 3 or x, y, z.',
  }),
  channel('serial', 'Serial number', {
    kind: 'text',
    text: 'Serial number of the sensor, where it is chosen already.',
  }),
  channel('calibrationDue', 'Calibration due', {
    kind: 'date',
    text: 'Date by which this sensor’s next calibration is due; blank: the type’s.',
  }),
  channel('mount', 'Mount', { kind: 'text', text: 'Mount name, as in the mount sheet.' }),
  channel('cable', 'Cable', { kind: 'text', text: 'Cable name, as in the cable sheet.' }),
  channel('input', 'Input', { kind: 'text', text: 'Input setting, as in the input sheet.' }),
  channel('inputChannel', 'Input channel', {
    kind: 'text',
    text: 'Socket of the analyser, unique in a run, as in M2-5.',
  }),
  channel('remarks', 'Remarks', { kind: 'text', text: 'Free text.' }),

  sensor('sensor', 'Sensor type', { kind: 'text', text: 'Type name; unique in the list.' }),
  sensor('description', 'Description', { kind: 'text', text: 'What it is, in words.' }),
  sensor('technology', 'Sensing element', { kind: 'text', text: 'Ceramic, quartz, engineered crystal, silicon …' }),
  sensor('output', 'Output', { kind: 'choice', choices: OUTPUT_MODES, text: 'How the signal leaves the sensor.' }),
  sensor('axes', 'Axes', { kind: 'quantity', unit: '1', text: 'Number of measuring axes in one housing.' }),
  sensor('sensitivity', 'Sensitivity', {
    kind: 'quantity',
    unit: 'mV/g',
    text: 'Voltage sensitivity at the reference frequency and calibration temperature.',
  }),
  sensor('chargeSensitivity', 'Charge sensitivity', {
    kind: 'quantity',
    unit: 'pC/g',
    text: 'Charge sensitivity, for charge output.',
  }),
  sensor('fullScale', 'Full scale', {
    kind: 'quantity',
    unit: 'g',
    statistic: 'peak',
    text: 'Largest peak within the stated linearity.',
  }),
  sensor('mass', 'Mass', { kind: 'quantity', unit: 'gram', text: 'Mass of the sensor without mount and cable.' }),
  sensor('noiseDensity', 'Noise density', {
    kind: 'curve',
    xUnit: 'Hz',
    unit: 'µg/√Hz',
    text: 'frequency:density pairs.',
  }),
  sensor('capacitance', 'Capacitance', {
    kind: 'quantity',
    unit: 'pF',
    text: 'Source capacitance, for charge output.',
  }),
  sensor('resonance', 'Resonance', {
    kind: 'quantity',
    unit: 'Hz',
    text: 'Mounted resonance by the data sheet, stiff stud on steel.',
  }),
  sensor('qualityFactor', 'Quality factor', {
    kind: 'quantity',
    unit: '1',
    text: 'Quality factor Q of the resonance, 1/(2ζ).',
  }),
  sensor('lowLimit', 'Low limit', {
    kind: 'quantity',
    unit: 'Hz',
    text: 'Lower frequency limit by the data sheet; blank for static response and charge output.',
  }),
  sensor('lowLimitLoss', 'Loss at low limit', {
    kind: 'quantity',
    unit: '%',
    text: 'Loss meant by the low limit; blank: 5 %.',
  }),
  sensor('biasMin', 'Bias min', { kind: 'quantity', unit: 'V', text: 'Lowest bias over the temperature range.' }),
  sensor('biasMax', 'Bias max', { kind: 'quantity', unit: 'V', text: 'Highest bias over the temperature range.' }),
  sensor('temperatureMin', 'Temperature min', { kind: 'quantity', unit: '°C', text: 'Lower operating limit.' }),
  sensor('temperatureMax', 'Temperature max', { kind: 'quantity', unit: '°C', text: 'Upper operating limit.' }),
  sensor('deviation', 'Thermal deviation', {
    kind: 'curve',
    xUnit: '°C',
    unit: '%',
    text: 'temperature:deviation pairs.',
  }),
  sensor('coefficient', 'Thermal coefficient', { kind: 'quantity', unit: '%/K', text: 'Used when there is no curve.' }),
  sensor('coefficientSign', 'Coefficient sign', {
    kind: 'choice',
    choices: ['signed', 'unsigned'],
    text: 'Unsigned: the band is taken both ways. Blank: unsigned.',
  }),
  sensor('calibrationTemperature', 'Calibration temperature', { kind: 'quantity', unit: '°C', text: 'Blank: 23 °C.' }),
  sensor('zeroDrift', 'Zero drift', {
    kind: 'quantity',
    unit: 'mg/K',
    text: 'Drift of the zero, for static response.',
  }),
  sensor('quantity', 'In stock', { kind: 'quantity', unit: '1', text: 'How many the lab has.' }),
  sensor('calibrationDue', 'Calibration due', {
    kind: 'date',
    text: 'Date by which the type’s next calibration is due; with serial numbers, that of the piece.',
  }),
  sensor('serial', 'Serial number', {
    kind: 'text',
    text: 'Where the list has one row per piece: its serial number. The first row of a type says its properties.',
  }),

  mount('mount', 'Mount', { kind: 'text', text: 'Name; unique in the list.' }),
  mount('mountMass', 'Mount mass', {
    kind: 'quantity',
    unit: 'gram',
    text: 'Hardware and adhesive added at the point.',
  }),
  mount('stiffness', 'Stiffness', {
    kind: 'quantity',
    unit: 'N/m',
    text: 'Axial stiffness; blank with a stiff stud: the sensor’s own resonance holds.',
  }),
  mount('mountTemperatureMin', 'Temperature min', { kind: 'quantity', unit: '°C', text: 'Lower limit of the joint.' }),
  mount('mountTemperatureMax', 'Temperature max', { kind: 'quantity', unit: '°C', text: 'Upper limit of the joint.' }),
  mount('holdingForce', 'Holding force', { kind: 'quantity', unit: 'N', text: 'Force at which the joint lets go.' }),

  cable('cable', 'Cable', { kind: 'text', text: 'Name; unique in the list.' }),
  cable('cableCapacitance', 'Capacitance', { kind: 'quantity', unit: 'pF', text: 'Whole run, sensor to input.' }),
  cable('cableMass', 'Effective mass', {
    kind: 'quantity',
    unit: 'gram',
    text: 'Half of the free length to the first tie, as mass.',
  }),
  cable('cableTemperatureMin', 'Temperature min', { kind: 'quantity', unit: '°C', text: 'Lower limit of the cable.' }),
  cable('cableTemperatureMax', 'Temperature max', { kind: 'quantity', unit: '°C', text: 'Upper limit of the cable.' }),

  input('input', 'Input', { kind: 'text', text: 'Name of the input setting; unique in the list.' }),
  input('mode', 'Mode', { kind: 'choice', choices: INPUT_MODES, text: 'What the input feeds and expects.' }),
  input('range', 'Range', { kind: 'quantity', unit: 'V', text: 'Peak input voltage of the chosen range.' }),
  input('dynamicRange', 'Dynamic range', {
    kind: 'quantity',
    unit: 'dB',
    text: 'Noise below an r.m.s. full-scale sine over half the sample rate.',
  }),
  input('sampleRate', 'Sample rate', { kind: 'quantity', unit: 'Hz', text: 'Samples per second.' }),
  input('couplingPoles', 'AC coupling', {
    kind: 'list',
    unit: 'Hz',
    text: 'Corner of each AC-coupling pole (−3 dB); "none" when DC coupled.',
  }),
  input('supply', 'Supply', {
    kind: 'quantity',
    unit: 'V',
    text: 'Compliance voltage of the constant-current supply.',
  }),
  input('supplyCurrent', 'Supply current', { kind: 'quantity', unit: 'mA', text: 'Constant current.' }),
  input('sourceDrop', 'Source drop', { kind: 'quantity', unit: 'V', text: 'Voltage lost in the current source.' }),
  input('biasFloor', 'Bias floor', { kind: 'quantity', unit: 'V', text: 'Lowest output voltage that still follows.' }),
  input('sensorCurrent', 'Sensor current', {
    kind: 'quantity',
    unit: 'mA',
    text: 'Current the sensor’s electronics keep for themselves.',
  }),
  input('gain', 'Charge gain', { kind: 'quantity', unit: 'mV/pC', text: 'Gain of the charge amplifier.' }),
  input('noiseVoltage', 'Amplifier noise', {
    kind: 'quantity',
    unit: 'nV/√Hz',
    text: 'Input noise voltage of the charge amplifier.',
  }),
  input('feedbackCapacitance', 'Feedback capacitance', {
    kind: 'quantity',
    unit: 'pF',
    text: 'Of the charge amplifier.',
  }),
  input('timeConstant', 'Time constant', {
    kind: 'quantity',
    unit: 's',
    text: 'Discharge time constant of the charge amplifier.',
  }),
  input('outputLimit', 'Output limit', {
    kind: 'quantity',
    unit: 'V',
    text: 'Largest output of the charge amplifier.',
  }),
  input('modules', 'Modules', {
    kind: 'quantity',
    unit: '1',
    text: 'How many modules there are; settings that share them: in one of their rows.',
  }),
  input('moduleChannels', 'Channels per module', { kind: 'quantity', unit: '1', text: 'Channels of one module.' }),

  limit('limit', 'Limit', { kind: 'text', text: 'Name of the limit.' }),
  limit('pass', 'Pass', { kind: 'quantity', unit: '1', text: 'Bound for PASS, in the row’s unit.' }),
  limit('warn', 'Warn', { kind: 'quantity', unit: '1', text: 'Bound for WARN, in the row’s unit.' }),
  limit('limitUnit', 'Unit', { kind: 'text', text: 'Unit of the two bounds.' }),
  limit('origin', 'Origin', { kind: 'text', text: 'Why this value: default, this test, a standard.' }),
  limit('purpose', 'Purpose', {
    kind: 'choice',
    choices: PURPOSES,
    text: 'Purpose for which this limit holds; blank: all.',
  }),
  limit('group', 'Structure part', { kind: 'text', text: 'Structure part for which this limit holds; blank: all.' }),
];

export const fieldsOf = (table: TableName): readonly Field[] => FIELDS.filter((f) => f.table === table);
export const fieldByKey = (table: TableName, key: string): Field => {
  const found = FIELDS.find((f) => f.table === table && f.key === key);
  if (!found) throw new Error(`no field ${table}.${key}`);
  return found;
};
