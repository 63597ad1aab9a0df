import type { Language } from '../core/language';
import type { ChannelCheck } from './check';
import type { Channel } from './model';
import { cautionText } from './words/cautions';

/** Something that can hurt people, shown when the plan suggests it. It never replaces local rules or licensed practice. */
export interface Caution {
  readonly key: CautionKey;
  readonly title: string;
  readonly text: string;
}

/** From memory: above about this the touch limits of ISO 13732-1 depend on material and contact time, °C. */
const HOT_TO_TOUCH = 45;
/** Common practice, no source: skin sticks to metal below freezing, °C. */
const COLD_TO_TOUCH = 0;
/** Common practice, no source: weather does not reach beyond these, a chamber does, °C. */
const WEATHER = { low: -25, high: 45 };
/** Common practice, no source: above one standard gravity a loose part leaves its place, m/s². */
const THROWN = 9.80665;

const words = ({ group, location, remarks, mount, sensor }: Channel): string =>
  [group, location, remarks, mount?.name, mount?.description, sensor?.technology, sensor?.description].join(' ');
const ADHESIVE = /glue|adhesive|epoxy|cyano|wax|cement|bond|tape|solvent|kleb|leim|wachs|colle|cire|adh[ée]s/i;
/** Whether a mount is glued, waxed or taped, by its name and description. */
export const isGlued = ({ mount }: Channel): boolean => ADHESIVE.test(`${mount?.name} ${mount?.description}`);

const says =
  (pattern: RegExp) =>
  ({ channel }: ChannelCheck) =>
    pattern.test(words(channel));

const isControl = ({ channel }: ChannelCheck): boolean => channel.role === 'control';
const hottest = ({ channel }: ChannelCheck): number => channel.requirement.temperatureHigh ?? NaN;
const coldest = ({ channel }: ChannelCheck): number => channel.requirement.temperatureLow ?? NaN;
const namesChamber = says(/chamber|climat|klima/i);
const namesAdhesive = says(ADHESIVE);
const namesLaser = says(/laser|vibromet/i);
const namesCeramic = says(/ceramic|keramik|pzt|zirconate/i);
const namesHeight = says(/height|ladder|scaffold|roof|crane|mast|tower|overhead/i);

/** What makes a caution worth showing: one channel like this. */
const APPLIES = {
  'control sensor loss': isControl,
  'hot and cold surfaces': (check) => hottest(check) >= HOT_TO_TOUCH || coldest(check) <= COLD_TO_TOUCH,
  'falling and thrown parts': (check) =>
    (check.channel.requirement.levelHigh ?? 0) > THROWN ||
    check.channel.requirement.purpose === 'shock' ||
    namesHeight(check),
  electricity: (check) => isControl(check) || check.channel.sensor?.output === 'charge',
  chamber: (check) => namesChamber(check) || hottest(check) > WEATHER.high || coldest(check) < WEATHER.low,
  adhesives: namesAdhesive,
  lasers: (check) => (check.mass.allowed ?? Infinity) <= 0 || namesLaser(check),
  'lead ceramic': namesCeramic,
} as const satisfies Readonly<Record<string, (check: ChannelCheck) => boolean>>;

export type CautionKey = keyof typeof APPLIES;
export const CAUTION_KEYS = Object.keys(APPLIES) as CautionKey[];

/** The cautions a plan calls for, each with the places of the channels that call for it. */
export const cautionsFor = (
  checks: readonly ChannelCheck[],
  language: Language = 'en',
): readonly { readonly caution: Caution; readonly rows: readonly number[] }[] =>
  CAUTION_KEYS.map((key) => ({
    caution: { key, ...cautionText(key, language) },
    rows: checks.flatMap((check, row) => (APPLIES[key](check) ? [row] : [])),
  })).filter(({ rows }) => rows.length > 0);
