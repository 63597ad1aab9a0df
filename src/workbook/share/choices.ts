import type { Language } from '../../core/language';

export const SHARE_PAPERS = ['A4', 'A3', 'Letter'] as const;
export type SharePaper = (typeof SHARE_PAPERS)[number];

/** A column of a sheet by its 0-based place. */
export interface ColumnPlace {
  readonly sheet: string;
  readonly column: number;
}

/** What a customer copy leaves out, freezes and says. Nothing is left out that is not named here. */
export interface ShareChoices {
  /** Of our headings, notes and reasons and of the overview. */
  readonly language: Language;
  /** For sheets of which nobody has said how they are printed. */
  readonly paper: SharePaper;
  readonly leftOutColumns: readonly ColumnPlace[];
  readonly leftOutSheets: readonly string[];
  /** All formulas become values, not only ours and those that would break. */
  readonly freezeAll: boolean;
  /** Links to other workbooks and connections to data. */
  readonly dropLinks: boolean;
  /** Notes of the user on cells go. */
  readonly dropNotes: boolean;
  /** Names of people stay: who made and changed the file, who wrote a note. */
  readonly keepPeople: boolean;
  /** A lock without password against accidents. */
  readonly protect: boolean;
  readonly properties: DocumentProperties;
}

export interface DocumentProperties {
  readonly title?: string;
  readonly subject?: string;
  readonly revision?: string;
  readonly date?: string;
  readonly prepared?: string;
  readonly checked?: string;
}

export const SHARE_DEFAULTS: ShareChoices = {
  language: 'en',
  paper: 'A4',
  leftOutColumns: [],
  leftOutSheets: [],
  freezeAll: false,
  dropLinks: true,
  dropNotes: false,
  keepPeople: false,
  protect: false,
  properties: {},
};
