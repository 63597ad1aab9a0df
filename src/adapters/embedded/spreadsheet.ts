import { IFunctionService } from '@univerjs/engine-formula';
import { SheetsSelectionsService } from '@univerjs/sheets';
import { FUNCTIONS, NAMESPACE } from '../../functions/index';
import type {
  ApplyOptions,
  Capabilities,
  Change,
  HostFacts,
  RangeAddress,
  SheetContent,
  SheetInfo,
  Spreadsheet,
} from '../../workbook/port';
import { applyChanges } from './apply';
import { Calculation } from './calculation';
import { Services, type Host } from './host';
import { listenForChanges, listenForSelections } from './listen';
import { addressOf, readSheet } from './read-sheet';

type Place = { sheet: string; range: RangeAddress };

/** Rows left in sight above one that is shown: the grid puts the cell asked for under the rows that are frozen. */
const ABOVE = 3;

/** The port over the embedded spreadsheet, on a page or without one. It follows whatever workbook is open. */
export class EmbeddedSpreadsheet implements Spreadsheet {
  readonly host = 'embedded';
  readonly can: Capabilities = { notes: true, oneUndo: true, changeEvents: true, drawings: 'in the file' };
  private readonly services: Services;
  private readonly calculation: Calculation;
  /** Actions run one after another, or their undo steps would mix. */
  private queue: Promise<void> = Promise.resolve();

  constructor(host: Host) {
    this.services = new Services(host);
    this.calculation = new Calculation(this.services);
  }

  async sheets(): Promise<readonly SheetInfo[]> {
    const workbook = this.services.workbook();
    const active = workbook.getActiveSheet()?.getSheetId();
    return workbook.getSheets().map((sheet) => ({
      name: sheet.getName(),
      active: sheet.getSheetId() === active,
      visible: !sheet.isSheetHidden(),
    }));
  }

  async readSheet(sheet: string): Promise<SheetContent> {
    return readSheet(this.services, sheet);
  }

  async apply(changes: readonly Change[], options: ApplyOptions): Promise<void> {
    const turn = this.queue.then(() => applyChanges(this.services, changes, options, () => this.calculation.settled()));
    this.queue = turn.catch(() => undefined);
    return turn;
  }

  async select(name: string, { row, column, rows, columns }: RangeAddress): Promise<void> {
    const sheet = this.services.sheet(name);
    const workbook = this.services.host.api.getActiveWorkbook();
    const target = workbook?.getSheetBySheetId(sheet.getSheetId());
    if (!workbook || !target) return;
    workbook.setActiveSheet(target);
    target.setActiveRange(target.getRange(row, column, rows, columns));
    if ('scrollToCell' in target)
      (target as { scrollToCell(row: number, column: number): void }).scrollToCell(Math.max(0, row - ABOVE), column);
  }

  async selection(): Promise<Place | undefined> {
    const sheet = this.services.workbook().getActiveSheet();
    const range = this.services.injector.get(SheetsSelectionsService).getCurrentLastSelection()?.range;
    return sheet && range && { sheet: sheet.getName(), range: addressOf(range) };
  }

  async calculated(): Promise<void> {
    await this.queue;
    await this.calculation.settled();
  }

  async onChange(listener: (change: Place) => void): Promise<() => void> {
    return listenForChanges(this.services, listener);
  }

  async onSelect(listener: (at: Place) => void): Promise<() => void> {
    return listenForSelections(this.services, listener);
  }

  private settings(): Record<string, string> {
    const snapshot = this.services.workbook().getSnapshot();
    const custom = (snapshot.custom ??= {}) as { settings?: Record<string, string> };
    return (custom.settings ??= {});
  }

  settingKeys(): readonly string[] {
    return Object.keys(this.settings());
  }

  async getSetting(key: string): Promise<string | undefined> {
    return this.settings()[key];
  }

  async setSetting(key: string, json: string | undefined): Promise<void> {
    if (json === undefined) delete this.settings()[key];
    else this.settings()[key] = json;
  }

  async facts(): Promise<HostFacts> {
    const engine = this.services.injector.get(IFunctionService);
    return {
      program: 'Channelwright workbench',
      abilities: {},
      functionsKnown: FUNCTIONS.filter(({ name }) => engine.hasExecutor(`${NAMESPACE}.${name}`)).length,
      runtime: 'page',
      separators: { decimal: '.', list: ',' },
    };
  }
}
