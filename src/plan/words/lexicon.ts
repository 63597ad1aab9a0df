/**
 * The words of one language for the columns of a plan: general trade vocabulary, synonyms, abbreviations.
 * Case, accents and the order of words do not matter.
 */
export interface Lexicon {
  /** Interchangeable words; a phrase names a set as <name>. */
  readonly sets: Readonly<Record<string, readonly string[]>>;
  /**
   * Phrases per "table.field". A mark at the end of a phrase:
   * `?` weak, other words win; `??` so weak that it is only asked; `!` only with a unit that fits; `..` only over cells that are ranges, as in "15..135 °C".
   */
  readonly phrases: Readonly<Record<string, readonly string[]>>;
  /** Words that do not tell one field from another. */
  readonly filler: readonly string[];
  /** Words of sheet names and titles. */
  readonly tables: Readonly<Record<string, readonly string[]>>;
  /** First words of a row that sums up others. */
  readonly totals: readonly string[];
  /** The same together with a word for channels: "Number of channels". */
  readonly counts: readonly string[];
  /** Words of columns that hold something else than what is planned: what was measured, or where the test stops. */
  readonly others: readonly string[];
  /** Words for the parts of a measuring chain. */
  readonly parts: readonly string[];
}
