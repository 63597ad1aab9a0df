import type { Language } from '../../../core/language';
import type { JudgedPlan } from '../../../workbook/plan-of';
import type { SheetContent } from '../../../workbook/port';
import type { PlanNotes } from '../../../workbook/report/plan-notes';
import type { PlanTables } from '../../../workbook/row-sources';
import type { ShareChoices } from '../../../workbook/share/choices';
import type { OwnChanges } from '../../../workbook/share/own-changes';
import type { RecognisedTable } from '../../../workbook/tables';
import type { OpenOptions } from '../workbook-file';

/** A plan as it was read from the file, and what a customer is to get of it. */
export interface CopyRequest {
  readonly bytes: Uint8Array;
  readonly open: OpenOptions;
  readonly tables: PlanTables;
  readonly contentOf: (sheet: string) => SheetContent;
  readonly judged: JudgedPlan;
  readonly notes: PlanNotes;
  readonly choices: ShareChoices;
  /** Language of what the maker of the copy is told. */
  readonly toldIn: Language;
}

/** One of the channel lists, and what is written beside it. */
export interface CopiedList {
  readonly channels: RecognisedTable;
  readonly own: OwnChanges;
}

/** Always a workbook without macros, .xlsx. */
export interface CustomerCopy {
  readonly bytes: Uint8Array;
  readonly told: readonly string[];
}
