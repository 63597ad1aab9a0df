import { element } from './elements';

/** A message the user must see; '' takes it away. */
export const showMessage = (text: string): void => {
  element('message').classList.remove('is-done');
  element('message-text').textContent = text;
  element('message').hidden = text === '';
};

/** What was done, in the same place but calm. */
export const showDone = (text: string): void => {
  showMessage(text);
  element('message').classList.add('is-done');
};

/** What the page is busy with, over the grid; '' when it is not. */
export const showWork = (text: string): void => {
  element('cover-text').textContent = text;
  element('cover').hidden = text === '';
};
