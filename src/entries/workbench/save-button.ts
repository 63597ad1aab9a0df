import { HostProblem } from '../../workbook/port';
import { element } from './elements';
import type { PageWords } from './page-words';
import { onSaveKey } from './keyboard';
import type { Saving } from './save';
import { offerNewWorkbook } from './save-offer';
import { showDone, showMessage, showWork } from './status';

/** Lets the page draw what it is busy with before the work keeps it from doing so. */
const nextFrame = () => new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve)));

/** The button and Ctrl+S save a copy; where the file cannot take the edits over, a new workbook is offered. */
export const letSave = (saving: Saving, endEditing: () => Promise<void>, words: PageWords): void => {
  const button = element<HTMLButtonElement>('save');
  const write = async () => {
    await endEditing();
    const obstacles = saving.obstacles();
    const isNew = obstacles.length > 0;
    if (isNew && !(await offerNewWorkbook(obstacles, saving.losses()))) return;
    showWork(words.texts.saving);
    await nextFrame();
    showDone(isNew ? await saving.saveNew() : await saving.saveCopy());
  };
  const save = async () => {
    if (button.disabled) return;
    button.disabled = true;
    showMessage('');
    try {
      await write();
    } catch (problem) {
      if (!(problem instanceof HostProblem)) console.error(problem);
      const reason = problem instanceof HostProblem ? problem.message : words.texts.copyFailed;
      showMessage(words.notSaved(reason));
    } finally {
      showWork('');
      button.disabled = !saving.canSave;
    }
  };
  saving.onChange = (canSave) => {
    button.disabled = !canSave;
  };
  button.addEventListener('click', () => void save());
  onSaveKey(() => void save());
};
