import type { ChannelCheck } from './check';
import type { Channel } from './model';

/** Something that can hurt people, shown when the plan suggests it. It never replaces local rules or licensed practice. */
export interface Caution {
  readonly key: string;
  readonly title: string;
  readonly text: string;
  /** When at least one channel is like this. */
  readonly applies: (check: ChannelCheck) => boolean;
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
const says =
  (pattern: RegExp) =>
  ({ channel }: ChannelCheck) =>
    pattern.test(words(channel));

const isControl = ({ channel }: ChannelCheck): boolean => channel.role === 'control';
const hottest = ({ channel }: ChannelCheck): number => channel.requirement.temperatureHigh ?? NaN;
const coldest = ({ channel }: ChannelCheck): number => channel.requirement.temperatureLow ?? NaN;
const namesChamber = says(/chamber|climat|klima/i);
const namesAdhesive = says(/glue|adhesive|epoxy|cyano|wax|cement|bond|tape|solvent|kleb|leim|wachs/i);
const namesLaser = says(/laser|vibromet/i);
const namesCeramic = says(/ceramic|keramik|pzt|zirconate/i);
const namesHeight = says(/height|ladder|scaffold|roof|crane|mast|tower|overhead/i);

export const CAUTIONS: readonly Caution[] = [
  {
    key: 'control sensor loss',
    title: 'Loss of a control sensor',
    text:
      'If a control sensor comes off, its cable opens or its range is wrong, the controller sees too little and drives harder: ' +
      'the article can break and parts can fly. Usual practice: two independent control channels, lanyards on sensor and cable, ' +
      'drive and abort limits, sensor-loss detection, a low-level run first. Follow the test house’s own rules.',
    applies: isControl,
  },
  {
    key: 'hot and cold surfaces',
    title: 'Hot and cold surfaces',
    text:
      'Surfaces above about 45 °C or below freezing can injure on touch, depending on material and time (ISO 13732-1 and -3, from memory). ' +
      'Let parts come back to room temperature, wear gloves, mind vapours of hot adhesive. Local rules decide.',
    applies: (check) => hottest(check) >= HOT_TO_TOUCH || coldest(check) <= COLD_TO_TOUCH,
  },
  {
    key: 'falling and thrown parts',
    title: 'Work at height, falling and thrown parts',
    text:
      'Sensors, magnets and test items can fall or be thrown. Tether them, keep people out of the zone, protect eyes; lock machines out ' +
      'before reaching in, and hold no probe by hand on rotating plant. Work at height, rigging and lock-out belong to trained people under local rules.',
    applies: (check) =>
      (check.channel.requirement.levelHigh ?? 0) > THROWN ||
      check.channel.requirement.purpose === 'shock' ||
      namesHeight(check),
  },
  {
    key: 'electricity',
    title: 'Electricity',
    text:
      'Power amplifiers of shakers carry voltages that kill, and charged ceramic or a long cable can hold hundreds of volts after heat or a drop: ' +
      'short it before connecting. Explosive areas need certified circuits (IEC 60079, from memory); ordinary sensor electronics are not. ' +
      'Leave mains and amplifier work to licensed people.',
    applies: (check) => isControl(check) || check.channel.sensor?.output === 'charge',
  },
  {
    key: 'chamber',
    title: 'Climatic chamber',
    text:
      'Never enter a chamber at temperature; liquid nitrogen displaces oxygen; doors can trap people; the article has its own ramp limits. ' +
      'The chamber’s operating rules come first.',
    applies: (check) => namesChamber(check) || hottest(check) > WEATHER.high || coldest(check) < WEATHER.low,
  },
  {
    key: 'adhesives',
    title: 'Adhesives and solvents',
    text:
      'Adhesives bond skin and eyes, solvents burn and need ventilation. Read the data sheet of each, mind flash points near hot parts, ' +
      'and follow the workplace’s rules for chemicals.',
    applies: namesAdhesive,
  },
  {
    key: 'lasers',
    title: 'Lasers',
    text:
      'Where no contact sensor fits, a laser is the usual way: check its class and eyewear (IEC 60825-1, from memory) and reflections from shiny panels, ' +
      'with the site’s laser protection officer where one is required.',
    applies: (check) => (check.mass.allowed ?? Infinity) <= 0 || namesLaser(check),
  },
  {
    key: 'lead ceramic',
    title: 'Lead ceramic',
    text: 'Piezoelectric ceramic usually contains lead: do not machine, grind or burn it, and dispose of broken sensors by local rules.',
    applies: namesCeramic,
  },
];

/** Shown with every plan. */
export const PLANNING_AID =
  'A planning aid: verify before the test. It is not a protective function and does not replace local rules or licensed practice.';

/** The cautions a plan calls for, each with the places of the channels that call for it. */
export const cautionsFor = (
  checks: readonly ChannelCheck[],
): readonly { readonly caution: Caution; readonly rows: readonly number[] }[] =>
  CAUTIONS.map((caution) => ({
    caution,
    rows: checks.flatMap((check, row) => (caution.applies(check) ? [row] : [])),
  })).filter(({ rows }) => rows.length > 0);
