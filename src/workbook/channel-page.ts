import type { InLanguages, Language } from '../core/language';
import { FUNCTIONS, NAMESPACE } from '../functions/index';
import type { ChannelCheck } from '../plan/check';
import type { Limits } from '../plan/limits';
import { levelLadder } from '../plots/level-ladder';
import { spanBar } from '../plots/span-bar';
import { thermalStrip } from '../plots/thermal-strip';
import { detailOf } from './detail';
import type { PlacedPlot } from './drawings';
import type { RowDetail } from './plan-view';
import type { Change } from './port';
import { REPORT_WORDS } from './report/words';
import { HAIRLINE, inert, marks } from './summary';
import type { Headline } from './results';
import { COPY_WORDS } from './share/told-words';
import { sourceText } from '../functions/describe';

/** What went into the check, as it is typed in the lists: title of the list, then field and cell. */
export interface ChannelInputs {
  readonly title: string;
  readonly cells: readonly (readonly [field: string, typed: string])[];
}

interface PageWords {
  readonly channel: string;
  readonly number: string;
  readonly equation: string;
  readonly source: string;
  readonly finding: string;
  readonly limit: string;
  readonly typed: string;
}
const WORDS: InLanguages<PageWords> = {
  en: { channel: 'Channel', number: 'Number', equation: 'Function and equation', source: 'Source', finding: 'Finding', limit: 'Limit', typed: 'As typed in the list' }, // prettier-ignore
  de: { channel: 'Kanal', number: 'Zahl', equation: 'Funktion und Gleichung', source: 'Quelle', finding: 'Befund', limit: 'Grenze', typed: 'Wie in der Liste getippt' }, // prettier-ignore
  fr: { channel: 'Voie', number: 'Nombre', equation: 'Fonction et équation', source: 'Source', finding: 'Constat', limit: 'Limite', typed: 'Comme saisi dans la liste' }, // prettier-ignore
};

/** The functions that give the numbers of each headline; their declarations hold equation and source. */
const FUNCTIONS_OF: Readonly<Record<Headline, readonly string[]>> = {
  level: ['NOISE.SUM', 'SIGNAL.TO.NOISE', 'CEILING', 'HEADROOM', 'DYNAMIC.RANGE'],
  mass: ['MASS.RATIO', 'MASS.ALLOWED', 'MASS.LEVEL', 'MASS.SHIFT'],
  thermal: ['THERMAL.BAND', 'THERMAL.HALFBAND'],
  frequency: ['RESONANCE.MOUNTED', 'FREQUENCY.SPAN'],
};

export const CHANNEL_COLUMNS: readonly number[] = [34, 24, 10, 52, 52];
const WIDTH = CHANNEL_COLUMNS.length;
const PLOT_WIDTH = 380;
const PLOT_GAP = 24;
const PLAIN = { align: 'left', vertical: 'top', wrap: true } as const;
const HEADING = { bold: true, ink: '#0f4c4a', ground: '#e6efee' } as const;

type Line = readonly (string | number | null)[];

const functionLines = (headline: Headline): Line[] =>
  FUNCTIONS_OF[headline].flatMap((name): Line[] => {
    const fn = FUNCTIONS.find((known) => known.name === name);
    return fn ? [[`${NAMESPACE}.${name}: ${fn.equation}`, sourceText(fn.source)]] : [];
  });

const plotsOf = (check: ChannelCheck, limits: Limits, language: Language, row: number): PlacedPlot[] => {
  const { sensor, named, id } = check.channel;
  const rows = [{ label: named?.sensor ?? sensor?.name ?? id, check }];
  return [levelLadder, spanBar, thermalStrip].map((draw, i) => {
    const plot = draw(rows, { width: PLOT_WIDTH, limits, language });
    const x = i * (PLOT_WIDTH + PLOT_GAP);
    return { plot, place: { row, column: 0, x, width: plot.width, height: plot.height } };
  });
};

const headlineLines = (
  { name, verdict, lines: numbers, sentences }: RowDetail['headlines'][number],
  language: Language,
): readonly Line[] => {
  const words = WORDS[language];
  const equations = functionLines(name);
  return [
    [REPORT_WORDS[language].headlines[name], verdict, null, words.equation, words.source],
    ...Array.from({ length: Math.max(numbers.length, equations.length) }, (_, i): Line => {
      const { label = null, value = null, unit = null } = numbers[i] ?? {};
      return [label, value, unit, ...(equations[i] ?? [])];
    }),
    ...sentences.map((sentence): Line => [words.finding, null, null, sentence]),
    [],
  ];
};
const placed = ({ place }: RowDetail): readonly Line[] =>
  place.length === 0 ? [] : [...place.map(({ label, value }): Line => [label, value]), []];

/** A sheet that shows one channel whole: numbers, equations, sources, what was typed, and three plots. */
export const channelPage = (
  sheet: string,
  check: ChannelCheck,
  limits: Limits,
  language: Language,
  inputs: readonly ChannelInputs[],
): readonly Change[] => {
  const words = WORDS[language];
  const { channel } = check;
  const place = [channel.group, `${channel.point ?? ''}${channel.direction ?? ''}`, channel.location].filter(Boolean);
  const lines: Line[] = [[`${words.channel} ${channel.id}`, check.verdict], [place.join(' · ')], []];
  const room = lines.length;
  const plots = plotsOf(check, limits, language, room);
  const tallest = Math.max(0, ...plots.map(({ plot }) => plot.height));
  for (let n = 0; n < Math.ceil(tallest / PIXELS_PER_ROW) + 1; n++) lines.push([]);
  const first = lines.length;
  const heads: number[] = [];
  const detail = detailOf(check, limits, language);
  lines.push(...placed(detail));
  for (const headline of detail.headlines) {
    heads.push(lines.length);
    lines.push(...headlineLines(headline, language));
  }
  const end = lines.length;
  for (const { title, cells } of inputs) {
    heads.push(lines.length);
    lines.push([title, words.typed]);
    lines.push(...cells.map(([field, typed]): Line => [field, typed]), []);
  }
  const cells = lines.map((line) => CHANNEL_COLUMNS.map((_, i) => inert(line[i] === '' ? null : (line[i] ?? null))));
  const block = (at: number, column: number, rows: number, columns: number) => ({ row: at, column, rows, columns });
  return [
    { kind: 'sheet', name: sheet, reading: { foot: COPY_WORDS[language].page } },
    { kind: 'clear', sheet, range: block(0, 0, MOST_ROWS, WIDTH) },
    { kind: 'cells', sheet, row: 0, column: 0, cells },
    { kind: 'look', sheet, range: block(0, 0, lines.length, WIDTH), look: PLAIN },
    ...[block(0, 0, room, WIDTH), block(first, 0, lines.length - first, WIDTH)].map((range): Change => ({
      kind: 'look',
      sheet,
      range,
      look: { hairline: HAIRLINE },
    })),
    { kind: 'look', sheet, range: block(first, 1, end - first, 1), look: { align: 'right' } },
    { kind: 'look', sheet, range: block(0, 0, 1, WIDTH), look: { bold: true, ink: HEADING.ink } },
    ...heads.map((at): Change => ({ kind: 'look', sheet, range: block(at, 0, 1, WIDTH), look: HEADING })),
    { kind: 'marks', sheet, rules: marks(block(0, 1, end, 1)) },

    ...CHANNEL_COLUMNS.map((characters, column): Change => ({
      kind: 'width',
      sheet,
      column,
      columns: 1,
      characters,
    })),
    { kind: 'fit', sheet, row: 0, rows: lines.length },
    { kind: 'drawings', sheet, drawings: plots },
  ];
};
/** Height of a row with one line of text, in any host. */
const PIXELS_PER_ROW = 20;
/** A channel page never grows beyond these; an older one is cleared whole. */
const MOST_ROWS = 400;
