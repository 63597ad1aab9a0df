import { massRatio } from '../../core/mass/loading';
import { verdictAtMost } from '../../core/verdict';
import type { ChannelCheck } from '../check';
import type { AcrossFinding } from '../finding';
import type { Bound, Limits } from '../limits';
import { limitsFor } from '../limits-for';
import { placeOf } from '../point';
import { housingsOf } from './housings';
import { filled, grouped, setUpOf, spelling, type AcrossRows } from './rows';

type AddedMasses = Extract<AcrossFinding, { check: 'added masses' }>;

/** Sensors that load one panel (or, where no panel is given, one point) in one set-up, each housing once. */
export const addedMasses = (checks: readonly ChannelCheck[], limits: Limits): readonly AcrossRows[] => {
  const groups = grouped(checks, ({ channel }) => {
    const panel = filled(channel.panel);
    const place = panel ?? placeOf(channel).point;
    return place && [setUpOf(channel), panel ? 'panel' : 'point', place].join('\n');
  });
  return [...groups.values()].flatMap((rows) => {
    const finding = sumOf(
      rows.map((row) => checks[row]!),
      limits,
    );
    return finding.housings > 1 ? [{ finding, rows }] : [];
  });
};

const byStrictness = (a: Bound, b: Bound): number =>
  a.pass - b.pass ||
  (a.warn ?? a.pass) - (b.warn ?? b.pass) ||
  (a.origin < b.origin ? -1 : Number(a.origin > b.origin));

/** Added mass of several channels against the smallest of their local masses, by the strictest of their limits. */
export const sumOf = (checks: readonly ChannelCheck[], limits: Limits): AddedMasses => {
  const housings = housingsOf(checks);
  const totals = housings.map(({ mass }) => mass.total);
  const locals = checks.map(({ mass }) => mass.localMass);
  const isComplete = [...totals, ...locals].every((mass) => mass !== undefined);
  // In order of size, so that rounding does not depend on the order of the rows.
  const total = totals
    .filter((mass) => mass !== undefined)
    .sort((a, b) => a - b)
    .reduce((sum, mass) => sum + mass, 0);
  const local = Math.min(...locals.filter((mass) => mass !== undefined));
  const number = local < Infinity ? massRatio(total, local) : undefined;
  const [bound = limits.massRatio.survey] = checks
    .map(({ mass, channel }) => mass.limit ?? limitsFor(channel, limits).massRatio.modal)
    .sort(byStrictness);
  const verdict = verdictAtMost(number, bound.pass, bound.warn);
  return {
    check: 'added masses',
    verdict: isComplete || verdict === 'FAIL' ? verdict : 'INCOMPLETE',
    place: spelling(checks.map(({ channel }) => channel.panel?.trim() || channel.point?.trim() || channel.id)),
    number,
    isBound: isComplete ? undefined : true,
    limit: bound.pass,
    origin: bound.origin,
    total: isComplete ? total : undefined,
    localMass: isComplete ? local : undefined,
    housings: housings.length,
  };
};
