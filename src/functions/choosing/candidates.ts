import { failure, mapped, type Outcome } from '../../core/issue';
import { fromSi } from '../../core/units';
import { PARTS, stockOf } from '../../plan/choosing/candidate';
import { limitText } from '../../plan/choosing/candidate-reasons';
import { rankCandidates, type Candidate } from '../../plan/choosing/rank';
import { CANDIDATE_ORDERS } from '../../plan/choosing/rank-order';
import type { TablePlan } from '../../plan/from-tables';
import type { Limits } from '../../plan/limits';
import type { Channel } from '../../plan/model';
import { defineFunction } from '../define';
import { planFromBlocks } from './plan-from-blocks';

const HEADINGS = [
  'Sensor type',
  'Verdict',
  'Margin [dB]',
  'Limited by',
  'Mount',
  'Cable',
  'Input',
  'Added mass [gram]',
  'Level verdict',
  'Mass verdict',
  'Thermal verdict',
  'Frequency verdict',
  'Channels that pass',
  'In stock',
] as const;

type Shown = number | string;
const number = (value: number | undefined): Shown => (value === undefined || !Number.isFinite(value) ? '' : value);

const rowOf = ({ sensor, verdict, margin, worst, mass, headlines, counts }: Candidate, limits: Limits): Shown[] => [
  sensor.name,
  verdict,
  number(margin),
  limitText(worst, limits),
  worst.combination.mount?.name ?? '',
  worst.combination.cable?.name ?? '',
  worst.combination.input?.name ?? '',
  number(mass === undefined ? undefined : fromSi(mass, 'gram')),
  headlines.level,
  headlines.mass,
  headlines.thermal,
  headlines.frequency,
  counts.PASS,
  number(sensor.quantity),
];

/** A row without any requirement is no channel. */
const isAsked = ({ requirement: { detector: _, localMass, ...figures } }: Channel): boolean =>
  localMass.length > 0 || Object.values(figures).some((figure) => figure !== undefined);

interface Asked {
  readonly order: (typeof CANDIDATE_ORDERS)[number];
  readonly parts: 'kept' | 'free';
  readonly most: number | undefined;
}

const candidateRows = ({ plan }: TablePlan, { order, parts, most }: Asked): Shown[][] => {
  const channels = plan.channels.filter(isAsked);
  const free = parts === 'free' ? PARTS : [];
  const { candidates } = rankCandidates(channels, stockOf(plan), plan.limits, { order, free });
  return [[...HEADINGS], ...candidates.slice(0, most).map((candidate) => rowOf(candidate, plan.limits))];
};

const refused = (arg: string, given: string, rule: string): Outcome<Shown[][]> =>
  failure({ code: 'wrong-size', arg, given, rule });

export const candidates = defineFunction({
  name: 'CANDIDATES',
  family: 'choosing',
  summary: 'Every sensor type of a list for one channel or several, best first, each with the parts that suit it best.',
  equation: 'margin = 20·log10(how many times better than its PASS limit), the smallest of all checks',
  args: {
    channels: { kind: 'block', text: 'The channel list with its heading row, or some rows of it below that heading.' },
    sensors: { kind: 'block', text: 'The sensor list with its heading row.' },
    mounts: { kind: 'block', text: 'The mount list with its heading row.' },
    cables: { kind: 'block', text: 'The cable list with its heading row.' },
    inputs: { kind: 'block', text: 'The input list with its heading row.' },
    limits: { kind: 'block', optional: true, text: 'The limits with their heading row; blank: the defaults.' },
    order: {
      kind: 'choice',
      choices: CANDIDATE_ORDERS,
      default: 'margin',
      text: 'What comes first among equal verdicts: the largest margin, the least mass, or the most in stock.',
    },
    parts: {
      kind: 'choice',
      choices: ['kept', 'free'],
      default: 'kept',
      text: 'Whether mount, cable and input that a row names are kept, or are free to change.',
    },
    most: { unit: '1', optional: true, atLeast: 1, text: 'How many types to show; blank: all.' },
  },
  result: {
    kind: 'block',
    text: 'A heading row and one row for each type: worst verdict over the channels, smallest margin, what limits it, the best parts for the hardest channel, added mass, verdicts, how many channels pass, number in stock.',
  },
  validity:
    'Verdict first, then margin: 0 dB is the PASS limit, +6 dB twice as good. A margin is blank where no part of the list can work at all. Judges each row alone.',
  source: { kind: 'derivation', from: 'CHECK of every combination of type, mount, cable and input' },

  compute: ({ order, parts, most, ...blocks }) => {
    const read = planFromBlocks(blocks);
    if (!read.ok) return read;
    if (!read.value.plan.channels.some(isAsked))
      return refused('channels', 'no row that asks for anything', 'at least one');
    if (read.value.plan.sensors.size === 0) return refused('sensors', 'no sensor type', 'at least one');
    return mapped(read, (table) =>
      candidateRows(table, { order: order as Asked['order'], parts: parts as Asked['parts'], most }),
    );
  },

  examples: [
    {
      args: [
        [
          ['Channel', 'Purpose', 'Lowest level', 'Highest level', 'Band low', 'Band high', 'Temperature low', 'Temperature high', 'Local mass'], // prettier-ignore
          ['striker', 'shock', 20, 800, 100, 5000, 18, 28, 900],
        ],
        [
          ['Sensor type', 'Output', 'Sensitivity', 'Full scale', 'Mass', 'Noise density', 'Resonance', 'Quality factor', 'Temperature min', 'Temperature max', 'Thermal deviation', 'In stock'], // prettier-ignore
          ['static 5', 'DC', 400, 5, 8, '1:12; 10000:12', 1400, 0.7142857142857143, -40, 100, '-40:0.9; 23:0; 100:-1.1', 4], // prettier-ignore
          ['bridge 2000', 'DC', 0.2, 2000, 1.3, '1:1500; 10000:1500', 26000, 10, -54, 121, '-54:2.5; 23:0; 121:-3', 2], // prettier-ignore
        ],
        [
          ['Mount', 'Mount mass', 'Stiffness'],
          ['screw', 2, null],
        ],
        [
          ['Cable', 'Capacitance', 'Effective mass'],
          ['short', 1000, 0],
        ],
        [
          ['Input', 'Mode', 'Range', 'Dynamic range', 'Sample rate', 'AC coupling'],
          ['fed', 'charge', 1, 110, 204800, 'none'],
          ['fast', 'voltage', 1, 110, 204800, 'none'],
        ],
      ],
      result: [
        [...HEADINGS],
        ['bridge 2000', 'PASS', 1.1240099896, 'Span ends at 5690 Hz at ±5 % (default), band at 5000 Hz.', 'screw', 'short', 'fast', 3.3, 'PASS', 'PASS', 'PASS', 'PASS', 1, 2], // prettier-ignore
        ['static 5', 'FAIL', -53.6092015585, 'Headroom −50.1 dB, limit 3.5 dB (default): the input range ends at 2.5 g; a peak of at most 1.67 g fits here.', 'screw', 'short', 'fast', 10, 'FAIL', 'PASS', 'PASS', 'FAIL', 0, 4], // prettier-ignore
      ],
      within: 1e-8,
      from: 'span end 5690.763 Hz of a striker plate, computed independently with Python/scipy: 20·log10(5690.763/5000); by hand: 1 V over 400 mV/g and 0.0714 % more at 18 °C is 2.49822 g, 20·log10(2.49822/800) − 3.5',
    },
    {
      args: [
        [
          ['Channel', 'Band low'],
          ['1', 5],
        ],
        [
          ['Sensor type', 'Mass'],
          ['shear 12', 3],
        ],
        [['Mount']],
        [['Cable']],
        [['Input']],
      ],
      result: [
        [...HEADINGS],
        ['shear 12', 'INCOMPLETE', '', 'Not known: Lowest level, Highest level, Output (sensor), Band high, Full scale (sensor), Input, Mount, Cable, Local mass, Temperature low, Temperature high, Temperature min (sensor), Temperature max (sensor), Thermal deviation (sensor), Resonance (sensor), Quality factor (sensor).', '', '', '', '', 'INCOMPLETE', 'INCOMPLETE', 'INCOMPLETE', 'INCOMPLETE', 0, ''], // prettier-ignore
      ],
      from: 'by definition: nothing can be judged, and what is missing is named',
    },
  ],
});
