import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Host } from '../../src/adapters/embedded/host';
import { workbookFromFile } from '../../src/adapters/embedded/import/workbook';
import { openHeadless } from '../../src/adapters/embedded/node';
import { EmbeddedSpreadsheet } from '../../src/adapters/embedded/spreadsheet';
import { fromSi, type UnitId } from '../../src/core/units';
import type { ChannelCheck } from '../../src/plan/check';
import { OWN_KEYS, type OwnKey } from '../../src/workbook/own-columns';
import { judgePlan } from '../../src/workbook/plan-of';
import type { SheetContent } from '../../src/workbook/port';
import { recognise } from '../../src/workbook/recognise';
import { PlanSession } from '../../src/workbook/session';

// The pane's details come from the plan layer, the verdicts from formulas in cells: two routes that must not part.
let host: Host;
let content: SheetContent;
let column: number;
let byRow: ReadonlyMap<number, ChannelCheck>;

beforeAll(async () => {
  const bytes = new Uint8Array(readFileSync(join(__dirname, '../../assets/demo-plan.xlsx')));
  host = await openHeadless(await workbookFromFile(bytes, 'demo'));
  const spreadsheet = new EmbeddedSpreadsheet(host);
  const session = new PlanSession(spreadsheet);
  await session.read();
  await session.check({});
  column = (await session.read()).results!.column;
  const sheets = await Promise.all(
    (await spreadsheet.sheets()).map(async (info) => ({ info, content: await spreadsheet.readSheet(info.name) })),
  );
  content = sheets[0]!.content;
  byRow = judgePlan(recognise(sheets), (name) => sheets.find(({ info }) => info.name === name)!.content).byRow;
}, 120_000);
afterAll(() => host.univer.dispose());

const cell = (row: number, key: OwnKey) => content.values[row]![column + OWN_KEYS.indexOf(key)];
const channels = () => [...byRow];
const apart = (key: OwnKey, of: (check: ChannelCheck) => unknown) =>
  channels().flatMap(([row, check]) =>
    cell(row, key) === of(check)
      ? []
      : [`${check.channel.id}: cell ${String(cell(row, key))}, plan ${String(of(check))}`],
  );

describe('cells and plan on the demo', () => {
  it('judge the same rows', () => expect(byRow.size).toBe(287));

  it.each<[OwnKey, (check: ChannelCheck) => unknown]>([
    ['levelVerdict', (check) => check.level.verdict],
    ['massVerdict', (check) => check.mass.verdict],
    ['thermalVerdict', (check) => check.thermal.verdict],
    ['frequencyVerdict', (check) => check.frequency.verdict],
    ['verdict', (check) => check.verdict],
  ])('agree on the %s of every row', (key, of) => expect(apart(key, of)).toEqual([]));

  it.each<[OwnKey, UnitId, (check: ChannelCheck) => number | null | undefined]>([
    ['signalToNoise', 'dB', (check) => check.level.signalToNoise],
    ['headroom', 'dB', (check) => check.level.headroom],
    ['massRatio', '1', (check) => check.mass.ratio],
    ['thermalLow', '%', (check) => check.thermal.band?.low],
    ['thermalHigh', '%', (check) => check.thermal.band?.high],
    ['spanLow', 'Hz', (check) => check.frequency.span?.low],
    ['spanHigh', 'Hz', (check) => check.frequency.span?.high],
  ])('agree on the number %s of every row', (key, unit, of) => {
    for (const [row, check] of channels()) {
      const planned = of(check);
      const shown = cell(row, key);
      if (planned === undefined || planned === null)
        expect([check.channel.id, typeof shown]).toEqual([check.channel.id, 'object']);
      else
        expect(Math.abs((shown as number) - fromSi(planned, unit))).toBeLessThanOrEqual(
          1e-9 * Math.max(1, Math.abs(fromSi(planned, unit))),
        );
    }
  });

  it('give a reason for every row that does not pass, and none for one that does', () => {
    for (const [row, check] of channels())
      expect([check.channel.id, cell(row, 'reason') !== '–']).toEqual([check.channel.id, check.verdict !== 'PASS']);
  });

  it('name the input that does not fit and the temperature limit that is exceeded', () => {
    const told = channels().flatMap(([row, { channel, level, thermal }]) => {
      const words = [
        ...(level.modeMismatch ? [`${level.modeMismatch.output} output on an ${level.modeMismatch.mode} input`] : []),
        ...thermal.excesses.map(({ part, end, limit }) => `${end === 'low' ? 'lower' : 'upper'} limit of the ${part} ${String(limit)} °C`), // prettier-ignore
      ];
      return words.map((part) => [channel.id, part, String(cell(row, 'reason'))] as const);
    });
    expect(new Set(told.map(([id]) => id))).toEqual(new Set(['M003', 'M016', 'M017', 'M031', 'M032']));
    for (const [, part, reason] of told) expect(reason).toContain(part);
    expect(channels().filter(([row]) => String(cell(row, 'reason')).includes('do not say why'))).toEqual([]);
  });
});
