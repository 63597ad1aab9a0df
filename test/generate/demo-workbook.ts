import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { strFromU8, unzipSync } from 'fflate';
import { SaxesParser } from 'saxes';
import type { Cell } from '../../src/functions/define';
import type { RangeAddress } from '../../src/workbook/port';
import type { SheetToRead } from '../../src/workbook/recognise';

export const ROOT = join(__dirname, '../..');

const elements = (
  xml: string,
  visit: (name: string, attributes: Record<string, string>, text: string) => void,
): void => {
  const open: { name: string; attributes: Record<string, string>; text: string }[] = [];
  const parser = new SaxesParser();
  parser.on('opentag', ({ name, attributes }) =>
    open.push({ name, attributes: attributes as Record<string, string>, text: '' }),
  );
  parser.on('text', (text) => {
    const top = open.at(-1);
    if (top) top.text += text;
  });
  parser.on('closetag', () => {
    const { name, attributes, text } = open.pop()!;
    visit(name, attributes, text);
  });
  parser.write(xml).close();
};

const place = (address: string): { row: number; column: number } => {
  const [, letters = '', digits = ''] = /^\$?([A-Z]+)\$?(\d+)$/.exec(address) ?? [];
  return { row: Number(digits) - 1, column: [...letters].reduce((n, c) => n * 26 + c.charCodeAt(0) - 64, 0) - 1 };
};
const range = (address: string): RangeAddress => {
  const [from = '', to = from] = address.split(':');
  const [a, b] = [place(from), place(to)];
  return { row: a.row, column: a.column, rows: b.row - a.row + 1, columns: b.column - a.column + 1 };
};

/** The cells of a workbook file, read without any of our own or the writer's code. */
export const readWorkbook = (path: string): SheetToRead[] => {
  const parts = unzipSync(readFileSync(join(ROOT, path)));
  const part = (name: string): string => (parts[name] ? strFromU8(parts[name]) : '');
  const strings: string[] = [];
  let run = '';
  if (part('xl/sharedStrings.xml') !== '')
    elements(part('xl/sharedStrings.xml'), (name, _, text) => {
      if (name === 't') run += text;
      if (name !== 'si') return;
      strings.push(run);
      run = '';
    });
  const names: string[] = [];
  elements(part('xl/workbook.xml'), (name, { name: sheet = '' }) => {
    if (name === 'sheet') names.push(sheet);
  });
  return names.map((sheet, index) => {
    const values: Cell[][] = [];
    const merged: RangeAddress[] = [];
    let value: string | undefined;
    elements(part(`xl/worksheets/sheet${index + 1}.xml`), (name, { r = '', t, ref = '' }, text) => {
      if (name === 'v' || name === 't') value = text;
      if (name === 'mergeCell') merged.push(range(ref));
      if (name !== 'c') return;
      const { row, column } = place(r);
      while (values.length <= row) values.push([]);
      const line = values[row]!;
      while (line.length < column) line.push(null);
      line[column] =
        value === undefined
          ? null
          : t === 's'
            ? (strings[Number(value)] ?? null)
            : t === 'inlineStr'
              ? value
              : Number(value);
      value = undefined;
    });
    const tables: { name: string; range: RangeAddress }[] = [];
    const relations = part(`xl/worksheets/_rels/sheet${index + 1}.xml.rels`);
    for (const [, target = ''] of relations.matchAll(/Target="\.\.\/(tables\/[^"]+)"/g))
      elements(part(`xl/${target}`), (name, { displayName = '', ref = '' }) => {
        if (name === 'table') tables.push({ name: displayName, range: range(ref) });
      });
    return {
      info: { name: sheet, active: index === 0, visible: true },
      content: {
        sheet,
        row: 0,
        column: 0,
        values,
        formulas: values.map((l) => l.map(() => '')),
        tables,
        merged,
        hiddenRows: [],
      },
    };
  });
};

/** The items of a recognised table: cells by field key. */
export const itemsOf = (
  sheets: readonly SheetToRead[],
  table: import('../../src/workbook/tables').RecognisedTable | undefined,
): Record<string, Cell>[] => {
  const content = sheets.find(({ info }) => info.name === table?.sheet)?.content;
  if (!table || !content) return [];
  const skipped = new Set(table.skippedRows);
  return Array.from({ length: table.lastRow - table.firstRow + 1 }, (_, i) => table.firstRow + i)
    .filter((row) => !skipped.has(row))
    .map((row) =>
      Object.fromEntries(
        [...table.columns].map(([key, { column }]) => [
          key,
          content.values[row - content.row]?.[column - content.column] ?? null,
        ]),
      ),
    );
};
