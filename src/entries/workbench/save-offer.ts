import { element } from './elements';

/** Asks whether to make a new workbook; the answer is the button that was pressed. */
export const offerNewWorkbook = (reasons: readonly string[], lost: readonly string[]): Promise<boolean> =>
  new Promise((resolve) => {
    const offer = element('offer');
    const before = document.activeElement;
    const line = (text: string) => {
      const item = document.createElement('li');
      item.textContent = text;
      return item;
    };
    element('offer-reasons').replaceChildren(...reasons.map(line));
    element('offer-lost').replaceChildren(...lost.map(line));
    element('offer-lost-part').hidden = lost.length === 0;
    const close = (answer: boolean) => {
      offer.hidden = true;
      offer.onkeydown = null;
      if (before instanceof HTMLElement) before.focus();
      resolve(answer);
    };
    element('offer-save').onclick = () => close(true);
    element('offer-cancel').onclick = () => close(false);
    offer.onkeydown = ({ key }) => {
      if (key === 'Escape') close(false);
    };
    offer.hidden = false;
    element('offer-cancel').focus();
  });
