import { mergeLocales } from '@univerjs/core';
import conditionalFormatting from '@univerjs/preset-sheets-conditional-formatting/locales/fr-FR';
import core from '@univerjs/preset-sheets-core/locales/fr-FR';
import filter from '@univerjs/preset-sheets-filter/locales/fr-FR';
import note from '@univerjs/preset-sheets-note/locales/fr-FR';
import sort from '@univerjs/preset-sheets-sort/locales/fr-FR';
import table from '@univerjs/preset-sheets-table/locales/fr-FR';

/** The grid's own menus, dialogs and function help. */
export const TEXTS = mergeLocales(core, conditionalFormatting, filter, note, sort, table);
