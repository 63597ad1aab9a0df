import { mergeLocales } from '@univerjs/core';
import conditionalFormatting from '@univerjs/preset-sheets-conditional-formatting/locales/en-US';
import core from '@univerjs/preset-sheets-core/locales/en-US';
import filter from '@univerjs/preset-sheets-filter/locales/en-US';
import note from '@univerjs/preset-sheets-note/locales/en-US';
import sort from '@univerjs/preset-sheets-sort/locales/en-US';
import table from '@univerjs/preset-sheets-table/locales/en-US';

/** The grid's own menus, dialogs and function help. */
export const TEXTS = mergeLocales(core, conditionalFormatting, filter, note, sort, table);
