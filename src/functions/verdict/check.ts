import { failure, outcome, type Outcome } from '../../core/issue';
import { fromSi, type UnitId } from '../../core/units';
import { CheckMemory } from '../../plan/check-memory';
import { checkChannel, type ChannelCheck } from '../../plan/check';
import { findingsOf } from '../../plan/findings';
import { planFromTables } from '../../plan/from-tables';
import type { Limits } from '../../plan/limits';
import type { Misread } from '../../plan/misread';
import { reasonText } from '../../plan/sentence';
import { defineFunction, type Block } from '../define';
import { isBlankRow, tableFromBlock } from './table-from-block';

const HEADINGS = [
  'Channel',
  'Signal to noise [dB]',
  'Headroom [dB]',
  'Level verdict',
  'Mass ratio',
  'Mass verdict',
  'Thermal low [%]',
  'Thermal high [%]',
  'Thermal verdict',
  'Span low [Hz]',
  'Span high [Hz]',
  'Frequency verdict',
  'Verdict',
  'Reason',
] as const;

type Shown = number | string;
const shown = (si: number | undefined, unit: UnitId): Shown =>
  si === undefined || !Number.isFinite(si) ? '' : fromSi(si, unit);

const rowOf = (check: ChannelCheck, limits: Limits, unread: readonly string[]): Shown[] => {
  const { level, mass, thermal, frequency } = check;
  return [
    check.channel.id,
    shown(level.signalToNoise, 'dB'),
    shown(level.headroom, 'dB'),
    level.verdict,
    shown(mass.ratio, '1'),
    mass.verdict,
    shown(thermal.band?.low, '%'),
    shown(thermal.band?.high, '%'),
    thermal.verdict,
    shown(frequency.span?.low, 'Hz'),
    shown(frequency.span?.high, 'Hz'),
    frequency.verdict,
    check.verdict,
    [reasonText(findingsOf(check, limits)), ...unread].filter((text) => text !== '').join(' '),
  ];
};

/** What a row of the channel list holds that could not be read, by row. */
const unreadTexts = (misreads: readonly Misread[]): ReadonlyMap<number, readonly string[]> => {
  const byRow = new Map<number, string[]>();
  for (const { place, read, expected } of misreads) {
    if (place.kind !== 'cell' || place.table !== 'channels' || place.row === undefined) continue;
    const texts = byRow.get(place.row) ?? [];
    byRow.set(place.row, [...texts, `${place.heading}: read "${read}", expected ${expected}.`]);
  }
  return byRow;
};

const checkBlocks = (
  blocks: Readonly<Record<'channels', Block> & Partial<Record<string, Block>>>,
): Outcome<Shown[][]> => {
  const channels = tableFromBlock('channels', blocks.channels);
  if (!channels || channels.columns.size === 0)
    return failure({
      code: 'wrong-size',
      arg: 'channels',
      given: 'a range without headings of a channel list',
      rule: 'the heading row and the rows below it',
    });
  const lists = (['sensors', 'mounts', 'cables', 'inputs', 'limits'] as const).flatMap((name) => {
    const table = blocks[name] && tableFromBlock(name, blocks[name]);
    return table ? [table] : [];
  });
  const { plan, at, misreads } = planFromTables([channels, ...lists]);
  const memory = new CheckMemory();
  const unreadByRow = unreadTexts(misreads);
  const byRow = new Map(at.map((row, i) => [row, plan.channels[i]!]));
  const rows = channels.rows.map((cells, i) => {
    const row = channels.at[i]!;
    const channel = isBlankRow(cells) ? undefined : byRow.get(row);
    if (!channel) return HEADINGS.map(() => '');
    return rowOf(checkChannel(channel, plan.limits, memory), plan.limits, unreadByRow.get(row) ?? []);
  });
  return outcome([[...HEADINGS], ...rows]);
};

export const check = defineFunction({
  name: 'CHECK',
  family: 'verdict',
  summary: 'Checks every row of a channel list against the lists it names: numbers, verdicts and reasons.',
  equation: 'worst of level, mass loading, thermal deviation and frequency span, row by row',
  args: {
    channels: { kind: 'block', text: 'The channel list with its heading row.' },
    sensors: { kind: 'block', text: 'The sensor list with its heading row.' },
    mounts: { kind: 'block', text: 'The mount list with its heading row.' },
    cables: { kind: 'block', text: 'The cable list with its heading row.' },
    inputs: { kind: 'block', text: 'The input list with its heading row.' },
    limits: { kind: 'block', optional: true, text: 'The limits with their heading row; blank: the defaults.' },
  },
  result: {
    kind: 'block',
    text: 'A heading row and one row for each row of the list; a blank row stays blank. What cannot be computed is blank and makes its verdict INCOMPLETE.',
  },
  validity: 'Headings in the words of our own sheets or close to them. Rows across each other are checked by the pane.',
  source: { kind: 'derivation', from: 'the functions of each headline, one after the other' },

  compute: (blocks) => checkBlocks(blocks),

  examples: [
    {
      args: [
        [
          ['Channel', 'Purpose', 'Lowest level', 'Highest level', 'Band low', 'Band high', 'Temperature low', 'Temperature high', 'Local mass', 'Sensor type', 'Mount', 'Cable', 'Input'], // prettier-ignore
          ['striker', 'shock', 20, 800, 100, 5000, 18, 28, 900, 'bridge 2000', 'screw', 'short', 'fast'],
          ['axle', 'shock', 20, 800, 100, 5000, 18, 28, null, 'bridge 2000', 'screw', 'short', 'fast'],
        ],
        [
          ['Sensor type', 'Output', 'Sensitivity', 'Full scale', 'Mass', 'Noise density', 'Resonance', 'Quality factor', 'Temperature min', 'Temperature max', 'Thermal deviation'], // prettier-ignore
          ['bridge 2000', 'DC', 0.2, 2000, 1.3, '1:1500; 10000:1500', 26000, 10, -54, 121, '-54:2.5; 23:0; 121:-3'],
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
          ['fast', 'voltage', 1, 110, 204800, 'none'],
        ],
      ],
      result: [
        [...HEADINGS],
        ['striker', 45.59445114692848, 7.958800173440752, 'PASS', 0.0036666666666666666, 'PASS', -0.1530612244897922, 0.16233766233766378, 'PASS', 0, 5690.763060926828, 'PASS', 'PASS', ''], // prettier-ignore
        ['axle', 45.59445114692848, 7.958800173440752, 'PASS', '', 'INCOMPLETE', -0.1530612244897922, 0.16233766233766378, 'PASS', 0, 5690.763060926828, 'PASS', 'INCOMPLETE', 'Not known: Local mass.'], // prettier-ignore
      ],
      within: 1e-6,
      from: 'a drop rig’s striker plate, computed independently with Python/scipy; the second row lacks its local mass',
    },
    {
      args: [
        [
          ['Channel', 'Sensor type', 'Mount', 'Cable', 'Input'],
          ['1', null, null, null, null],
        ],
        [['Sensor type']],
        [['Mount']],
        [['Cable']],
        [['Input']],
      ],
      result: [
        [...HEADINGS],
        ['1', '', '', 'INCOMPLETE', '', 'INCOMPLETE', '', '', 'INCOMPLETE', '', '', 'INCOMPLETE', 'INCOMPLETE', 'Not known: Lowest level, Highest level, Sensor type, Band low, Band high, Input, Mount, Cable, Local mass, Temperature low, Temperature high.'], // prettier-ignore
      ],
      from: 'by definition: nothing is known but the channel’s name',
    },
  ],
});
