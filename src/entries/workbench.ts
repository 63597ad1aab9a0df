import './workbench.css';
import { listenForDrops } from './workbench/drop-target';
import { element } from './workbench/elements';
import { letPaneResize } from './workbench/pane-size';

const DEMO = { file: 'demo-plan.xlsx', title: 'Demo plan' };

const cover = element('cover');
const message = element('message');
const showMessage = (text: string) => {
  element('message-text').textContent = text;
  message.hidden = text === '';
};
const showWork = (text: string) => {
  element('cover-text').textContent = text;
  cover.hidden = text === '';
};

const start = async () => {
  const { createGrid, openInGrid, workbookFromFile, FileProblem } = await import(
    /* webpackChunkName: "grid" */ './workbench/grid'
  );
  const grid = createGrid('grid');

  const openBytes = async (bytes: Uint8Array, title: string) => {
    showMessage('');
    showWork(`Opening ${title}…`);
    try {
      const data = await workbookFromFile(bytes, title);
      await openInGrid(grid.api, data);
      element('file-name').textContent = title;
      document.title = `${title} – Channelwright workbench`;
    } catch (problem) {
      const reason = problem instanceof FileProblem ? problem.message : 'The spreadsheet could not show this workbook.';
      showMessage(`${title} was not opened. ${reason}`);
    } finally {
      showWork('');
    }
  };
  const openFiles = async (files: readonly File[]) => {
    const [file] = files;
    if (!file) return;
    await openBytes(new Uint8Array(await file.arrayBuffer()), file.name);
  };
  const openDemo = async () => {
    const response = await fetch(DEMO.file);
    if (!response.ok) return showMessage('The demo plan is missing from this installation. Build the project again.');
    await openBytes(new Uint8Array(await response.arrayBuffer()), DEMO.title);
  };

  const input = element<HTMLInputElement>('file');
  input.addEventListener('change', () => {
    void openFiles([...(input.files ?? [])]);
    input.value = '';
  });
  element('open').addEventListener('click', () => input.click());
  element('demo').addEventListener('click', () => void openDemo());
  listenForDrops((files) => void openFiles(files));
  await openDemo();
  showWork('');
};

element('message-close').addEventListener('click', () => showMessage(''));
letPaneResize();
void start();
