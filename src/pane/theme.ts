export type Theme = 'light' | 'dark';

/** What a program around the page says about its own colours. */
export interface HostTheme {
  /** "#rrggbb" of the ground behind the pane, where the program says it. */
  background(): string | undefined;
  onChange(listener: () => void): void;
}

const channel = (value: number): number => {
  const part = value / 255;
  return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
};

/** Relative luminance of "#rrggbb", 0 to 1, as WCAG 2.2 defines it; undefined for anything else. */
export const luminance = (colour: string): number | undefined => {
  const [, r, g, b] = /^#?([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})$/i.exec(colour.trim()) ?? [];
  if (r === undefined || g === undefined || b === undefined) return undefined;
  const [red, green, blue] = [r, g, b].map((hex) => channel(parseInt(hex, 16))) as [number, number, number];
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
};

/** On this ground white and black ink have the same contrast: (1.05)/(L + 0.05) = (L + 0.05)/0.05. */
const MIDDLE = Math.sqrt(1.05 * 0.05) - 0.05;

export const themeOfGround = (background: string | undefined): Theme | undefined => {
  const light = background === undefined ? undefined : luminance(background);
  return light === undefined ? undefined : light < MIDDLE ? 'dark' : 'light';
};

/** Gives the page the theme of the program around it, else the one that the reader prefers, and keeps it so. */
export const followTheme = (root: HTMLElement, host?: HostTheme): void => {
  const prefersDark = matchMedia('(prefers-color-scheme: dark)');
  const follow = () => {
    root.dataset.theme = themeOfGround(host?.background()) ?? (prefersDark.matches ? 'dark' : 'light');
  };
  follow();
  prefersDark.addEventListener('change', follow);
  host?.onChange(follow);
};
