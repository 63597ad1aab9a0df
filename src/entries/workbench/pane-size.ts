import { element } from './elements';

const LEAST = 280;
const MOST_SHARE = 0.6;
const STEP = 16;

/** The divider can be dragged or moved with the arrow keys; the pane can be hidden and shown again. */
export const letPaneResize = ({ hidePane, showPane }: Readonly<Record<'hidePane' | 'showPane', string>>): void => {
  const divider = element('divider');
  const pane = element('pane');
  const toggle = element<HTMLButtonElement>('pane-toggle');
  const setWidth = (wanted: number) => {
    const width = Math.round(Math.min(Math.max(wanted, LEAST), Math.max(LEAST, window.innerWidth * MOST_SHARE)));
    document.documentElement.style.setProperty('--pane-width', `${width}px`);
    divider.setAttribute('aria-valuenow', String(width));
    divider.setAttribute('aria-valuemin', String(LEAST));
    divider.setAttribute('aria-valuemax', String(Math.round(window.innerWidth * MOST_SHARE)));
  };
  setWidth(360);

  divider.addEventListener('pointerdown', (event) => {
    divider.setPointerCapture(event.pointerId);
    event.preventDefault();
  });
  divider.addEventListener('pointermove', (event) => {
    if (divider.hasPointerCapture(event.pointerId)) setWidth(window.innerWidth - event.clientX);
  });
  divider.addEventListener('keydown', (event) => {
    const step = event.key === 'ArrowLeft' ? STEP : event.key === 'ArrowRight' ? -STEP : 0;
    if (!step) return;
    event.preventDefault();
    setWidth(pane.getBoundingClientRect().width + step);
  });
  toggle.addEventListener('click', () => {
    const hidden = document.body.classList.toggle('is-pane-hidden');
    toggle.textContent = hidden ? showPane : hidePane;
    toggle.setAttribute('aria-expanded', String(!hidden));
  });
};
