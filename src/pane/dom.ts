type Child = Node | string | false | null | undefined;
type Properties = Readonly<Record<string, string | boolean | number | ((event: Event) => void) | undefined>>;

/** Makes an element. Text is always text, never markup. `onclick` and the like take functions; everything else is an attribute. */
export const make = <K extends keyof HTMLElementTagNameMap>(
  tag: K,
  properties: Properties = {},
  ...children: readonly Child[]
): HTMLElementTagNameMap[K] => {
  const element = document.createElement(tag);
  for (const [name, value] of Object.entries(properties)) {
    if (value === undefined || value === false) continue;
    if (typeof value === 'function') element.addEventListener(name.slice(2), value);
    else element.setAttribute(name, value === true ? '' : String(value));
  }
  element.append(...children.filter((child): child is Node | string => Boolean(child)));
  return element;
};

export const plainButton = (key: string, text: string, press: () => void, disabled = false): HTMLElement =>
  make('button', { type: 'button', class: 'plain', 'data-key': key, disabled, onclick: press }, text);

/** Lets a person pick a file; shown by the button that clicks it. */
export const fileInput = (key: string, label: string, accept: string, pick: (file: File) => void): HTMLInputElement => {
  const input = make('input', {
    type: 'file',
    accept,
    hidden: true,
    'aria-label': label,
    'data-key': key,
    onchange: () => {
      const file = input.files?.[0];
      if (file) pick(file);
      input.value = '';
    },
  });
  return input;
};

export const replaceContent = (element: Element, ...children: readonly Child[]): void => {
  element.replaceChildren(...children.filter((child): child is Node | string => Boolean(child)));
};

/** French sets a space before and inside its marks; a line never ends there. */
export const keepFrenchSpaces = (root: Element): void => {
  const texts = document.createTreeWalker(root, NodeFilter.SHOW_TEXT);
  while (texts.nextNode()) {
    const node = texts.currentNode as Text;
    const kept = node.data.replace(/ (?=[»:;?!%])/g, '\u00a0').replace(/(?<=«) /g, '\u00a0');
    if (kept !== node.data) node.data = kept;
  }
};

/** Draws one thing again only when what it shows has changed, and keeps the keyboard focus on the same control. */
export const keepingFocus = (root: Element, redraw: () => void): void => {
  const active = root.contains(document.activeElement) ? document.activeElement : null;
  const key = active?.getAttribute('data-key');
  redraw();
  if (key) root.querySelector<HTMLElement>(`[data-key="${CSS.escape(key)}"]`)?.focus();
};
