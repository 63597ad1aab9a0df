/** The columns we write beside a channel table, in their order. Everything else on the sheet is the user's. */
export interface OwnColumn {
  readonly key: OwnKey;
  readonly heading: string;
  readonly characters: number;
  readonly numberFormat?: string;
  readonly kind: 'number' | 'verdict' | 'text' | 'working';
}

export const OWN_KEYS = [
  'verdict',
  'reason',
  'signalToNoise',
  'headroom',
  'levelVerdict',
  'massRatio',
  'massVerdict',
  'thermalLow',
  'thermalHigh',
  'thermalVerdict',
  'spanLow',
  'spanHigh',
  'frequencyVerdict',
  'noise',
  'ceiling',
  'sensitivity',
  'sensorLine',
  'mountLine',
  'cableLine',
  'inputLine',
] as const;
export type OwnKey = (typeof OWN_KEYS)[number];

const number = (heading: string, numberFormat: string, characters = 12) => ({
  heading,
  numberFormat,
  characters,
  kind: 'number' as const,
});
const verdict = (heading: string) => ({ heading, characters: 15, kind: 'verdict' as const });
const line = (heading: string) => ({ heading, characters: 7, kind: 'working' as const, numberFormat: '0' });

const COLUMNS: Readonly<Record<OwnKey, Omit<OwnColumn, 'key'>>> = {
  verdict: verdict('Channel verdict'),
  reason: { heading: 'Reason', characters: 52, kind: 'text' },
  signalToNoise: number('Signal to noise, dB', '0.0'),
  headroom: number('Headroom, dB', '0.0'),
  levelVerdict: verdict('Level check'),
  massRatio: number('Mass ratio', '0.000'),
  massVerdict: verdict('Mass check'),
  thermalLow: number('Thermal low, %', '0.0'),
  thermalHigh: number('Thermal high, %', '0.0'),
  thermalVerdict: verdict('Thermal check'),
  spanLow: number('Span low, Hz', '0.00'),
  spanHigh: number('Span high, Hz', '0'),
  frequencyVerdict: verdict('Frequency check'),
  noise: { ...number('Noise used, g rms', '0.0000'), kind: 'working' },
  ceiling: { ...number('Upper limit used, g', '0.0'), kind: 'working' },
  sensitivity: { ...number('Sensitivity used, mV/g', '0.000'), kind: 'working' },
  sensorLine: line('Sensor line'),
  mountLine: line('Mount line'),
  cableLine: line('Cable line'),
  inputLine: line('Input line'),
};

export const OWN_COLUMNS: readonly OwnColumn[] = OWN_KEYS.map((key) => ({ key, ...COLUMNS[key] }));
export const ownIndex = (key: OwnKey): number => OWN_KEYS.indexOf(key);

const headings = new Set(OWN_COLUMNS.map(({ heading }) => heading.toLowerCase()));
/** True for a heading of ours: such a column is never read as the user's data. */
export const isOwnHeading = (heading: string): boolean => headings.has(heading.trim().toLowerCase());

/** Where our block stands in a header row: complete, in pieces (somebody moved or removed columns), or nowhere. */
export const findOwnBlock = (
  headerRow: readonly unknown[],
): { kind: 'whole'; column: number } | { kind: 'pieces'; columns: readonly number[] } | { kind: 'none' } => {
  const texts = headerRow.map((cell) => (typeof cell === 'string' ? cell.trim().toLowerCase() : ''));
  const wanted = OWN_COLUMNS.map(({ heading }) => heading.toLowerCase());
  const column = texts.findIndex((_, i) => wanted.every((heading, k) => texts[i + k] === heading));
  if (column >= 0) return { kind: 'whole', column };
  const columns = texts.flatMap((text, i) => (headings.has(text) ? [i] : []));
  return columns.length > 0 ? { kind: 'pieces', columns } : { kind: 'none' };
};
