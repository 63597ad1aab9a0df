import type { UnitId } from '../core/units';
import { exactNumber } from './exact-number';
import { PURPOSES, type Purpose } from './fields';
import type { JsonObject, JsonReader } from './json-record';
import type { ScopedLimit } from './limits';

type LimitKey = ScopedLimit['limit'];
/** A limit's name in a JSON plan; the keys of its bounds carry their unit. */
const NAMES: readonly (readonly [name: string, limit: LimitKey, unit: UnitId, suffix: string])[] = [
  ['signal_to_noise', 'signalToNoise', 'dB', '_dB'],
  ['headroom', 'headroom', 'dB', '_dB'],
  ['mass_ratio', 'massRatio', '1', ''],
  ['thermal_tolerance', 'thermalTolerance', '%', '_percent'],
  ['span_tolerance', 'spanTolerance', '%', '_percent'],
];

/** Limits for one purpose, one structure part or both, as `jsonScopedLimits` writes them. */
export const readScopedLimits = (reader: JsonReader, given: unknown, path: string): readonly ScopedLimit[] => {
  if (given === undefined || given === null) return [];
  if (!Array.isArray(given)) return reader.report(path, given, 'a list of limits in brackets') ?? [];
  return (given as unknown[]).flatMap((entry, i): ScopedLimit[] => {
    const at = `${path}[${i}]`;
    const object = reader.object(entry, at);
    const found = object && NAMES.find(([name]) => name === object['limit']);
    if (!object) return [];
    if (!found) {
      reader.report(`${at}.limit`, object['limit'], `one of ${NAMES.map(([name]) => name).join(', ')}`);
      return [];
    }
    const [, limit, unit, suffix] = found;
    const known = ['limit', 'purpose', 'group', 'origin', `pass${suffix}`, `warn${suffix}`];
    for (const key of Object.keys(object))
      if (!known.includes(key)) reader.report(`${at}.${key}`, object[key], `one of ${known.join(', ')}`);
    const bound = (key: string): number | undefined => {
      const value = object[`${key}${suffix}`] ?? undefined;
      return value === undefined ? undefined : reader.number(value, `${at}.${key}${suffix}`, unit, 'limits', '');
    };
    const purpose = object['purpose'] ?? undefined;
    // A limit whose purpose cannot be read must not hold for all.
    if (purpose !== undefined && !PURPOSES.includes(purpose as Purpose)) {
      reader.report(`${at}.purpose`, purpose, `one of ${PURPOSES.join(', ')}`);
      return [];
    }
    const group = reader.text(object['group'], `${at}.group`);
    if (purpose === undefined && group === undefined) {
      reader.report(at, entry, 'a purpose, a group or both');
      return [];
    }
    return [
      {
        limit,
        purpose: purpose as Purpose | undefined,
        group,
        pass: bound('pass'),
        warn: bound('warn'),
        origin:
          reader.text(object['origin'], `${at}.origin`) ?? ['this plan', purpose, group].filter(Boolean).join('; '),
      },
    ];
  });
};

export const jsonScopedLimits = (scoped: readonly ScopedLimit[]): readonly JsonObject[] =>
  scoped.map(({ limit, purpose, group, pass, warn, origin }) => {
    const [name, , unit, suffix] = NAMES.find(([, known]) => known === limit)!;
    return {
      limit: name,
      ...(purpose !== undefined && { purpose }),
      ...(group !== undefined && { group }),
      ...(pass !== undefined && { [`pass${suffix}`]: exactNumber(pass, unit) }),
      ...(warn !== undefined && { [`warn${suffix}`]: exactNumber(warn, unit) }),
      origin,
    };
  });
