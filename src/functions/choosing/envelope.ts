import { mapped, outcome, type Outcome } from '../../core/issue';
import { fromSi, UNITS, type UnitId } from '../../core/units';
import { envelopeOf } from '../../plan/choosing/envelope';
import { BOUND_KEYS, type EnvelopeBound } from '../../plan/choosing/envelope-bound';
import { fieldsWords } from '../../plan/choosing/envelope-field-words';
import { limitWords } from '../../plan/choosing/envelope-words';
import type { Channel, Input, Plan } from '../../plan/model';
import { defineFunction } from '../define';
import { pickedWords } from './picked';
import { planFromBlocks } from './plan-from-blocks';

const HEADINGS = [
  'Channel',
  'Bound',
  'Sign',
  'Pass',
  'Warn',
  'Unit',
  'Input',
  'Asked by',
  'Limit',
  'Sensor',
  'Verdict',
  'Not known',
] as const;

type Shown = number | string;

/** A bound on its far side is met by nothing, on its near side by anything. */
const cell = (si: number | undefined, unit: UnitId, direction: 'atMost' | 'atLeast'): Shown => {
  if (si === undefined) return '';
  if (Number.isFinite(si)) return fromSi(si, unit);
  return si > 0 === (direction === 'atMost') ? 'any' : 'none';
};

const rowOf = (channel: string, bound: EnvelopeBound): Shown[] => {
  const { key, input = '', causes, missing, valueMissing, verdict = '' } = bound;
  const asked = fieldsWords(causes);
  const gaps = fieldsWords([...missing, ...(verdict === '' ? [] : valueMissing)]);
  if (bound.kind === 'output') {
    const outputs = (bound.admissible ?? []).map(({ output }) => output).join(', ');
    return [channel, key, 'one of', outputs, '', '', input, asked, '', bound.value ?? '', verdict, gaps];
  }
  const { direction, unit, pass, warn, value } = bound;
  return [
    channel,
    key,
    direction === 'atMost' ? '≤' : '≥',
    cell(pass, unit, direction),
    warn === pass ? '' : cell(warn, unit, direction),
    UNITS[unit].label,
    input,
    asked,
    limitWords(bound) ?? '',
    value === undefined || !Number.isFinite(value) ? '' : fromSi(value, unit),
    verdict,
    gaps,
  ];
};

/** The input a row names; of a row that names none, every input of the list is at hand. */
export const inputsFor = ({ input, named }: Channel, plan: Plan): readonly Input[] =>
  input ? [input] : named?.input === undefined ? [...plan.inputs.values()] : [];

export const envelope = defineFunction({
  name: 'ENVELOPE',
  family: 'choosing',
  summary: 'What a sensor must satisfy at each row of a channel list: every bound with what asks for it.',
  equation: 'the inverse of every check: mass, level, noise, temperature, band, sensitivity',
  args: {
    channels: { kind: 'block', text: 'The channel list with its heading row, or some rows of it below that heading.' },
    sensors: {
      kind: 'block',
      optional: true,
      text: 'The sensor list with its heading row, to put the sensor that a row names beside its bounds.',
    },
    mounts: { kind: 'block', optional: true, text: 'The mount list with its heading row.' },
    cables: { kind: 'block', optional: true, text: 'The cable list with its heading row.' },
    inputs: {
      kind: 'block',
      optional: true,
      text: 'The input list with its heading row; for a row that names no input, all of them are at hand.',
    },
    limits: { kind: 'block', optional: true, text: 'The limits with their heading row; blank: the defaults.' },
    bounds: {
      kind: 'text',
      optional: true,
      text: 'Names of the bounds to show, separated by semicolons; blank: all.',
    },
  },
  result: {
    kind: 'block',
    text: 'A heading row and one row for each bound of each channel. A bound that is not known names the fields it lacks.',
  },
  validity:
    'Each bound alone; together they decide as CHECK does. Without a sensor the resonance is taken undamped and the bias in the middle of the supply. The least resonance supposes that the reference lies well below it.',
  source: { kind: 'derivation', from: 'each check of CHECK solved for the property of the sensor' },

  compute: ({ bounds, ...blocks }) => {
    const picked = pickedWords('bounds', bounds, BOUND_KEYS);
    if (!picked.ok) return picked;
    const shown: Outcome<Shown[][]> = mapped(planFromBlocks(blocks), ({ plan }) =>
      plan.channels.flatMap((channel) =>
        envelopeOf(channel, plan.limits, inputsFor(channel, plan))
          .bounds.filter(({ key }) => picked.value?.includes(key) ?? true)
          .map((bound) => rowOf(channel.id, bound)),
      ),
    );
    return shown.ok ? outcome([[...HEADINGS], ...shown.value]) : shown;
  },

  examples: [
    {
      args: [
        [
          ['Channel', 'Lowest level', 'Highest level', 'Band low', 'Band high', 'Temperature low', 'Temperature high', 'Local mass', 'Sensor type', 'Mount', 'Cable'], // prettier-ignore
          ['skin 12', 0.0008, 65, 5, 2000, 15, 135, 20.69, 'shear', 'glue', 'thin'],
        ],
        [
          ['Sensor type', 'Output', 'Full scale', 'Mass'],
          ['shear', 'IEPE', 50, 4.8],
        ],
        [
          ['Mount', 'Mount mass'],
          ['glue', 0.3],
        ],
        [
          ['Cable', 'Effective mass'],
          ['thin', 0.5],
        ],
        null,
        null,
        'sensor mass; full scale; dynamic range; thermal coefficient; highest rated temperature',
      ],
      result: [
        [...HEADINGS],
        ['skin 12', 'sensor mass', '≤', 1.269, 3.338, 'gram', '', 'Local mass, Purpose, Mount mass (mount), Effective mass (cable)', 'mass ratio 0.1 (default, no standard)', 4.8, 'FAIL', ''], // prettier-ignore
        ['skin 12', 'full scale', '≥', 97.25531764613817, 65, 'g', '', 'Highest level', 'headroom 3.5 dB (default, no standard)', 50, 'FAIL', ''], // prettier-ignore
        ['skin 12', 'dynamic range', '≥', 121.69646739301824, 108.19646739301824, 'dB', '', 'Lowest level, Highest level', '', '', 'INCOMPLETE', 'Sensitivity (sensor), Noise density (sensor), Input, Bias min (sensor), Bias max (sensor)'], // prettier-ignore
        ['skin 12', 'thermal coefficient', '≤', 0.044642857142857144, 0.07987220447284345, '%/K', '', 'Temperature low, Temperature high, Thermal tolerance', 'thermal tolerance 5 % (default, no standard)', '', '', ''], // prettier-ignore
        ['skin 12', 'highest rated temperature', '≥', 135, '', '°C', '', 'Temperature high', '', '', 'INCOMPLETE', 'Temperature max (sensor)'], // prettier-ignore
      ],
      within: 1e-9,
      from: 'by hand: 0.1 and 0.2 × 20.69 − 0.8; 65 × 10^(3.5/20); 20·log(97.255/0.00008); 5 %/112 K, corrected 10 %/(120 K + 5 % of 104 K)',
    },
    {
      args: [
        [
          ['Channel', 'Band low', 'Band high'],
          ['skin 12', 5, 2000],
        ],
        null,
        null,
        null,
        [
          ['Input', 'AC coupling', 'Mode'],
          ['card', 'none', 'IEPE'],
        ],
        null,
        'mounted resonance; low corner; output; noise',
      ],
      result: [
        [...HEADINGS],
        ['skin 12', 'noise', '≤', '', '', 'g', '', 'Lowest level', 'signal to noise 20 dB (default, no standard)', '', '', 'Lowest level'], // prettier-ignore
        ['skin 12', 'mounted resonance', '≥', 9137.176806869802, 6613.9247047422505, 'Hz', '', 'Band high, Span tolerance, Reference frequency', 'flatness 5 % (default, no standard)', '', '', ''], // prettier-ignore
        ['skin 12', 'low corner', '≤', 1.6443103909847567, 2.423071631928296, 'Hz', 'card', 'Band low, Span tolerance, Reference frequency', 'flatness 5 % (default, no standard)', '', '', ''], // prettier-ignore
        ['skin 12', 'output', 'one of', 'IEPE', '', '', '', 'Input', '', '', '', ''],
      ],
      within: 1e-9,
      from: 'computed independently with Python by bisection of |H(f)/H(160 Hz)|, one pole and one undamped resonance; the lowest level is blank',
    },
  ],
});
