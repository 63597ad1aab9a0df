import './workbench.css';
import { loadWording } from '../functions/words/load';
import { ENGLISH } from '../functions/words/wording';
import { followTheme } from '../pane/theme';
import { listenForDrops } from './workbench/drop-target';
import { element } from './workbench/elements';
import { letF6Move } from './workbench/keyboard';
import { nameGridButtons } from './workbench/labels';
import { PAGE_WORDS } from './workbench/page-words';
import { pageLanguage } from './workbench/page-language';
import { letPaneResize } from './workbench/pane-size';
import { letSave } from './workbench/save-button';
import { shareFrom } from './workbench/share-hook';
import { speakPage } from './workbench/speak-page';
import { createSpeaker } from './workbench/speaker';
import { showMessage, showWork } from './workbench/status';

const LANGUAGE = pageLanguage(location.search, navigator.language);
const WORDS = PAGE_WORDS[LANGUAGE];
const DEMO = { file: 'demo-plan.xlsx', title: WORDS.texts.demo };

/** The grid's code is large; the page is drawn before it arrives. */
const loadGrid = () => import(/* webpackChunkName: "grid" */ './workbench/grid');

/** English help is better than no spreadsheet. */
const loadHelp = () => loadWording(LANGUAGE).catch(() => ENGLISH);

const PAGE = { planName: () => element('file-name').textContent ?? undefined, savesFiles: 'yes' } as const;

const start = async () => {
  const [help, { createGrid, describeSelection, EmbeddedSpreadsheet, FileProblem, focusGrid, ...grid }] =
    await Promise.all([loadHelp(), loadGrid()]);
  const host = createGrid('grid', help, await grid.loadGridTexts(LANGUAGE));
  const spreadsheet = new EmbeddedSpreadsheet(host);
  const saving = new grid.Saving(host, spreadsheet, LANGUAGE);
  let pane: ReturnType<typeof grid.mountPane> | undefined;

  const open = async (bytes: Uint8Array, title: string) => {
    showMessage('');
    showWork(WORDS.opening(title));
    try {
      const data = await grid.workbookFromFile(bytes, title);
      saving.forget();
      await grid.openInGrid(host.api, data);
      await saving.remember(bytes, title);
      element('file-name').textContent = title;
      document.title = WORDS.pageTitle(title);
      if (pane) await pane.refresh();
      else {
        const { browserAssigner: assign, readPlanFile } = grid;
        const shareCopy = shareFrom(saving, () => grid.endEditing(host));
        pane = grid.mountPane(element('pane'), spreadsheet, LANGUAGE, { ...PAGE, assign, readPlanFile, shareCopy });
      }
    } catch (problem) {
      if (!(problem instanceof FileProblem)) console.error(problem);
      const reason = problem instanceof FileProblem ? problem.message : WORDS.texts.cannotShow;
      showMessage(WORDS.notOpened(title, reason));
    } finally {
      showWork('');
    }
  };
  const openFiles = async ([file]: readonly File[]) => {
    if (file) await open(new Uint8Array(await file.arrayBuffer()), file.name);
  };
  const openDemo = async () => {
    const response = await fetch(DEMO.file);
    if (response.ok) return open(new Uint8Array(await response.arrayBuffer()), DEMO.title);
    showMessage(WORDS.texts.demoMissing);
  };

  const input = element<HTMLInputElement>('file');
  input.addEventListener('change', () => {
    void openFiles([...(input.files ?? [])]);
    input.value = '';
  });
  element('open').addEventListener('click', () => input.click());
  element('demo').addEventListener('click', () => void openDemo());
  letSave(saving, () => grid.endEditing(host), WORDS);
  element('undo').addEventListener('click', () => void host.api.getActiveWorkbook()?.undo());
  element('redo').addEventListener('click', () => void host.api.getActiveWorkbook()?.redo());
  listenForDrops((files) => void openFiles(files));
  letF6Move(() => focusGrid(host));
  nameGridButtons(element('grid'), WORDS.texts);
  const speak = createSpeaker();
  await spreadsheet.onSelect(({ sheet, range }) => speak(() => describeSelection(host, sheet, range)));
  // For the browser tests, which read and change cells through the same port as the pane.
  Object.assign(window, { channelwright: { spreadsheet, grid: host.api } });
  await openDemo();
  showWork('');
};

speakPage(LANGUAGE);
element('message-close').addEventListener('click', () => showMessage(''));
followTheme(document.documentElement);
letPaneResize(WORDS.texts);
void start().catch((problem: unknown) => {
  console.error(problem);
  showWork(WORDS.texts.cannotStart);
});
