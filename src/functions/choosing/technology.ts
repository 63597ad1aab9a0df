import { mapped, outcome, type Outcome } from '../../core/issue';
import { adviseTechnology } from '../../plan/choosing/technology';
import { ELEMENTS, ENVIRONMENTS, type Circumstances } from '../../plan/choosing/technology-types';
import { adviceNotes, technologySentence } from '../../plan/choosing/technology-words';
import { OUTPUT_MODES } from '../../plan/fields';
import type { Limits } from '../../plan/limits';
import type { Channel } from '../../plan/model';
import { defineFunction } from '../define';
import { pickedWords } from './picked';
import { planFromBlocks } from './plan-from-blocks';

const HEADINGS = ['Channel', 'Kind', 'Standing', 'Step', 'Reason'] as const;
const CIRCUMSTANCES = ['hard impact', 'integrated', 'several earths', ...ENVIRONMENTS] as const;
const KINDS = [...ELEMENTS, ...OUTPUT_MODES] as const;

const rowsOf = (
  channel: Channel,
  limits: Limits,
  circumstances: Circumstances,
  kinds: readonly string[] | undefined,
): string[][] => {
  const advice = adviseTechnology(channel, limits, circumstances);
  const rows = [...advice.elements, ...advice.outputs]
    .filter(({ kind }) => kinds?.includes(kind) ?? true)
    .flatMap(({ kind, standing, reasons }) =>
      reasons.length === 0
        ? [[channel.id, kind, standing, '', '']]
        : reasons.map((reason) => [channel.id, kind, standing, reason.step, technologySentence(reason)]),
    );
  return [...rows, ...adviceNotes(advice).map((note) => [channel.id, 'note', '', '', note])];
};

export const technology = defineFunction({
  name: 'TECHNOLOGY',
  family: 'choosing',
  summary: 'Which sensing elements and outputs stay admissible at each row of a channel list, and why the others fall.',
  equation: 'what the channel asks beside what a kind of sensor usually reaches, step by step',
  args: {
    channels: { kind: 'block', text: 'The channel list with its heading row, or some rows of it below that heading.' },
    mounts: { kind: 'block', optional: true, text: 'The mount list with its heading row.' },
    cables: { kind: 'block', optional: true, text: 'The cable list with its heading row.' },
    limits: { kind: 'block', optional: true, text: 'The limits with their heading row; blank: the defaults.' },
    circumstances: {
      kind: 'text',
      optional: true,
      text: 'What else holds, separated by semicolons: hard impact, integrated, several earths, immersion, vacuum, radiation, explosive atmosphere, magnetic field.',
    },
    axes: { unit: '1', atLeast: 1, default: 1, text: 'Directions measured at the point.' },
    pulseDuration: { unit: 'ms', above: 0, optional: true, text: 'Duration of a single shock.' },
    ramp: { unit: 'K/min', atLeast: 0, optional: true, text: 'Rate at which the temperature changes.' },
    kinds: {
      kind: 'text',
      optional: true,
      text: 'Names of the elements and outputs to show, separated by semicolons; blank: all.',
    },
  },
  result: {
    kind: 'block',
    text: 'A heading row; for each kind one row, or one for each reason against it, with its mark; then notes.',
  },
  validity:
    'Tendencies of whole kinds for planning, from memory or common practice, as each reason says. The data of the individual sensor always decides.',
  source: { kind: 'practice', note: 'common practice, no source' },

  compute: ({ circumstances, axes, pulseDuration, ramp, kinds, ...blocks }) => {
    const said = pickedWords('circumstances', circumstances, CIRCUMSTANCES);
    if (!said.ok) return said;
    const shownKinds = pickedWords('kinds', kinds, KINDS);
    if (!shownKinds.ok) return shownKinds;
    const has = (word: (typeof CIRCUMSTANCES)[number]) => said.value?.includes(word) === true;
    const known: Circumstances = {
      axes,
      pulseDuration,
      ramp,
      isHardImpact: has('hard impact'),
      isIntegrated: has('integrated'),
      hasSeveralEarths: has('several earths'),
      environment: ENVIRONMENTS.filter(has),
    };
    const rows: Outcome<string[][]> = mapped(planFromBlocks(blocks), ({ plan }) =>
      plan.channels.flatMap((channel) => rowsOf(channel, plan.limits, known, shownKinds.value)),
    );
    return rows.ok ? outcome([[...HEADINGS], ...rows.value]) : rows;
  },

  examples: [
    {
      args: [
        [
          ['Channel', 'Lowest level', 'Highest level', 'Band low', 'Band high', 'Temperature low', 'Temperature high', 'Local mass', 'Mount', 'Cable'], // prettier-ignore
          ['bracket 3', 0.2, 60, 20, 2000, 15, 135, 120, 'stud', 'long'],
        ],
        [
          ['Mount', 'Mount mass'],
          ['stud', 0.6],
        ],
        [
          ['Cable', 'Effective mass', 'Capacitance'],
          ['long', 0.5, 2000],
        ],
        null,
        null,
        null,
        null,
        null,
        'ceramic; quartz; engineered crystal; IEPE; charge',
      ],
      result: [
        [...HEADINGS],
        ['bracket 3', 'ceramic', 'falls', 'thermal tolerance', '0.0446 %/K allowed, at best 0.1 %/K; or log its temperature and correct by its curve (from memory); ≥ 11.2 % thermal tolerance would bring it back.'], // prettier-ignore
        ['bracket 3', 'quartz', 'admissible', '', ''],
        ['bracket 3', 'engineered crystal', 'admissible', '', ''],
        ['bracket 3', 'IEPE', 'doubtful', 'temperature', '135 °C needed, usually rated up to 121 °C (from memory); ≤ 121 °C temperature high would settle it.'], // prettier-ignore
        ['bracket 3', 'charge', 'admissible', '', ''],
        ['bracket 3', 'note', '', '', 'Tendencies of whole kinds for planning: the data of the individual sensor always decides.'], // prettier-ignore
      ],
      from: 'by hand: 5 %/112 K = 0.0446 %/K removes plain ceramic and leaves quartz and crystal; 0.1 %/K × 112 K = 11.2 %; standard IEPE ends at 121 °C',
    },
    {
      args: [
        [
          ['Channel', 'Band low'],
          ['table', 0],
        ],
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        'quartz; capacitive silicon; charge; DC',
      ],
      result: [
        [...HEADINGS],
        ['table', 'quartz', 'falls', 'static and low frequency', '0 Hz asked: it discharges and has no static response (by definition); ≥ 0.1 Hz band low would bring it back.'], // prettier-ignore
        ['table', 'capacitive silicon', 'admissible', '', ''],
        ['table', 'charge', 'falls', 'charge or IEPE', 'No counterpart is left that it could be made with (by definition).'], // prettier-ignore
        ['table', 'DC', 'admissible', '', ''],
        ['table', 'note', '', '', 'Tendencies of whole kinds for planning: the data of the individual sensor always decides.'], // prettier-ignore
        ['table', 'note', '', '', 'Not asked: temperature, for want of Temperature low, Temperature high.'],
        ['table', 'note', '', '', 'Not asked: thermal tolerance, for want of Temperature low, Temperature high.'],
        ['table', 'note', '', '', 'Not asked: mass, for want of Local mass, Mount, Cable.'],
        ['table', 'note', '', '', 'Not asked: low level, for want of Lowest level, Band high.'],
        ['table', 'note', '', '', 'Not asked: full scale and shock, for want of Highest level.'],
        ['table', 'note', '', '', 'Not asked: band, for want of Band high.'],
      ],
      from: 'by definition: a piezoelectric sensor discharges, so nothing of it answers at 0 Hz; all else is blank',
    },
  ],
});
