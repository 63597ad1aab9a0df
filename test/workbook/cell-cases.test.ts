import { openHeadless } from '../../src/adapters/embedded/node';
import { EmbeddedSpreadsheet } from '../../src/adapters/embedded/spreadsheet';
import type { Host } from '../../src/adapters/embedded/host';
import { OWN_KEYS, type OwnKey } from '../../src/workbook/own-columns';
import type { PlanView } from '../../src/workbook/plan-view';
import { PlanSession } from '../../src/workbook/session';
import { CASES, caseSheets } from './case-sheets';
import { workbookData } from './case-workbook';

/* eslint-disable @typescript-eslint/no-explicit-any */
const RELATIVE = 1e-6;

let host: Host;
let spreadsheet: EmbeddedSpreadsheet;
let session: PlanSession;
let view: PlanView;
const row = (id: string) => 1 + CASES.cases.findIndex((c: any) => c.id === id);

const cellsOf = async (id: string): Promise<Record<OwnKey, unknown>> => {
  const { values } = await spreadsheet.readSheet('Channels');
  const column = view.results?.column ?? -1;
  return Object.fromEntries(OWN_KEYS.map((key, i) => [key, values[row(id)]?.[column + i]])) as Record<OwnKey, unknown>;
};
const near = (actual: unknown, expected: number) => {
  expect(typeof actual).toBe('number');
  expect(Math.abs((actual as number) - expected)).toBeLessThanOrEqual(Math.abs(expected) * RELATIVE + 1e-12);
};

beforeAll(async () => {
  host = await openHeadless(workbookData(caseSheets()));
  spreadsheet = new EmbeddedSpreadsheet(host);
  session = new PlanSession(spreadsheet);
  await session.read();
  await session.check({});
  view = await session.read();
}, 60_000);
afterAll(() => host.univer.dispose());

// Expected values: test/fixtures/cases.json, computed independently with Python/scipy.
describe('the twelve worked cases in cells', () => {
  it.each(CASES.cases.map((c: any) => [c.id, c.expected]) as [string, any][])('%s', async (id, expected) => {
    const cells = await cellsOf(id);
    near(cells.noise, expected.level.noise_rms_gn);
    near(cells.ceiling, expected.level.upper_limit_gn);
    near(cells.signalToNoise, expected.level.signal_to_noise_dB);
    near(cells.headroom, expected.level.headroom_dB);
    near(cells.massRatio, expected.mass.mass_ratio);
    if (expected.thermal.low_percent === null) expect(cells.thermalLow).toEqual({ error: '#N/A' });
    else {
      near(cells.thermalLow, expected.thermal.low_percent);
      near(cells.thermalHigh, expected.thermal.high_percent);
    }
    near(cells.spanLow, expected.frequency.span_5_percent.low_Hz);
    near(cells.spanHigh, expected.frequency.span_5_percent.high_Hz);
    expect({
      level: cells.levelVerdict,
      mass: cells.massVerdict,
      thermal: cells.thermalVerdict,
      frequency: cells.frequencyVerdict,
      verdict: cells.verdict,
    }).toEqual({
      level: expected.level.verdict,
      mass: expected.mass.verdict,
      thermal: expected.thermal.verdict,
      frequency: expected.frequency.verdict,
      verdict: expected.verdict,
    });
    if (expected.verdict === 'PASS') expect(cells.reason).toBe('–');
    else expect(cells.reason).toMatch(/\.$/);
  });

  it('count up to twelve with the failing rows first', () => {
    const verdicts = view.results?.rows.map(({ verdict }) => verdict) ?? [];
    expect(verdicts).toHaveLength(12);
    expect(verdicts.indexOf('PASS')).toBeGreaterThan(verdicts.lastIndexOf('FAIL'));
  });
});
