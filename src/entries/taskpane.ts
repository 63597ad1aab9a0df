import './taskpane.css';
import { excelHost } from '../adapters/office/host';
import { officeSpreadsheet } from '../adapters/office/spreadsheet';
import { browserAssigner } from '../adapters/solver/browser-assigner';
import { officeTheme } from '../adapters/office/theme';
import { givesFile, wholeFile } from '../adapters/office/whole-file';
import { languageOf } from '../core/language';
import { mountPane } from '../pane/mount';
import type { Surroundings } from '../pane/surroundings';
import { followTheme } from '../pane/theme';

const say = (text: string) => {
  const state = document.getElementById('state');
  if (state) state.textContent = text;
};

/** The last part of the workbook's address, where Excel tells it. */
const workbookName = (): string | undefined => {
  const name = Office.context.document.url?.split(/[\\/]/).at(-1);
  try {
    return name ? decodeURIComponent(name) : undefined;
  } catch {
    return name;
  }
};

const readPlanFile = async (bytes: Uint8Array) =>
  (await import(/* webpackChunkName: "other-files" */ './read-plan-file')).readPlanFile(bytes);
const shareCopy: Surroundings['shareCopy'] = async (choices, toldIn) => {
  const { shareInPage } = await import(/* webpackChunkName: "share" */ './share-in-page');
  return shareInPage(await wholeFile(), choices, toldIn);
};

const start = async () => {
  // Without Office.js the page keeps its plain text, which says what to do.
  if (typeof Office === 'undefined') return say('Office.js was not loaded.');
  const { host } = await Office.onReady();
  if (host !== Office.HostType.Excel) return say('This page was opened outside Excel.');
  const pane = document.getElementById('pane');
  if (!pane) throw new Error('taskpane.html has no element "pane"');
  pane.replaceChildren();
  followTheme(document.documentElement, officeTheme());
  const language = languageOf(Office.context.displayLanguage);
  document.documentElement.lang = language;
  mountPane(pane, officeSpreadsheet(excelHost()), language, {
    planName: workbookName,
    savesFiles: 'perhaps',
    assign: browserAssigner,
    readPlanFile,
    ...(givesFile() && { shareCopy }),
  });
};

void start();
