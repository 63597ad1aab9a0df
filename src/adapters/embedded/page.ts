import './iterator-polyfill';
import { LogLevel, Univer } from '@univerjs/core';
import { FUniver } from '@univerjs/core/lib/facade';
import { CalculationMode } from '@univerjs/sheets-formula';
import { UniverSheetsConditionalFormattingPreset } from '@univerjs/preset-sheets-conditional-formatting';
import { UniverSheetsCorePreset } from '@univerjs/preset-sheets-core';
import { UniverSheetsFilterPreset } from '@univerjs/preset-sheets-filter';
import { UniverSheetsNotePreset } from '@univerjs/preset-sheets-note';
import { UniverSheetsSortPreset } from '@univerjs/preset-sheets-sort';
import { UniverSheetsTablePreset } from '@univerjs/preset-sheets-table';
import { defaultTheme } from '@univerjs/themes';
import { ILayoutService } from '@univerjs/ui';
import '@univerjs/preset-sheets-core/lib/index.css';
import '@univerjs/preset-sheets-conditional-formatting/lib/index.css';
import '@univerjs/preset-sheets-filter/lib/index.css';
import '@univerjs/preset-sheets-note/lib/index.css';
import '@univerjs/preset-sheets-sort/lib/index.css';
import '@univerjs/preset-sheets-table/lib/index.css';
import { FUNCTIONS } from '../../functions/index';
import { ENGLISH, type Wording } from '../../functions/words/wording';
import { patchEngine } from './engine-patches';
import { functionClasses, functionDescriptions } from './functions';
import type { Host } from './host';
import { pluginsByName, type PluginEntry } from './plugins';
import { ENGLISH_GRID, type GridTexts } from './texts/load';

/** Tints of the one accent, light to dark. */
const ACCENT = {
  50: '#eef6f5',
  100: '#d5e9e7',
  200: '#abd3cf',
  300: '#78b6b1',
  400: '#419691',
  500: '#1f7a76',
  600: '#0f5c59',
  700: '#0c4c4a',
  800: '#0a3d3b',
  900: '#072c2b',
};

/** A table looks as its cells were formatted: no paint of the grid's own. */
const PLAIN_TABLE = { name: 'chan-plain', style: {} };

/** Builds the spreadsheet inside the element with this id; its help on our functions is in the words given. It has no workbook yet. */
export const createGrid = (container: string, wording: Wording = ENGLISH, spoken: GridTexts = ENGLISH_GRID): Host => {
  const univer = new Univer({
    theme: { ...defaultTheme, primary: ACCENT },
    locale: spoken.locale,
    logLevel: LogLevel.ERROR,
    locales: { [spoken.locale]: spoken.texts },
  });
  const presets = [
    UniverSheetsCorePreset({
      container,
      toolbar: false,
      disableAutoFocus: true,
      sheets: { disableForceStringAlert: true, disableForceStringMark: true },
      disableTextFormatAlert: true,
      disableTextFormatMark: true,
      footer: { statisticBar: false, menus: false, zoomSlider: false },
      formula: {
        function: functionClasses(FUNCTIONS),
        description: functionDescriptions(FUNCTIONS, wording),
        initialFormulaComputing: CalculationMode.FORCED,
      },
    }),
    UniverSheetsConditionalFormattingPreset(),
    UniverSheetsFilterPreset(),
    UniverSheetsNotePreset(),
    UniverSheetsSortPreset(),
    UniverSheetsTablePreset(),
  ];
  const plugins = pluginsByName(presets.flatMap((preset) => preset.plugins as PluginEntry[]));
  const table = plugins.get('SHEET_TABLE_PLUGIN');
  if (table) table.options = { userThemes: [PLAIN_TABLE], defaultThemeIndex: 0 };
  const tableUi = plugins.get('SHEET_TABLE_UI_PLUGIN');
  if (tableUi) tableUi.options = { hideAnchor: true };
  plugins.forEach(({ plugin, options }) => univer.registerPlugin(plugin, options as never));
  patchEngine(univer.__getInjector());
  return { univer, api: FUniver.newAPI(univer) };
};

/** Gives the keyboard to the grid. */
export const focusGrid = (host: Host): void => host.univer.__getInjector().get(ILayoutService).focus();
