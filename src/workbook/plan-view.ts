import type { Verdict } from '../core/verdict';
import type { Caution } from '../plan/cautions';
import type { TableName } from '../plan/fields';
import type { Plot } from '../plots/plot';
import type { PlanTables } from './row-sources';
import type { Headline, Results } from './results';

/** A place on a sheet, 0-based. */
export interface Place {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

/** A sentence for the user, with the place it speaks of. */
export interface Notice {
  readonly text: string;
  readonly at?: Place;
  /** Each by itself, where the text speaks of several. */
  readonly parts?: readonly Notice[];
}

export interface FieldPlace {
  readonly table: TableName;
  readonly key: string;
  /** Of a further sheet of the channel list whose columns have other headings. */
  readonly sheet?: string;
}

/** How one field of one table is read, and what else could hold it. */
export interface FieldView extends FieldPlace {
  readonly title: string;
  readonly unit: string;
  readonly needed: boolean;
  /** 0-based column on the sheet; undefined: nothing holds it. */
  readonly column?: number;
  /** `sure` by the heading, `said` by the user, `ask` when candidates exist but none is sure enough. */
  readonly status: 'sure' | 'said' | 'ask' | 'absent';
  readonly evidence: string;
  readonly choices: readonly { readonly column: number; readonly label: string }[];
}

/** A sheet of the channel list, or one that looks like it. */
export interface ListView {
  readonly sheet: string;
  readonly belongs: boolean;
  /** Nobody has said yet whether it belongs. */
  readonly isAsked: boolean;
  /** Channels of a part; why another list is none. */
  readonly note: string;
  /** Whether it may be left out, or taken in. */
  readonly canChange: boolean;
  readonly at: Place;
}

export type CautionView = Pick<Caution, 'title' | 'text'>;

/** What the pane shows of a workbook. */
export interface PlanView {
  readonly tables?: PlanTables;
  /** Why there is no plan to check, as a sentence that says what is expected. */
  readonly trouble?: string;
  /** Sheets that are, or look like, parts of the channel list; empty when there is one list and no question. */
  readonly lists: readonly ListView[];
  readonly fields: readonly FieldView[];
  readonly unread: readonly Notice[];
  /** What is taken otherwise than it stands on the sheets. */
  readonly readings: readonly Notice[];
  readonly across: readonly Notice[];
  readonly cautions: readonly CautionView[];
  readonly results?: Results;
}

export interface DetailLine {
  readonly label: string;
  readonly value: string;
  readonly unit: string;
}
/** All that is known of one channel. */
export interface RowDetail {
  /** Where it measures: node, axis and sign in one form. */
  readonly place: readonly DetailLine[];
  readonly headlines: readonly {
    readonly name: Headline;
    readonly verdict: Verdict;
    readonly lines: readonly DetailLine[];
    readonly sentences: readonly string[];
    /** What shows it; a mass is a number and needs no drawing. */
    readonly plot?: Plot;
  }[];
  readonly cautions: readonly CautionView[];
}
