import fc from 'fast-check';
import fixture from '../fixtures/cases.json';
import { UNITS, toSi, type UnitId } from '../../src/core/units';
import { checkChannels, type ChannelCheck } from '../../src/plan/check';
import { exactNumber } from '../../src/plan/exact-number';
import { findingsOf } from '../../src/plan/findings';
import { planJson } from '../../src/plan/json-export';
import { readJsonPlan } from '../../src/plan/json-plan';
import type { Limits } from '../../src/plan/limits';
import type { Plan } from '../../src/plan/model';
import { judgePlan } from '../../src/workbook/plan-of';
import { recognise } from '../../src/workbook/recognise';
import { readWorkbook } from '../generate/demo-workbook';

const again = (plan: Plan) => readJsonPlan(JSON.parse(JSON.stringify(planJson(plan))));
const numbersOf = ({ channel, ...rest }: ChannelCheck) => ({ id: channel.id, ...rest });
const reasonsOf = (checks: readonly ChannelCheck[], limits: Limits) =>
  checks.map((check) => findingsOf(check, limits).map((finding) => ({ ...finding, named: undefined })));

const sheets = readWorkbook('assets/demo-plan.xlsx');
const demo = judgePlan(recognise(sheets), (name) => sheets.find(({ info }) => info.name === name)!.content).plan;
const cases = readJsonPlan({ ...fixture, panel_sums: undefined }).plan;

describe.each<[string, Plan, number]>([
  ['the twelve worked channels', cases, 12],
  ['the demo plan', demo, 287],
])('%s, exported as JSON and read again', (_name, plan, count) => {
  const fresh = again(plan);
  const [before, after] = [plan, fresh.plan].map(({ channels, limits }) => checkChannels(channels, limits));

  it('have the same numbers and verdicts to the last bit', () => {
    expect(after).toHaveLength(count);
    expect(after!.map(numbersOf)).toEqual(before!.map(numbersOf));
  });

  it('have the same reasons', () => {
    expect(reasonsOf(after!, fresh.plan.limits)).toEqual(reasonsOf(before!, plan.limits));
  });

  it('export to the same file again', () => {
    expect(planJson(fresh.plan)).toEqual(planJson(plan));
  });
});

describe('a JSON export', () => {
  it('keeps the pieces of a type, and rows that name one are of its type', () => {
    const typed = {
      sensors: { 'Ce-100': { pieces: [{ serial: 'S1', calibration_due: '2027-03-31', sensitivity_mV_per_gn: 98.4 }, { serial: 'S2' }] } }, // prettier-ignore
      channels: [{ id: 'a', serial: 's1' }, { id: 'b', sensor: 'Ce-100', serial: 'S3' }], // prettier-ignore
    };
    const { plan, misreads } = readJsonPlan(typed);
    expect(misreads).toEqual([]);
    expect(plan.channels.map(({ sensor, piece }) => [sensor?.name, piece?.serial])).toEqual([['Ce-100', 'S1'], ['Ce-100', undefined]]); // prettier-ignore
    expect(plan.sensors.get('Ce-100')!.quantity).toBe(2);
    // 98.4 mV/g by hand: 0.0984 V over 9.80665 m/s².
    expect(plan.sensors.get('Ce-100')!.pieces![0]!.sensitivity).toBeCloseTo(0.0984 / 9.80665, 12);
    expect(again(plan).plan.sensors).toEqual(plan.sensors);
    expect(planJson(again(plan).plan)).toEqual(planJson(plan));
  });

  it('does not turn a cell that could not be read into a blank', () => {
    const unread = demo.channels.filter(({ requirement }) => requirement.unread?.includes('bandHigh'));
    expect(unread.length).toBeGreaterThan(0);
    const { plan, misreads } = again(demo);
    expect(misreads.length).toBeGreaterThan(0);
    for (const { id } of unread)
      expect(plan.channels.find((channel) => channel.id === id)!.requirement.unread).toContain('bandHigh');
  });

  it('keeps limits with their origin, and the day a calibration is due', () => {
    const typed = {
      common: {
        calibration_temperature_degC: 20,
        limits: { headroom_pass_dB: 6, mass_ratio: { modal: { pass: 0.01 } }, origins: { headroom: 'test plan 7' } },
      },
      sensors: { A: { mass_gram: 3, calibration_due: '2027-03-31' } },
      cases: [],
    };
    const { plan, misreads } = readJsonPlan(typed);
    expect(misreads).toEqual([]);
    expect(plan.limits.headroom).toMatchObject({ pass: 6, origin: 'test plan 7' });
    // 2027-03-31 in a spreadsheet's count of days, by Python's calendar.
    expect(plan.sensors.get('A')!.calibrationDue).toBe(46477);
    expect(again(plan).plan.limits).toEqual(plan.limits);
    expect(planJson(plan)).toMatchObject({ sensors: { A: { calibration_due: '2027-03-31' } } });
  });

  it('keeps limits for some rows, and what a row says of its run, sensor and axes', () => {
    const own = { run: 'B', run_start: '2026-11-02', run_end: '2026-11-05', serial: '77', calibration_due: '2027-01-01', input_channel: 'M2-5', sensor_axis: '2', local_axes: 'Z30 Y-10' }; // prettier-ignore
    const for_some = [
      { limit: 'headroom', purpose: 'shock', pass_dB: 12, origin: 'test plan 7' },
      { limit: 'mass_ratio', group: 'Tail', pass: 0.05, warn: 0.1, origin: 'this plan; Tail' },
      { limit: 'thermal_tolerance', purpose: 'modal', group: 'Tail', pass_percent: 1, origin: 'this plan' },
    ];
    const typed = {
      common: { limits: { for_some } },
      cases: [{ id: '1', group: 'Tail', ...own, requirement: { headroom_limit_dB: 3, mass_ratio_limit: 0.2 } }],
    };
    const { plan, misreads } = readJsonPlan(typed);
    expect(misreads).toEqual([]);
    expect(plan.limits.scoped).toHaveLength(3);
    const written = planJson(plan) as { common: { limits: unknown }; cases: unknown[] };
    expect(written.common.limits).toMatchObject({ for_some });
    expect(written.cases[0]).toMatchObject(typed.cases[0]!);
    expect(again(plan).plan.limits).toEqual(plan.limits);
    expect(readJsonPlan({ common: { limits: { for_some: [{ limit: 'headroom', pass_dB: 3 }, { limit: 'other' }] } } }).misreads).toHaveLength(2); // prettier-ignore
  });

  it('refuses a day that no calendar has', () => {
    expect(readJsonPlan({ sensors: { A: { calibration_due: '2027-02-30' } } }).misreads).toHaveLength(1);
  });

  it('writes every number that can be typed in a unit so that it reads back as the same double', () => {
    const units = Object.keys(UNITS) as UnitId[];
    fc.assert(
      fc.property(
        fc.constantFrom(...units),
        fc.double({ noNaN: true, noDefaultInfinity: true, min: -1e12, max: 1e12 }),
        (unit, typed) => {
          const si = toSi(typed, unit);
          fc.pre(Math.abs(si) > 1e-250);
          expect(toSi(exactNumber(si, unit), unit)).toBe(si);
        },
      ),
      { numRuns: 20_000, seed: 1 },
    );
  });
});
