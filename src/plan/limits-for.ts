import { PURPOSES, type Purpose } from './fields';
import { changed } from './json-limits';
import { ROW_ORIGIN, type Bound, type Limits, type ScopedLimit } from './limits';
import type { Channel, Requirement } from './model';

type Own = Pick<Requirement, 'signalToNoiseLimit' | 'headroomLimit' | 'massRatioLimit'>;
const OWN = {
  signalToNoise: 'signalToNoiseLimit',
  headroom: 'headroomLimit',
  massRatio: 'massRatioLimit',
} as const satisfies Record<string, keyof Own>;

const folded = (text: string | undefined): string => (text ?? '').trim().replace(/\s+/g, ' ').toLowerCase();

/** What was worked out before, by the limits and then by what of a row decides. */
const known = new WeakMap<Limits, Map<string, Limits>>();
const MOST_KNOWN = 2000;

/**
 * The limits of one row: the plan's, over them those for its purpose, for its structure part and for both, over all the
 * row's own. The more particular one goes first, bound by bound; a row's own moves the bound for PASS alone.
 */
export const limitsFor = ({ group, requirement }: Channel, limits: Limits): Limits => {
  if (!limits.scoped && !hasOwn(requirement)) return limits;
  const { signalToNoiseLimit, headroomLimit, massRatioLimit } = requirement;
  const unread = Object.values(OWN).filter((key) => requirement.unread?.includes(key));
  const purpose = requirement.purpose ?? (requirement.unread?.includes('purpose') ? undefined : limits.purpose);
  const key = JSON.stringify([purpose, folded(group), signalToNoiseLimit, headroomLimit, massRatioLimit, unread]);
  let found = known.get(limits);
  if (!found) known.set(limits, (found = new Map()));
  let own = found.get(key);
  if (!own) {
    own = withOwn(withScopes(limits, purpose, group), requirement);
    if (found.size < MOST_KNOWN) found.set(key, own);
  }
  return own;
};

const hasOwn = (requirement: Requirement): boolean =>
  Object.values(OWN).some((key) => requirement[key] !== undefined || requirement.unread?.includes(key));

/** Later ones go over earlier ones. */
const particular = ({ purpose, group }: ScopedLimit): number =>
  (group === undefined ? 0 : 2) + (purpose === undefined ? 0 : 1);

const withScopes = (limits: Limits, purpose: Purpose | undefined, group: string | undefined): Limits => {
  const inPart = (limits.scoped ?? [])
    .filter((scoped) => scoped.group === undefined || folded(scoped.group) === folded(group))
    .sort((a, b) => particular(a) - particular(b));
  const over = (limit: ScopedLimit['limit'], bound: Bound, of: Purpose | undefined): Bound =>
    inPart
      .filter((scoped) => scoped.limit === limit && (scoped.purpose === undefined || scoped.purpose === of))
      .reduce((under, { pass, warn, origin }) => changed(under, pass, warn, origin), bound);
  return {
    ...limits,
    scoped: undefined,
    signalToNoise: over('signalToNoise', limits.signalToNoise, purpose),
    headroom: over('headroom', limits.headroom, purpose),
    massRatio: Object.fromEntries(
      PURPOSES.map((of) => [of, over('massRatio', limits.massRatio[of], of)]),
    ) as Limits['massRatio'],
    thermalTolerance: over('thermalTolerance', limits.thermalTolerance, purpose),
    spanTolerance: over('spanTolerance', limits.spanTolerance, purpose),
  };
};

/** A limit that was given and cannot be read is no limit that anything could pass. */
const withOwn = (limits: Limits, requirement: Requirement): Limits => {
  const over = (bound: Bound, key: keyof Own): Bound => {
    const own = requirement.unread?.includes(key) ? NaN : requirement[key];
    return own === undefined ? bound : { ...bound, pass: own, origin: ROW_ORIGIN };
  };
  const { massRatio } = limits;
  return {
    ...limits,
    signalToNoise: over(limits.signalToNoise, OWN.signalToNoise),
    headroom: over(limits.headroom, OWN.headroom),
    massRatio: hasOwn(requirement)
      ? {
          survey: over(massRatio.survey, OWN.massRatio),
          modal: over(massRatio.modal, OWN.massRatio),
          shock: over(massRatio.shock, OWN.massRatio),
        }
      : massRatio,
  };
};
