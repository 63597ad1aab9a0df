import type { Language } from '../core/language';
import { fieldByKey, TABLES } from '../plan/fields';
import { keepChange, tryChange, type PlanSource, type TriedChange } from './choosing/what-if';
import { findingsOf } from '../plan/findings';
import { reasonText } from '../plan/sentence';
import type { RowEdit } from './choosing/row-edits';
import { useChoice } from './choosing/use-candidate';
import { isBlank, writeChecks } from './check';
import { withCrossedOut } from './crossed-out';
import { channelCountOf, channelLists, channelSheets, listRowOf, listsOf, rowIdOf } from './channel-lists';
import { describeLists, fieldViews } from './field-views';
import { listViews, withList } from './list-views';
import { mappingJson, parseMapping } from './mapping';
import { mergedMapping } from './mapping-file';
import { isOwnHeading, ownIndex } from './own-columns';
import { judgePlan, type JudgedPlan } from './plan-of';
import type { FieldPlace, Place, PlanView } from './plan-view';
import type { ApplyOptions, Spreadsheet } from './port';
import { limitRowsOf } from './limit-rows';
import { withHeldCells } from './held-cells';
import { recognise, type RecognisedTables, type SheetToRead } from './recognise';
import { readAllResults, readResults, type Results } from './results';
import type { PlanTables } from './row-sources';
import type { Mapping, TableCorrection } from './tables';
import { SESSION_WORDS } from './words';

export const MAPPING_SETTING = 'channelwright.columns';

/** What decides how tables are recognised, but for the cells themselves: sheets, their extent, headings, blank names. */
const outlineOf = (sheets: readonly SheetToRead[], tables: RecognisedTables): string => {
  const parts: unknown[] = sheets.map(({ info, content }) => [
    info,
    content.row,
    content.column,
    content.values.length,
  ]);
  for (const table of TABLES.flatMap((name) => listsOf(tables, name))) {
    const content = sheets.find(({ info }) => info.name === table.sheet)?.content;
    for (let row = table.headerRow; content && row <= table.lastRow + 1; row++) {
      const cells = content.values[row - content.row] ?? [];
      parts.push(row < table.firstRow ? cells.filter(isUsers) : isBlank(cells[table.firstColumn - content.column]));
    }
  }
  return JSON.stringify(parts);
};
const isUsers = (cell: unknown): boolean => !isBlank(cell) && !(typeof cell === 'string' && isOwnHeading(cell));

/** One open workbook as a plan: what was recognised, what was checked, and what a person may do. */
export class PlanSession {
  private sheets: readonly SheetToRead[] = [];
  private tables: RecognisedTables = {};
  private mapping: Mapping = {};
  private outline = '';
  private results?: Results;
  private judged?: JudgedPlan;

  constructor(
    private readonly spreadsheet: Spreadsheet,
    private readonly language: Language = 'en',
  ) {}

  get isChecked(): boolean {
    return this.results !== undefined;
  }

  get channelCount(): number {
    return channelLists(this.tables).reduce((sum, list) => sum + channelCountOf(list), 0);
  }

  /** What was read, for commands that look at it or write into it; `judged` once `judge` has been called. */
  get source(): PlanSource & { readonly judged?: JudgedPlan } {
    return { tables: this.tables, contentOf: (sheet) => this.contentOf(sheet), judged: this.judged };
  }

  describeTables(): string {
    return describeLists(this.tables, this.language);
  }

  /** Waits until the host has calculated what was just edited. */
  settled(): Promise<void> {
    return this.spreadsheet.calculated();
  }

  /**
   * Reads the whole workbook. After a mere edit the tables stay as they were recognised, unless a heading, a sheet or
   * the extent of the data has changed.
   */
  async read(after: 'opening' | 'edit' = 'opening'): Promise<PlanView> {
    this.mapping = parseMapping(await this.spreadsheet.getSetting(MAPPING_SETTING));
    const infos = await this.spreadsheet.sheets();
    this.sheets = await Promise.all(
      infos.map(async (info) => ({ info, content: await this.spreadsheet.readSheet(info.name) })),
    );
    if (after === 'opening' || outlineOf(this.sheets, this.tables) !== this.outline) {
      this.tables = recognise(this.sheets, { mapping: this.mapping });
      const crossed = await withCrossedOut(this.spreadsheet, this.sheets, this.tables);
      if (crossed) {
        this.sheets = crossed;
        this.tables = recognise(this.sheets, { mapping: this.mapping });
      }
      this.outline = outlineOf(this.sheets, this.tables);
    } else this.tables = withHeldCells(this.tables, (sheet) => this.contentOf(sheet));
    this.results = readAllResults(this.tables, (sheet) => this.contentOf(sheet));
    return this.view();
  }

  /** Looks at the whole plan as read: cells that say nothing readable, rows taken together, cautions, details. */
  judge(): PlanView {
    this.judged = this.tables.channels && judgePlan(this.tables, (sheet) => this.contentOf(sheet), this.language);
    return this.view();
  }

  /** Writes our columns beside the channel table. */
  async check(options: Omit<ApplyOptions, 'label'>): Promise<void> {
    const tables = this.planTables();
    if (tables) await writeChecks(this.spreadsheet, tables, (sheet) => this.contentOf(sheet), options);
  }

  /** Remembers in the workbook that a field is held by this column, or by none. */
  async correct({ table, key, sheet }: FieldPlace, column: number | null): Promise<void> {
    fieldByKey(table, key);
    const recognised = listsOf(this.tables, table).find((list) => sheet === undefined || list.sheet === sheet);
    const heading = column === null ? '' : (recognised?.headings.get(column) ?? '');
    const before: TableCorrection = this.mapping[table] ?? {};
    const said = { [key]: { column: column === null ? null : { heading, column } } };
    const after: TableCorrection =
      sheet === undefined
        ? { ...before, fields: { ...before.fields, ...said } }
        : { ...before, fieldsOn: { ...before.fieldsOn, [sheet]: { ...before.fieldsOn?.[sheet], ...said } } };
    await this.remember({ ...this.mapping, [table]: after });
  }

  /** Remembers in the workbook whether a sheet that looks like a channel list belongs to the plan. */
  async chooseList(sheet: string, belongs: boolean): Promise<void> {
    await this.remember(withList(this.mapping, this.tables, sheet, belongs));
  }

  /** From now on the lists are read like this, also when the workbook is opened again. */
  async remember(mapping: Mapping): Promise<void> {
    this.mapping = mapping;
    await this.spreadsheet.setSetting(MAPPING_SETTING, mappingJson(mapping));
  }

  /** Writes what was chosen into the rows, as one action; returns how many cells. */
  use(edits: readonly RowEdit[]): Promise<number> {
    return useChoice(this.spreadsheet, this.source, edits, { language: this.language });
  }

  /** What a person corrected so far. */
  get corrections(): Mapping {
    return this.mapping;
  }

  /** Takes corrections from another list; those made here stay where the others say nothing. */
  async take(mapping: Mapping): Promise<void> {
    await this.remember(mergedMapping(this.mapping, mapping));
  }

  /** What these values would do to the plan; nothing is written. */
  tryEdits(edits: readonly RowEdit[]): TriedChange | undefined {
    return tryChange(this.source, edits, { language: this.language });
  }

  /** Writes what was tried, as one action; returns how many cells. */
  keep(tried: TriedChange): Promise<number> {
    return keepChange(this.spreadsheet, this.source, tried, { language: this.language });
  }

  /** Rows of the list that are selected in the sheet, as far as the host tells. */
  async selectedRows(): Promise<readonly number[]> {
    const at = await this.spreadsheet.selection();
    const list = at ? channelSheets(this.tables).indexOf(at.sheet) : -1;
    if (!at || list < 0) return [];
    const first = rowIdOf(list, at.range.row);
    return [...(this.judged?.byRow.keys() ?? [])].filter((one) => one >= first && one < first + at.range.rows);
  }

  /** Shows a channel's row: what was chosen for it, and our verdicts beside. */
  goToRow(id: number): Promise<void> {
    const at = listRowOf(this.tables, id);
    if (!at) return Promise.resolve();
    const { table, row } = at;
    const first = table.columns.get('sensor')?.column ?? table.firstColumn;
    const own = readResults(table, this.contentOf(table.sheet))?.column;
    const last = own === undefined ? table.lastColumn : own + ownIndex('frequencyVerdict');
    return this.spreadsheet.select(table.sheet, {
      row,
      column: first,
      rows: 1,
      columns: Math.max(1, last - first + 1),
    });
  }

  /** Shows the first of our columns. */
  goToResults(): Promise<void> {
    const { channels } = this.tables;
    if (!channels || !this.results) return Promise.resolve();
    return this.goTo({ sheet: channels.sheet, row: channels.firstRow, column: this.results.column });
  }

  goTo({ sheet, row, column }: Place): Promise<void> {
    return this.spreadsheet.select(sheet, { row, column, rows: 1, columns: 1 });
  }

  private view(): PlanView {
    return {
      tables: this.planTables(),
      trouble: this.tables.channels ? undefined : SESSION_WORDS[this.language].noList,
      lists: listViews(this.tables, this.language),
      fields: fieldViews(this.tables, this.mapping, this.language),
      unread: this.judged?.unread ?? [],
      readings: this.judged?.readings ?? [],
      across: this.judged?.across ?? [],
      cautions: this.judged?.cautions ?? [],
      results: this.results && this.spoken(this.results),
    };
  }

  /** The reasons that cells give are English; in another language the same rows are told by what was judged. */
  private spoken(results: Results): Results {
    const { judged, language } = this;
    if (language === 'en' || !judged) return results;
    const rows = results.rows.map((result) => {
      const check = judged.byRow.get(result.row);
      if (!check || check.verdict !== result.verdict) return result;
      return { ...result, reason: reasonText(findingsOf(check, judged.limits), language) };
    });
    return { ...results, rows };
  }

  private planTables(): PlanTables | undefined {
    const { channels, limits } = this.tables;
    if (!channels) return undefined;
    const limitRows = limits && limitRowsOf(limits, this.contentOf(limits.sheet));
    return { ...this.tables, channels, limitRows };
  }

  private contentOf(sheet: string): SheetToRead['content'] {
    const found = this.sheets.find(({ info }) => info.name === sheet);
    if (!found) throw new Error(`no sheet ${sheet}`);
    return found.content;
  }
}
