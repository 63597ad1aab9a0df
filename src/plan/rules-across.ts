import { massRatio } from '../core/mass/loading';
import { verdictAtMost, type Verdict } from '../core/verdict';
import type { ChannelCheck } from './check';
import type { AcrossFinding } from './finding';
import type { Limits } from './limits';

/** A finding about several rows, with the places of their channels in the plan. */
export interface AcrossRows {
  readonly finding: AcrossFinding;
  readonly rows: readonly number[];
}

/** What shows only when the rows are looked at together. */
export const acrossRows = (checks: readonly ChannelCheck[], limits: Limits): readonly AcrossRows[] => [
  ...controlFindings(checks),
  ...addedMasses(checks, limits),
  ...sameChannels(checks),
  ...sameDirections(checks),
];

/** Rows by a key; rows without one are left out. */
const grouped = (checks: readonly ChannelCheck[], keyOf: (check: ChannelCheck) => string | undefined) => {
  const groups = new Map<string, number[]>();
  checks.forEach((check, row) => {
    const key = keyOf(check);
    if (key === undefined) return;
    const rows = groups.get(key);
    if (rows) rows.push(row);
    else groups.set(key, [row]);
  });
  return groups;
};
const folded = (text: string | undefined): string => (text ?? '').trim().toLowerCase();
const filled = (text: string | undefined): string | undefined => (folded(text) === '' ? undefined : folded(text));

const controlFindings = (checks: readonly ChannelCheck[]): AcrossRows[] => {
  const found: AcrossRows[] = [];
  const groups = grouped(checks, ({ channel }) => (channel.role === 'control' ? folded(channel.group) : undefined));
  for (const rows of groups.values()) {
    const group = checks[rows[0]!]!.channel.group?.trim() ?? '';
    if (rows.length === 1) found.push({ finding: { check: 'control count', verdict: 'WARN', group, number: 1 }, rows });
    for (const row of rows) {
      const { channel, verdict } = checks[row]!;
      if (verdict !== 'PASS')
        found.push({ finding: { check: 'control verdict', verdict, channel: channel.id }, rows: [row] });
    }
  }
  return found;
};

/** Sensors that load one panel (or, where no panel is given, one point) in one set-up, each housing once. */
const addedMasses = (checks: readonly ChannelCheck[], limits: Limits): AcrossRows[] => {
  const placeOf = ({ channel }: ChannelCheck) => filled(channel.panel) ?? filled(channel.point);
  const groups = grouped(checks, (check) => {
    const place = placeOf(check);
    return place && [folded(check.channel.group), check.channel.panel ? 'panel' : 'point', place].join('\n');
  });
  return [...groups.values()].flatMap((rows) => {
    const finding = sumOf(
      rows.map((row) => checks[row]!),
      limits,
    );
    return finding.housings > 1 ? [{ finding, rows }] : [];
  });
};

/** Added mass of several channels against the smallest of their local masses, by the strictest of their limits. */
export const sumOf = (
  checks: readonly ChannelCheck[],
  limits: Limits,
): Extract<AcrossFinding, { check: 'added masses' }> => {
  const housings = housingsOf(checks);
  let total = 0;
  let local = Infinity;
  let complete = true;
  let verdict: Verdict = 'PASS';
  for (const { mass } of housings) {
    if (mass.total === undefined) complete = false;
    else total += mass.total;
  }
  for (const { mass } of checks) {
    if (mass.localMass === undefined) complete = false;
    else local = Math.min(local, mass.localMass);
  }
  const number = local < Infinity ? massRatio(total, local) : undefined;
  const bounds = checks.map(({ mass }) => mass.limit ?? limits.massRatio.modal);
  const bound = bounds.reduce(
    (strict, next) => (next.pass < strict.pass ? next : strict),
    bounds[0] ?? limits.massRatio.survey,
  );
  verdict = verdictAtMost(number, bound.pass, bound.warn);
  if (!complete && verdict !== 'FAIL') verdict = 'INCOMPLETE';
  const { channel } = checks[0]!;
  return {
    check: 'added masses',
    verdict,
    place: channel.panel?.trim() || channel.point?.trim() || channel.id,
    number,
    isBound: complete ? undefined : true,
    limit: bound.pass,
    origin: bound.origin,
    total: complete ? total : undefined,
    localMass: complete ? local : undefined,
    housings: housings.length,
  };
};

/** A triaxial sensor fills several rows of one point but is mounted once. */
export const housingsOf = (checks: readonly ChannelCheck[]): ChannelCheck[] => {
  const axesLeft = new Map<string, number>();
  return checks.filter(({ channel }) => {
    const axes = channel.sensor?.axes ?? 1;
    if (axes <= 1) return true;
    const key = `${folded(channel.point)}\n${channel.sensor?.name}`;
    const left = axesLeft.get(key) ?? 0;
    axesLeft.set(key, left > 0 ? left - 1 : axes - 1);
    return left <= 0;
  });
};

const sameChannels = (checks: readonly ChannelCheck[]): AcrossRows[] =>
  [...grouped(checks, ({ channel }) => filled(channel.id)).values()]
    .filter((rows) => rows.length > 1)
    .map((rows) => {
      const channel = checks[rows[0]!]!.channel.id.trim();
      return { finding: { check: 'same channel', verdict: 'FAIL', channel, number: rows.length }, rows };
    });

const sameDirections = (checks: readonly ChannelCheck[]): AcrossRows[] => {
  const keyOf = ({ channel }: ChannelCheck) => {
    const point = filled(channel.point);
    const direction = plainDirection(channel.direction, point);
    return point && direction && [folded(channel.group), point, direction].join('\n');
  };
  return [...grouped(checks, keyOf).values()]
    .filter((rows) => rows.length > 1)
    .map((rows) => {
      const { point = '', direction = '' } = checks[rows[0]!]!.channel;
      const channels = rows.map((row) => checks[row]!.channel.id);
      return { finding: { check: 'same direction', verdict: 'WARN', point, direction, channels }, rows };
    });
};

/** "+X", "X+", "X" and "12X+" at point 12 are one direction; the sign goes last. */
export const plainDirection = (direction: string | undefined, point: string | undefined): string | undefined => {
  let text = folded(direction).replace(/[\s:]/g, '').replace('−', '-');
  if (point && text.startsWith(point)) text = text.slice(point.length);
  const sign = text.includes('-') ? '-' : '+';
  const axis = text.replace(/[+-]/g, '');
  return axis === '' ? undefined : axis + sign;
};
