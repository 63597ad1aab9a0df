import { checkChannel } from '../../src/plan/check';
import { findingsOf } from '../../src/plan/findings';
import type { Purpose } from '../../src/plan/fields';
import { DEFAULT_LIMITS } from '../../src/plan/limits';
import { limitsFor } from '../../src/plan/limits-for';
import { limitsOf } from '../../src/plan/limits-table';
import type { Misread } from '../../src/plan/misread';
import type { Channel, Requirement } from '../../src/plan/model';
import { sentenceOf } from '../../src/plan/sentence';

type Row = readonly [limit: string, pass?: number, warn?: number, purpose?: string, group?: string, origin?: string, unit?: string]; // prettier-ignore
const misreads: Misread[] = [];
const table = (...rows: readonly Row[]) => {
  misreads.length = 0;
  return limitsOf(
    rows.map(([limit, pass, warn, purpose, group, origin, limitUnit], i) => ({
      at: i + 2,
      values: JSON.parse(JSON.stringify({ limit, pass, warn, purpose, group, origin, limitUnit })) as Record<
        string,
        unknown
      >,
      unread: [],
    })),
    misreads,
  );
};
const row = (purpose?: Purpose, group?: string, own: Partial<Requirement> = {}): Channel => ({
  id: '1',
  group,
  requirement: { purpose, detector: { kind: 'band' }, localMass: [], ...own },
});

const LIMITS = () =>
  table(
    ['Headroom', 6, 3],
    ['Headroom', 8, undefined, 'shock'],
    ['Headroom', 10, undefined, undefined, 'Wing skin', 'agreed with the test leader'],
    ['Headroom', 12, 1, 'shock', 'wing  SKIN '],
    ['Mass ratio', 5, 10, undefined, 'Tail', undefined, '%'],
    ['Mass ratio, modal', 0.01, undefined, undefined, 'Tail'],
  );

describe('the limit that a row meets', () => {
  it.each<[Purpose | undefined, string | undefined, number, number, string]>([
    [undefined, undefined, 6, 3, 'this plan'],
    ['modal', 'Tail', 6, 3, 'this plan'],
    ['shock', undefined, 8, 3, 'this plan; shock'],
    ['modal', 'Wing skin', 10, 3, 'agreed with the test leader; Wing skin'],
    ['shock', 'Wing skin', 12, 1, 'this plan; shock; wing  SKIN'],
  ])('for %s in %s is %s dB, WARN from %s dB, by "%s"', (purpose, group, pass, warn, origin) => {
    expect(limitsFor(row(purpose, group), LIMITS()).headroom).toMatchObject({ pass, warn, origin });
  });

  it('is the row’s own before all others, and still the plan’s for WARN', () => {
    const own = limitsFor(row('shock', 'Wing skin', { headroomLimit: 2, signalToNoiseLimit: 26, massRatioLimit: 0.3 }), LIMITS()); // prettier-ignore
    expect(own.headroom).toMatchObject({ pass: 2, warn: 1, origin: 'this row' });
    expect(own.signalToNoise).toMatchObject({ pass: 26, warn: 10 });
    expect(own.massRatio.shock).toMatchObject({ pass: 0.3, warn: 0.2 });
  });

  it('may be a mass ratio for all purposes of a part, in per cent too', () => {
    const tail = limitsFor(row('survey', 'tail'), LIMITS());
    expect(tail.massRatio.survey).toMatchObject({ pass: 0.05, warn: 0.1 });
    expect(tail.massRatio.modal).toMatchObject({ pass: 0.01, warn: 0.1 });
    expect(LIMITS().massRatio).toEqual(DEFAULT_LIMITS.massRatio);
  });

  it('of the whole plan for one purpose holds for that purpose', () => {
    expect(table(['Mass ratio', 0.05, undefined, 'modal']).massRatio).toMatchObject({ modal: { pass: 0.05 }, survey: { pass: 0.1 } }); // prettier-ignore
    expect(table(['Mass ratio', 0.05], ['Mass ratio, modal', 0.01]).massRatio).toMatchObject({ modal: { pass: 0.01 }, shock: { pass: 0.05 } }); // prettier-ignore
  });

  it('does not change when it is asked for twice', () => {
    const limits = LIMITS();
    const channel = row('shock', 'Wing skin', { massRatioLimit: 0.3 });
    expect(limitsFor(channel, limitsFor(channel, limits))).toEqual(limitsFor(channel, limits));
    expect(limitsFor(row(), DEFAULT_LIMITS)).toBe(DEFAULT_LIMITS);
  });

  it('set twice for the same rows is the first, and told', () => {
    const limits = table(['Headroom', 7, undefined, undefined, 'Tail'], ['headroom', 9, undefined, undefined, 'TAIL']);
    expect(limitsFor(row(undefined, 'Tail'), limits).headroom.pass).toBe(7);
    expect(misreads).toMatchObject([{ place: { row: 3 } }]);
  });

  it('contradicting its own name is no limit', () => {
    expect(table(['Mass ratio, modal', 0.5, undefined, 'shock']).massRatio).toEqual(DEFAULT_LIMITS.massRatio);
    expect(misreads).toHaveLength(1);
  });
});

describe('a verdict', () => {
  const heavy = (own: Partial<Requirement> = {}, group?: string): Channel => ({
    ...row('survey', group, { localMass: [{ model: 'value', mass: 1 }], ...own }),
    sensor: { name: 'S', mass: 0.07 },
    mount: { name: 'M', mass: 0 },
    cable: { name: 'C', mass: 0 },
  });
  const told = (channel: Channel) => {
    const limits = LIMITS();
    const check = checkChannel(channel, limits);
    return [
      check.mass.verdict,
      findingsOf(check, limits, 'mass')
        .map((finding) => sentenceOf(finding))
        .join(' '),
    ];
  };
  it('says which limit it met', () => {
    expect(told(heavy())).toEqual(['PASS', 'Mass ratio 0.07, limit 0.10 (default).']);
    expect(told(heavy({}, 'Tail'))[0]).toBe('WARN');
    expect(told(heavy({}, 'Tail'))[1]).toContain('limit 0.05 (this plan; Tail)');
    expect(told(heavy({ massRatioLimit: 0.08 }, 'Tail'))).toEqual(['PASS', 'Mass ratio 0.07, limit 0.08 (this row).']);
  });
  it('is INCOMPLETE while the row’s own limit cannot be read', () => {
    const [verdict, text] = told(heavy({ unread: ['massRatioLimit'] }));
    expect(verdict).toBe('INCOMPLETE');
    expect(text).toBe('Not known: Mass ratio limit.');
    const limits = LIMITS();
    const check = checkChannel(heavy({ unread: ['headroomLimit', 'signalToNoiseLimit'] }), limits);
    expect(JSON.stringify(findingsOf(check, limits))).not.toContain('null');
    expect(findingsOf(check, limits, 'level').map((finding) => sentenceOf(finding)).join(' ')).toContain('Headroom limit'); // prettier-ignore
  });
});
