import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { VERDICTS } from '../../src/core/verdict';
import { VERDICT_COLOURS } from '../../src/workbook/check';
import { luminance, themeOfGround } from '../../src/pane/theme';

const css = (file: string): string => readFileSync(join(__dirname, '../../src', file), 'utf8');
/** The custom properties of the rule with exactly this selector, or none. */
const colours = (text: string, selector: string): Record<string, string> => {
  const start = text.indexOf(`\n${selector} {`) + 1 || (text.startsWith(`${selector} {`) ? 0 : -1);
  if (start < 0) throw new Error(`no rule ${selector}`);
  const body = text.slice(text.indexOf('{', start) + 1, text.indexOf('}', start));
  return Object.fromEntries(
    [...body.matchAll(/--([\w-]+):\s*(#[0-9a-f]{6})/g)].map(([, name, colour]) => [name!, colour!]),
  );
};
/** WCAG 2.2, contrast ratio. */
const contrast = (a: string, b: string): number => {
  const [high, low] = [luminance(a)!, luminance(b)!].sort((x, y) => y - x) as [number, number];
  return (high + 0.05) / (low + 0.05);
};
const below = (palette: Record<string, string>, inks: string[], grounds: string[], least = 4.5): string[] =>
  inks.flatMap((ink) =>
    grounds.flatMap((ground) => {
      const ratio = contrast(palette[ink]!, palette[ground]!);
      return ratio >= least ? [] : [`${ink} on ${ground}: ${ratio.toFixed(2)}`];
    }),
  );

const pane = css('pane/pane.css');
const page = css('entries/workbench.css');
const light = colours(pane, '.cw-pane');
const dark = { ...light, ...colours(pane, "[data-theme='dark'] .cw-pane") };
const lightPage = colours(page, ':root');
const darkPage = { ...lightPage, ...colours(page, ":root[data-theme='dark']") };

describe('contrast as WCAG 2.2 computes it', () => {
  it('is 21 for black on white and 4.54 for #767676 on white, the textbook grey that just passes', () => {
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 6);
    expect(contrast('#767676', '#ffffff')).toBeCloseTo(4.54, 2);
  });

  it.each([
    ['light', light],
    ['dark', dark],
  ])('is at least 4.5 for every text of the %s pane', (_name, palette) => {
    const inks = ['ink', 'quiet', 'accent', 'pass', 'warn', 'fail', 'incomplete'];
    expect(below(palette, inks, ['ground', 'raised', 'hover'])).toEqual([]);
    expect(below(palette, ['accent-ink'], ['accent', 'accent-down'])).toEqual([]);
    expect(below(palette, ['fail-ink'], ['fail'])).toEqual([]);
    expect(below(palette, ['focus'], ['ground', 'raised'], 3)).toEqual([]);
  });

  it.each([
    ['light', lightPage],
    ['dark', darkPage],
  ])('is at least 4.5 for every text of the %s page around the grid', (_name, palette) => {
    expect(below(palette, ['ink', 'ink-soft', 'accent'], ['paper', 'sheet'])).toEqual([]);
    expect(below(palette, ['ink', 'accent'], ['accent-wash'])).toEqual([]);
    expect(below(palette, ['alert'], ['alert-wash'])).toEqual([]);
    expect(below(palette, ['accent-ink'], ['accent', 'accent-down'])).toEqual([]);
  });

  it('is at least 4.5 for the verdicts in cells', () => {
    for (const verdict of VERDICTS) {
      const { ink, ground } = VERDICT_COLOURS[verdict];
      expect(contrast(ink, ground)).toBeGreaterThanOrEqual(4.5);
    }
  });

  it('finds a pair that is too weak', () => {
    expect(below({ a: '#777777', b: '#ffffff' }, ['a'], ['b'])).toEqual(['a on b: 4.48']);
  });
});

/** Machado, Oliveira, Fernandes (2009), full severity, on linear RGB; the matrices are from memory. */
const BLIND = {
  deuteranopia: [0.367322, 0.860646, -0.227968, 0.280085, 0.672501, 0.047413, -0.01182, 0.04294, 0.968881],
  protanopia: [0.152286, 1.052583, -0.204868, 0.114503, 0.786281, 0.099216, -0.003882, -0.048116, 1.051998],
};
const linear = (colour: string): number[] =>
  [1, 3, 5].map((at) => {
    const part = parseInt(colour.slice(at, at + 2), 16) / 255;
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  });
/** CIE 1976 L*a*b* under D65. */
const lab = ([r = 0, g = 0, b = 0]: number[]): number[] => {
  const f = (t: number) => (t > 216 / 24389 ? Math.cbrt(t) : ((24389 / 27) * t + 16) / 116);
  const x = f((0.4124 * r + 0.3576 * g + 0.1805 * b) / 0.9505);
  const y = f(0.2126 * r + 0.7152 * g + 0.0722 * b);
  const z = f((0.0193 * r + 0.1192 * g + 0.9505 * b) / 1.089);
  return [116 * y - 16, 500 * (x - y), 200 * (y - z)];
};
const seen = (colour: string, matrix: number[]): number[] => {
  const rgb = linear(colour);
  return lab(
    [0, 3, 6]
      .map((row) => rgb.reduce((sum, part, i) => sum + part * matrix[row + i]!, 0))
      .map((v) => Math.min(1, Math.max(0, v))),
  );
};
const apart = (a: string, b: string, matrix: number[]): number =>
  Math.hypot(...seen(a, matrix).map((value, i) => value - seen(b, matrix)[i]!));

describe('verdict colours for colour-blind readers', () => {
  // A difference of 20 in L*a*b* is plain at a glance; common practice, no source. Word and mark say it in any case.
  it.each(Object.entries(BLIND))('keep PASS apart from WARN and FAIL under %s', (_name, matrix) => {
    for (const palette of [light, dark])
      for (const other of ['warn', 'fail']) expect(apart(palette.pass!, palette[other]!, matrix)).toBeGreaterThan(20);
    for (const other of ['WARN', 'FAIL', 'INCOMPLETE'] as const)
      expect(
        apart(VERDICT_COLOURS.FAIL.ground, VERDICT_COLOURS[other === 'FAIL' ? 'PASS' : other].ground, matrix),
      ).toBeGreaterThan(20);
  });
});

describe('the theme of the program around the pane', () => {
  // The grounds that Office gives its panes: white, light grey, dark grey, black.
  it.each([
    ['#FFFFFF', 'light'],
    ['#E6E6E6', 'light'],
    ['#666666', 'dark'],
    ['#262626', 'dark'],
  ])('is of a ground %s: %s', (ground, theme) => expect(themeOfGround(ground)).toBe(theme));

  it('is not guessed from what is no colour', () => {
    expect(themeOfGround(undefined)).toBeUndefined();
    expect(themeOfGround('window')).toBeUndefined();
  });
});
