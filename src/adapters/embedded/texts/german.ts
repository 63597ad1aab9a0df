import { mergeLocales } from '@univerjs/core';
import conditionalFormatting from '@univerjs/preset-sheets-conditional-formatting/locales/de-DE';
import core from '@univerjs/preset-sheets-core/locales/de-DE';
import filter from '@univerjs/preset-sheets-filter/locales/de-DE';
import note from '@univerjs/preset-sheets-note/locales/de-DE';
import sort from '@univerjs/preset-sheets-sort/locales/de-DE';
import table from '@univerjs/preset-sheets-table/locales/de-DE';

/** The grid's own menus, dialogs and function help. */
export const TEXTS = mergeLocales(core, conditionalFormatting, filter, note, sort, table);
