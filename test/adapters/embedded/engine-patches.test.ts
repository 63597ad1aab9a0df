import type { IWorkbookData } from '@univerjs/core';
import { IDependencyManagerService } from '@univerjs/engine-formula';
import { patchLookupIndex } from '../../../src/adapters/embedded/cache-patch';
import { patchEngine } from '../../../src/adapters/embedded/engine-patches';
import { engineVersion, PATCHED_VERSION } from '../../../src/adapters/embedded/engine-version';
import { createHeadless } from '../../../src/adapters/embedded/node';
import { openInGrid } from '../../../src/adapters/embedded/open';
import { EmbeddedSpreadsheet } from '../../../src/adapters/embedded/spreadsheet';
import { apply, workbookOf } from './headless';

const ROWS = 60;
const column = (formula: (row: number) => string) => Array.from({ length: ROWS }, (_, i) => formula(i + 1));

/** Chains, lookups in computed and typed columns, functions that give addresses, spills, a name and a table. */
const workbook = (): IWorkbookData => {
  const formulas = [
    column((row) => `=A${row}*2+$K$1`),
    column((row) => `=IF(${row}=1,B1,C${Math.max(1, row - 1)}+B${row})`.replace(/IF\(1=1,B1,[^)]*\)/, 'B1')),
    column((row) => `=INDEX($A$1:$A$${ROWS},MATCH(B${row},$B$1:$B$${ROWS},0))`),
    column((row) => `=XLOOKUP(A${row},$A$1:$A$${ROWS},$B$1:$B$${ROWS})`),
    column((row) => `=SUM(OFFSET($A$1,0,0,${row},1))`),
    column((row) => `=COUNTIF($B$1:$B$${ROWS},">"&B${row})`),
  ];
  const rows = Array.from({ length: ROWS }, (_, i) => [i + 1, ...formulas.map((each) => each[i] as string)]);
  rows[0]?.push('=SEQUENCE(3,2)*A1', '', '=SUM(H1:I3)', 10, '=SUM(all)', '=INDIRECT("B"&A2)');
  return workbookOf(
    rows.map((row) => row.map((cell) => (cell === '' ? null : cell))),
    {
      resources: [
        {
          name: 'SHEET_DEFINED_NAME_PLUGIN',
          data: JSON.stringify({
            n: { id: 'n', name: 'all', formulaOrRefString: `Plan!$B$1:$B$${ROWS}`, localSheetId: 'AllDefaultWorkbook' },
          }),
        },
      ],
    },
  );
};

const start = async (version: string) => {
  const host = createHeadless([], version);
  await openInGrid(host.api, workbook());
  return { ...host, spreadsheet: new EmbeddedSpreadsheet(host) };
};
const valuesOf = async (spreadsheet: EmbeddedSpreadsheet) => {
  await spreadsheet.calculated();
  return (await spreadsheet.readSheet('Plan')).values;
};
const put = (row: number, at: number, value: number | string) =>
  ({ kind: 'cells', sheet: 'Plan', row, column: at, cells: [[value]] }) as const;

/** The same edits on any engine, and what the sheet holds after each. */
const play = async ({ api, spreadsheet }: Awaited<ReturnType<typeof start>>) => {
  const seen = [await valuesOf(spreadsheet)];
  await apply(spreadsheet, put(4, 0, 500));
  seen.push(await valuesOf(spreadsheet));
  await apply(spreadsheet, put(0, 10, 3), put(7, 1, '=A1+A60'));
  seen.push(await valuesOf(spreadsheet));
  api.getActiveWorkbook()?.getActiveSheet().insertRows(20, 2);
  seen.push(await valuesOf(spreadsheet));
  await apply(spreadsheet, put(20, 0, 7), put(30, 0, 8));
  seen.push(await valuesOf(spreadsheet));
  await api.getActiveWorkbook()?.undo();
  seen.push(await valuesOf(spreadsheet));
  return seen;
};

describe('the patches of the calculation engine', () => {
  it('are for the version that is installed', () => {
    expect(engineVersion()).toBe(PATCHED_VERSION);
  });

  // First, as the index of lookups is one for all engines and stays patched.
  it('change no result: the same edits give the same sheets without them', async () => {
    const plain = await start('another version');
    const expected = await play(plain);
    plain.univer.dispose();
    const patched = await start(PATCHED_VERSION);
    expect(await play(patched)).toEqual(expected);
    patched.univer.dispose();
  }, 120_000);

  it('stay away from any other version', () => {
    const { univer } = createHeadless([], 'another version');
    expect(patchEngine(univer.__getInjector(), '0.26.0')).toBe(false);
    const index = { set: () => undefined, _cache: new Map(), _continueBuildingCache: new Map() };
    const { set } = index;
    expect(patchLookupIndex('0.26.0', index)).toBe(false);
    expect(index.set).toBe(set);
    univer.dispose();
  });

  it('keep what the engine remembers from growing with every edit', async () => {
    const { univer, spreadsheet } = await start(PATCHED_VERSION);
    const manager = univer.__getInjector().get(IDependencyManagerService) as unknown as {
      _dependencyRTreeCache: { toJSON(): unknown };
    };
    const size = () => JSON.stringify(manager._dependencyRTreeCache.toJSON()).length;
    await apply(spreadsheet, put(4, 0, 1));
    await spreadsheet.calculated();
    const before = size();
    for (let edit = 0; edit < 5; edit++) {
      await apply(spreadsheet, put(4, 0, edit));
      await spreadsheet.calculated();
    }
    expect(size()).toBe(before);
    univer.dispose();
  }, 60_000);

  it('lose no edit that comes while a calculation is under way', async () => {
    const { univer, spreadsheet } = await start(PATCHED_VERSION);
    for (let edit = 0; edit < 12; edit++) {
      await apply(spreadsheet, put(edit, 0, 1000 + edit), put(59, 20, edit));
      await new Promise((resolve) => setTimeout(resolve, 30 * (edit % 5)));
    }
    const values = await valuesOf(spreadsheet);
    for (let edit = 0; edit < 12; edit++) expect(values[edit]?.[1]).toBe((1000 + edit) * 2 + 10);
    univer.dispose();
  }, 60_000);
});
