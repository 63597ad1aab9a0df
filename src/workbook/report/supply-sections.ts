import { markedIn, type Language } from '../../core/language';
import { settlingTime } from '../../core/frequency/corner';
import type { ChannelCheck } from '../../plan/check';
import type { Channel } from '../../plan/model';
import { inWords } from '../../plan/numbers-in-words';
import { numbersIn } from '../../plan/words/sentences/numbers';
import { dueOf } from '../../plan/pieces';
import { isGlued } from '../../plan/cautions';
import { moduleUse } from '../../plan/rules/modules';
import { housingsOf } from '../../plan/rules/housings';
import { groupedBy, type Line, type Section } from './section';
import { REPORT_WORDS, type ReportWords } from './words';

/** Common practice, no source: one in ten cables, mounts, glued points and connections, one in twenty sensors and at least one of each type. */
const CABLE_SHARE = 10;
const SENSOR_SHARE = 20;
const spare = (items: number, share: number): number => Math.ceil(items / share);

type Part = 'sensor' | 'mount' | 'cable' | 'input';
const nameOf = ({ channel }: ChannelCheck, part: Part): string =>
  (channel.named?.[part] ?? channel[part]?.name ?? '').trim();
const byName = (checks: readonly ChannelCheck[], part: Part): (readonly [string, readonly ChannelCheck[]])[] =>
  [...groupedBy(checks, (check) => nameOf(check, part))].filter(([name]) => name !== '');
const joined = (...facts: readonly (string | undefined | false)[]): string => facts.filter(Boolean).join(', ');

const grams = (si: number | undefined, language: Language): string | undefined =>
  si === undefined ? undefined : numbersIn(language).withUnit(si, 'gram');

/** What the plan needs in sensors, mounts, cables and inputs, when they are due, and how long to wait. */
export const supplySections = (checks: readonly ChannelCheck[], language: Language): readonly Section[] => {
  const words = REPORT_WORDS[language];
  const quantity = (si: number | undefined, unit: 'pF' | 'V', label: string): string | undefined =>
    si === undefined ? undefined : `${markedIn(inWords(si, unit), language)} ${label}`;
  return [
    sensors(checks, words),
    technologies(checks, words),
    {
      key: 'mounts',
      ...words.mounts,
      columns: [words.sensors.channels, words.sensors.items, words.sensors.spare],
      lines: mountLines(checks, language),
    },
    {
      key: 'adhesives',
      ...words.adhesives,
      columns: [words.sensors.channels, words.adhesives.points, words.sensors.spare],
      lines: mountLines(
        checks.filter(({ channel }) => isGlued(channel)),
        language,
      ),
    },
    {
      key: 'cables',
      ...words.cables,
      columns: [words.sensors.channels, words.sensors.items, words.sensors.spare],
      lines: byName(checks, 'cable').map(([name, of]): Line => {
        const { cable } = of[0]!.channel;
        const items = housingsOf(of).length;
        const facts = joined(quantity(cable?.capacitance, 'pF', 'pF'), grams(cable?.mass, language));
        return [name, facts || null, of.length, items, spare(items, CABLE_SHARE)];
      }),
    },
    connections(checks, words),
    {
      key: 'inputs',
      ...words.inputs,
      columns: [words.sensors.channels],
      lines: byName(checks, 'input').map(([name, of]): Line => {
        const { input } = of[0]!.channel;
        return [name, joined(input?.mode, quantity(input?.range, 'V', 'V')) || null, of.length];
      }),
    },
    modules(checks, words),
    due(checks, words),
    waits(checks, words, language),
  ];
};

const mountLines = (checks: readonly ChannelCheck[], language: Language): readonly Line[] =>
  byName(checks, 'mount').map(([name, of]): Line => {
    const { description, mass, temperatureMin, temperatureMax } = of[0]?.channel.mount ?? {};
    const degrees = [temperatureMin, temperatureMax].map((si) => (si === undefined ? '' : inWords(si, '°C')));
    const facts = joined(description, grams(mass, language), degrees.some(Boolean) && `${degrees.join(' … ')} °C`);
    const items = housingsOf(of).length;
    return [name, facts || null, of.length, items, spare(items, CABLE_SHARE)];
  });

/** A plan names no plugs; which parts have to fit each other it does. */
const connections = (checks: readonly ChannelCheck[], words: ReportWords): Section => {
  const lines = (from: Part, to: Part, side: string, count: (of: readonly ChannelCheck[]) => number): Line[] => {
    const named = checks.filter((check) => nameOf(check, from) !== '' && nameOf(check, to) !== '');
    return [...groupedBy(named, (check) => `${nameOf(check, from)}\n${nameOf(check, to)}`).values()].map((of) => {
      const items = count(of);
      return [nameOf(of[0]!, from), `${side} ${nameOf(of[0]!, to)}`, items, spare(items, CABLE_SHARE)];
    });
  };
  return {
    key: 'connections',
    title: words.connections.title,
    text: words.connections.text,
    columns: [words.sensors.items, words.sensors.spare],
    lines: [
      ...lines('sensor', 'cable', words.connections.atSensor, (of) => housingsOf(of).length),
      ...lines('cable', 'input', words.connections.atInput, (of) => of.length),
    ],
  };
};

const modules = (checks: readonly ChannelCheck[], words: ReportWords): Section => {
  const { title, text, needed, there, modules: count, free } = words.modules;
  return {
    key: 'modules',
    title,
    text,
    columns: [needed, count, there, free],
    lines: moduleUse(checks).map((use): Line => [use.mode, null, use.needed, use.modules, use.channels, use.channels - use.needed]), // prettier-ignore
  };
};

const axesText = ({ sensor }: Channel): string | undefined =>
  sensor?.axes === undefined ? undefined : `${sensor.axes}×`;

const sensors = (checks: readonly ChannelCheck[], words: ReportWords): Section => {
  const { channels, items, spare: spares, stock, short, title, text } = words.sensors;
  return {
    key: 'sensors',
    title,
    text,
    columns: [channels, items, spares, stock, short],
    lines: byName(checks, 'sensor').map(([name, of]): Line => {
      const { channel } = of[0]!;
      const { sensor } = channel;
      const needed = housingsOf(of).length;
      const kept = spare(needed, SENSOR_SHARE);
      const owned = sensor?.quantity;
      const facts = joined(sensor?.technology, sensor?.output, axesText(channel));
      const missing = owned === undefined ? null : Math.max(0, needed + kept - owned);
      return [name, facts || null, of.length, needed, kept, owned ?? null, missing];
    }),
  };
};

const technologies = (checks: readonly ChannelCheck[], words: ReportWords): Section => ({
  key: 'technologies',
  ...words.technologies,
  columns: [words.sensors.channels, words.sensors.items],
  lines: [...groupedBy(checks, ({ channel }) => channel.sensor?.technology?.trim() ?? '')].map(([name, of]): Line => {
    const types = new Set(of.map((check) => nameOf(check, 'sensor')).filter(Boolean));
    return [name || words.notNamed, [...types].join(', ') || null, of.length, housingsOf(of).length];
  }),
});

const DAY_MS = 86_400_000;
/** Day 0 of spreadsheets is 1899-12-30. */
export const isoDate = (day: number): string =>
  new Date(Date.UTC(1899, 11, 30) + Math.floor(day) * DAY_MS).toISOString().slice(0, 10);

const due = (checks: readonly ChannelCheck[], words: ReportWords): Section => {
  const dated = byName(checks, 'sensor').flatMap(([name, of]) => {
    const days = of.flatMap(({ channel }) => dueOf(channel) ?? channel.sensor?.calibrationDue ?? []);
    return days.length === 0 ? [] : [{ name, day: days.reduce((a, b) => Math.min(a, b)), count: of.length }];
  });
  return {
    key: 'due',
    title: words.due.title,
    text: words.due.text,
    columns: [words.sensors.channels, words.due.date],
    lines: dated.sort((a, b) => a.day - b.day).map(({ name, day, count }): Line => [name, null, count, isoDate(day)]),
  };
};

const RESIDUE = 0.01;
const FOUR = 4;
/** The slowest corner of each pair of sensor and input decides how long its channels need to settle. */
const waits = (checks: readonly ChannelCheck[], words: ReportWords, language: Language): Section => {
  const pairs = groupedBy(checks, (check) => `${nameOf(check, 'sensor')}\n${nameOf(check, 'input')}`);
  const slow = [...pairs.values()].flatMap((of) => {
    const corners = (of[0]?.frequency.lowPoles ?? []).filter((corner) => corner > 0);
    return corners.length > 0 ? [{ of, corner: Math.min(...corners) }] : [];
  });
  const digits = (value: number): number => Number(value.toPrecision(FOUR));
  return {
    key: 'waits',
    title: words.waits.title,
    text: words.waits.text,
    columns: [words.sensors.channels, words.waits.corner, words.waits.wait],
    lines: slow
      .sort((a, b) => a.corner - b.corner)
      .map(({ of, corner }): Line => [
        nameOf(of[0]!, 'sensor'),
        joined(nameOf(of[0]!, 'input'), language && shortIds(of, words)),
        of.length,
        digits(corner),
        digits(settlingTime(corner, 1, RESIDUE)),
      ]),
  };
};

const MOST_IDS = 4;
const shortIds = (of: readonly ChannelCheck[], words: ReportWords): string => {
  const ids = of.map(({ channel }) => channel.id);
  return ids.length <= MOST_IDS ? ids.join(', ') : words.more(ids.slice(0, MOST_IDS).join(', '), ids.length - MOST_IDS);
};
