import { readFileSync } from 'node:fs';
import { join } from 'node:path';

/** A line of a source table by its column names; blank cells are left out. */
export type SourceRow = Readonly<Record<string, string>>;

/** Comma-separated, quoted where a text holds a comma or a quote, first line names. */
export const parseCsv = (text: string): SourceRow[] => {
  const lines: string[][] = [[]];
  let cell = '';
  let quoted = false;
  const endCell = () => {
    lines.at(-1)!.push(cell);
    cell = '';
  };
  for (let i = 0; i < text.length; i++) {
    const character = text[i]!;
    if (quoted && character === '"' && text[i + 1] === '"') {
      cell += '"';
      i++;
    } else if (character === '"') quoted = !quoted;
    else if (character === ',' && !quoted) endCell();
    else if (character === '\n' && !quoted) {
      endCell();
      lines.push([]);
    } else cell += character;
  }
  if (cell !== '' || lines.at(-1)!.length > 0) endCell();
  const [names = [], ...rows] = lines.filter((line) => line.length > 0);
  return rows.map((row) =>
    Object.fromEntries(names.map((name, i) => [name, row[i] ?? '']).filter(([, v]) => v !== '')),
  );
};

/** The demo plan's source tables, one per sheet. */
export const readDemoTable = (root: string, table: string): SourceRow[] =>
  parseCsv(readFileSync(join(root, 'assets/demo', `${table}.csv`), 'utf8'));

/** The columns that a source table names, also those without a value. */
export const readDemoColumns = (root: string, table: string): readonly string[] =>
  readFileSync(join(root, 'assets/demo', `${table}.csv`), 'utf8')
    .split('\n', 1)[0]!
    .trim()
    .split(',');
