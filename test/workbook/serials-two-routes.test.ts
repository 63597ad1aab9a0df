import { openHeadless } from '../../src/adapters/embedded/node';
import { EmbeddedSpreadsheet } from '../../src/adapters/embedded/spreadsheet';
import { OWN_KEYS } from '../../src/workbook/own-columns';
import { judgePlan, type JudgedPlan } from '../../src/workbook/plan-of';
import type { SheetContent } from '../../src/workbook/port';
import { recognise } from '../../src/workbook/recognise';
import { rowValues } from '../../src/workbook/row-values';
import { PlanSession } from '../../src/workbook/session';
import { caseSheets, type CaseSheet, type Typed } from './case-sheets';
import { workbookData } from './case-workbook';

// Which sensor a row means by a serial number: the formulas find it in the cells, the plan layer by itself.

/** Two pieces of each type of the cases, the second after all the first: "SN-1", 2002, "SN-3" …; the type's name is in its first row alone right. */
const serialOf = (type: number, second: boolean): Typed => {
  const number = (second ? 2000 : 1000) + type;
  return type % 2 === 0 ? `SN-${number}` : number;
};
const types = () => caseSheets().find(({ name }) => name === 'Sensors')!.cells;
const pieceList = (): CaseSheet => {
  const [heading, ...rows] = types();
  const piece = (row: readonly Typed[], i: number, second: boolean): readonly Typed[] => [
    second ? `  ${String(row[0]).toUpperCase()}` : row[0]!,
    ...row.slice(1),
    serialOf(i, second),
  ];
  return {
    name: 'Sensors',
    cells: [
      [...heading!, 'S/N'],
      ...rows.map((row, i) => piece(row, i, false)),
      ...rows.map((row, i) => piece(row, i, true)),
    ],
  };
};

/** How the i-th case names its sensor: [type cell, serial cell]. */
const DEALT: readonly ((type: string, place: number) => readonly [Typed, Typed])[] = [
  (type) => [type, null],
  (_, place) => [serialOf(place, false), null],
  (_, place) => [null, serialOf(place, true)],
  (_, place) => [' ', String(serialOf(place, false)).toLowerCase()],
  (type) => [type, 'SN-77'],
  () => ['SN-77', null],
  () => [null, 'SN-77'],
  (_, place) => [String(serialOf(place, true)), null],
  () => ['1e3', null],
  () => [null, '01001'],
  (type) => [`no ${type}`, serialOf(1, false)],
  () => [null, null],
];

const sheets = (shift: number): CaseSheet[] =>
  caseSheets().map((sheet) => {
    if (sheet.name === 'Sensors') return pieceList();
    if (sheet.name !== 'Channels') return sheet;
    const column = sheet.cells[0]!.indexOf('Sensor type');
    const names = types().map(([name]) => name);
    return {
      name: sheet.name,
      cells: sheet.cells.map((row, i) => {
        if (i === 0) return [...row, 'Ser. no.'];
        const type = String(row[column]);
        const [typed, serial] = DEALT[(i + shift) % DEALT.length]!(type, names.indexOf(type) - 1);
        return [...row.map((cell, c) => (c === column ? typed : cell)), serial];
      }),
    };
  });

const contentOf = ({ name, cells }: CaseSheet): SheetContent => ({
  sheet: name,
  row: 0,
  column: 0,
  values: cells,
  formulas: cells.map((row) => row.map(() => '')),
  tables: [],
  merged: [],
  hiddenRows: [],
});

type CellAt = (row: number, key: (typeof OWN_KEYS)[number]) => unknown;
const apart = ({ byRow }: JudgedPlan, cellAt: CellAt): string[] =>
  [...byRow].flatMap(([row, { channel, verdict }]) => {
    const [line, shown] = [cellAt(row, 'sensorLine'), cellAt(row, 'verdict')];
    const name = channel.sensor?.name;
    // Without a sensor a failure that is proved already stays one in the plan alone.
    const isSame =
      name === undefined
        ? typeof line === 'object' && shown === 'INCOMPLETE'
        : line === types().findIndex(([type]) => type === name) && shown === verdict;
    return isSame ? [] : [`${channel.id}: line ${JSON.stringify(line)}, plan ${name}; ${JSON.stringify(shown)}, plan ${verdict}`]; // prettier-ignore
  });

describe('a row that names a piece', () => {
  it('is judged by the type of that piece in the cells of the embedded spreadsheet as in the plan', async () => {
    const host = await openHeadless(workbookData(sheets(0)));
    try {
      const spreadsheet = new EmbeddedSpreadsheet(host);
      const session = new PlanSession(spreadsheet);
      await session.read();
      await session.check({});
      const { column } = (await session.read()).results!;
      const read = await Promise.all(
        (await spreadsheet.sheets()).map(async (info) => ({ info, content: await spreadsheet.readSheet(info.name) })),
      );
      const judged = judgePlan(recognise(read), (name) => read.find(({ info }) => info.name === name)!.content);
      const values = read[0]!.content.values;
      expect(judged.byRow.size).toBe(12);
      expect(apart(judged, (row, key) => values[row]![column + OWN_KEYS.indexOf(key)])).toEqual([]);
    } finally {
      host.univer.dispose();
    }
  }, 60_000);

  it.each(DEALT.map((_, i) => i))('is judged alike by the evaluator of files, dealt out by %i', (shift) => {
    const contents = sheets(shift).map(contentOf);
    const at = (name: string) => contents.find(({ sheet }) => sheet === name)!;
    const tables = recognise(contents.map((content, i) => ({ info: { name: content.sheet, active: i === 0, visible: true }, content }))); // prettier-ignore
    const judged = judgePlan(tables, at);
    const own = at('Channels').values[0]!.length;
    const values = rowValues({ ...tables, channels: tables.channels! }, own, at);
    expect(apart(judged, (row, key) => values(row)[OWN_KEYS.indexOf(key)])).toEqual([]);
    const known = [...judged.byRow.values()].filter(({ channel }) => channel.sensor);
    // Of twelve ways to name a sensor six do: by type, or by a serial number that the list has.
    expect(known.length).toBe(6);
  });
});
