import { execFileSync } from 'node:child_process';
import { join } from 'node:path';
import { SaxesParser } from 'saxes';
import { LANGUAGES, type Language } from '../../../src/core/language';
import { notesOf, openPlan } from '../../../src/entries/cli/workbook-plan';
import { reportContent, type ReportContent } from '../../../src/workbook/report/content';
import { htmlReport } from '../../../src/workbook/report/html';
import { markdownReport } from '../../../src/workbook/report/markdown';
import { readPlanNotes } from '../../../src/workbook/report/plan-notes';
import { SECTION_KEYS, type SectionKey } from '../../../src/workbook/report/section';
import type { Reported } from '../../../src/workbook/report/verdict-sections';
import { pythonWith } from '../../python';

const DEMO = join(__dirname, '../../../assets/demo-plan.xlsx');

/** Counts that openpyxl and plain Python make of the same file: rows, parts, types, roles and due dates. */
const COUNT = `
import json, sys, collections, datetime, openpyxl
book = openpyxl.load_workbook(sys.argv[1], data_only=True)
def table(sheet, head):
    rows = [list(r) for r in book[sheet].iter_rows(values_only=True)]
    at = next(i for i, r in enumerate(rows) if r and r[0] and str(r[0]).startswith(head))
    names = [str(c).split(' [')[0].split(' (')[0].replace(chr(10), ' ') if c else '' for c in rows[at]]
    return [dict(zip(names, r)) for r in rows[at + 1:] if r[0] not in (None, '')]
channels = table('Channels', 'Channel')
sensors = {r['Sensor type']: r for r in table('Sensors', 'Sensor type')}
count = lambda key: collections.Counter(r[key] for r in channels if r[key])
due = {}
for name, n in count('Sensor type').items():
    date = sensors.get(name, {}).get('Calibration due')
    if date: due[name] = (str(date)[:10], n)
print(json.dumps({
  'channels': len(channels), 'parts': count('Structure part'), 'types': count('Sensor type'),
  'mounts': count('Mount'), 'cables': count('Cable'), 'inputs': count('Input'),
  'pairs': collections.Counter(r['Cable'] + ' – ' + r['Input'] for r in channels if r['Cable'] and r['Input']),
  'glued': {k: n for k, n in count('Mount').items() if any(w in k.lower() for w in ('glue', 'epoxy', 'wax', 'tape'))},
  'controls': collections.Counter(r['Structure part'] for r in channels if r['Role'] == 'control'),
  'noPurpose': sum(1 for r in channels if not r['Purpose']), 'due': due,
}))
`;
interface Counted {
  readonly channels: number;
  readonly parts: Record<string, number>;
  readonly types: Record<string, number>;
  readonly mounts: Record<string, number>;
  readonly cables: Record<string, number>;
  readonly inputs: Record<string, number>;
  readonly pairs: Record<string, number>;
  readonly glued: Record<string, number>;
  readonly controls: Record<string, number>;
  readonly due: Record<string, [string, number]>;
}

let reported: Reported;
let contents: Record<Language, ReportContent>;
let counted: Counted;
const section = (key: SectionKey, language: Language = 'en') =>
  contents[language].sections.find((found) => found.key === key)!;
const asRecord = (key: SectionKey, column: number): Record<string, unknown> =>
  Object.fromEntries(section(key).lines.map((line) => [line[0], line[column]]));

beforeAll(async () => {
  const plan = await openPlan(DEMO, undefined);
  const { judged } = plan;
  reported = { checks: [...judged.byRow.values()], limits: judged.limits, unread: judged.unread };
  const of = (language: Language) => reportContent(reported, 'Channels', { language, notes: notesOf(plan) });
  contents = { en: of('en'), de: of('de'), fr: of('fr') };
  counted = JSON.parse(execFileSync(pythonWith('openpyxl')!, ['-c', COUNT, DEMO], { encoding: 'utf8' })) as Counted;
}, 60_000);

describe('a report of the demo plan, beside counts made by openpyxl', () => {
  it('has every channel once, in its part', () => {
    const parts = Object.fromEntries(
      section('parts')
        .lines.slice(0, -1)
        .map((line) => [line[0], line[6]]),
    );
    expect(parts).toEqual(counted.parts);
    expect(section('parts').lines.at(-1)![6]).toBe(counted.channels);
    expect(contents.en.channels.lines).toHaveLength(counted.channels);
  });

  it.each(['sensors', 'mounts', 'cables', 'inputs'] as const)('counts the channels of each of the %s', (key) => {
    expect(asRecord(key, 2)).toEqual(counted[key === 'sensors' ? 'types' : key]);
  });

  it('lists what is glued, and which parts have to fit each other', () => {
    expect(asRecord('adhesives', 2)).toEqual(counted.glued);
    const atInput = section('connections').lines.flatMap(([cable, side, items]) => {
      const input = /^cable to input (.*)$/.exec(String(side))?.[1];
      return input === undefined ? [] : [[`${cable} – ${input}`, items]];
    });
    expect(Object.fromEntries(atInput)).toEqual(counted.pairs);
  });

  it('keeps a tenth of cables, mounts, glued points and connections in reserve, whole pieces', () => {
    for (const key of ['mounts', 'adhesives', 'cables', 'connections'] as const)
      for (const [items, spare] of section(key).lines.map((line) => line.slice(-2).map(Number) as [number, number])) {
        expect(spare).toBeGreaterThanOrEqual(items / 10);
        expect(spare - items / 10).toBeLessThan(1);
      }
  });

  it('lists what falls due with its date, the earliest first', () => {
    const listed = section('due').lines.map((line) => [line[0], [line[3], line[2]]] as const);
    expect(Object.fromEntries(listed)).toEqual(counted.due);
    const dates = listed.map(([, [date]]) => String(date));
    expect(dates).toEqual([...dates].sort());
  });

  it('names the parts with control channels and how many they have', () => {
    const said = section('control').lines.map((line) => [line[0], Number(/^\d+/.exec(String(line[1]))![0])]);
    expect(Object.fromEntries(said)).toEqual(counted.controls);
  });

  it('adds up to the same whole by verdict, by part and by check', () => {
    const sum = (key: SectionKey, columns: readonly number[], rows: number) =>
      columns.reduce(
        (all, c) =>
          all +
          section(key)
            .lines.slice(0, rows)
            .reduce((n, line) => n + Number(line[c]), 0),
        0,
      );
    expect(sum('counts', [2], 4)).toBe(counted.channels);
    for (const row of [0, 1, 2, 3])
      expect(
        section('checks')
          .lines[row]!.slice(2)
          .reduce<number>((n, cell) => n + Number(cell), 0),
      ).toBe(counted.channels);
  });

  it('takes who made it and its assumptions from the plan notes', () => {
    expect(contents.en.facts).toContainEqual(['Revision', 'C, 2026-09-18']);
    expect(section('assumptions').lines).toContainEqual(['Temperatures', 'At the sensor, not of the air.']);
  });

  it('waits as long as an exponential decay to a hundredth takes', () => {
    for (const line of section('waits').lines) {
      const [corner, wait] = [Number(line[3]), Number(line[4])];
      // ln 100 time constants of 1/(2π·corner); both numbers are rounded to four digits.
      expect(wait * 2 * Math.PI * corner).toBeCloseTo(4.60517, 2);
    }
  });
});

describe('in other languages', () => {
  it.each(['de', 'fr'] as const)('%s has the same sections, numbers and verdicts, and other words', (language) => {
    contents.en.sections.forEach((english, i) => {
      const other = contents[language].sections[i]!;
      expect(other.key).toBe(english.key);
      expect(other.lines).toHaveLength(english.lines.length);
      english.lines.forEach((line, r) => {
        const numbers = (cells: readonly unknown[]) => cells.filter((cell) => typeof cell === 'number');
        expect(numbers(other.lines[r]!)).toEqual(numbers(line));
      });
      expect([other.key, other.text]).not.toEqual([english.key, english.text]);
    });
  });
});

it('every section that a plan can have is in the order of reading', () => {
  const keys = contents.en.sections.map(({ key }) => key);
  expect([...keys].sort((a, b) => SECTION_KEYS.indexOf(a) - SECTION_KEYS.indexOf(b))).toEqual(keys);
  expect(keys).toEqual(expect.arrayContaining(['counts', 'decisions', 'sensors', 'limits', 'legend']));
});

const HOSTILE = '<img src=x onerror=alert(1)> & "quoted" `code` | pipe\u0000';
const hostile = (): Reported => {
  const [first, ...rest] = reported.checks;
  const channel = { ...first!.channel, id: HOSTILE, group: HOSTILE, location: HOSTILE };
  return { ...reported, checks: [{ ...first!, channel }, ...rest] };
};

describe.each(LANGUAGES)('the page in %s', (language) => {
  const page = (of: Reported): string =>
    htmlReport('plan.xlsx', reportContent(of, HOSTILE, { language }), {
      language,
      paper: 'A4',
      plots: 'open',
      checks: of.checks,
      limits: of.limits,
    });

  it('is well formed, links only inside itself and runs nothing', () => {
    const html = page(hostile());
    const ids = new Set<string>();
    const links: string[] = [];
    const tags = new Set<string>();
    const parser = new SaxesParser();
    parser.on('error', (error) => {
      throw error;
    });
    parser.on('opentag', ({ name, attributes }) => {
      tags.add(name);
      if (attributes['id']) ids.add(String(attributes['id']));
      if (attributes['href']) links.push(String(attributes['href']));
      expect(Object.keys(attributes).filter((key) => /^on|^src$/.test(key))).toEqual([]);
    });
    parser.write(html.replace('<!doctype html>\n', '')).close();
    expect(tags.has('script') || tags.has('img')).toBe(false);
    expect(links.length).toBeGreaterThan(50);
    expect(links.filter((link) => !link.startsWith('#') || !ids.has(link.slice(1)))).toEqual([]);
    expect(html.replace(/http:\/\/www\.w3\.org\/2000\/svg/g, '')).not.toMatch(/https?:/);
  });

  it('shows a verdict as a word, and every open channel with its plots', () => {
    const html = page(reported);
    const open = reported.checks.filter(({ verdict }) => verdict !== 'PASS').length;
    expect(html.match(/<article /g)).toHaveLength(open);
    expect(html.match(/<figure>/g)).toHaveLength(3 * open);
  });
});

it('Markdown shows hostile text as it is', () => {
  const text = markdownReport('plan.xlsx', reportContent(hostile(), HOSTILE, { language: 'en' }));
  expect(text).not.toContain('<img');
  const line = text.split('\n').find((row) => row.startsWith('| &lt;img'))!;
  // Unescaped pipes are the table's own: one per cell edge.
  expect(line.match(/(?<!\\)\|/g)!.length).toBe(
    text
      .split('\n')
      .find((row) => row.startsWith('| To decide'))!
      .match(/\|/g)!.length,
  );
});

it('notes in other languages are understood', () => {
  const values = [
    ['Revision', 'B'],
    ['Erstellt von', 'Planung'],
    ['Vérifié', 'essais'],
    ['Annahmen', ''],
    ['Masse', 'gewogen'],
    ['Vorsicht', ''],
    ['Kammer', 'nie betreten'],
  ];
  expect(readPlanNotes({ values })).toEqual({
    facts: { revision: 'B', prepared: 'Planung', checked: 'essais' },
    assumptions: [['Masse', 'gewogen']],
  });
});

it('says what to ask a supplier for once for all failing rows that ask the same, without the sensors of the plan', () => {
  const { lines } = section('asked');
  const failing = reported.checks.filter(({ verdict }) => verdict === 'FAIL').map(({ channel }) => channel.id);
  expect(lines.length).toBeGreaterThan(1);
  expect(failing).toEqual(expect.arrayContaining(lines.flatMap(([names]) => String(names).split(', ')).slice(0, 3)));
  const w014 = String(lines.find(([names]) => names === 'W014')![1]);
  // The skin bears 5.2 gram at a ratio of 0.1 less what mount and cable weigh; the check of the row says the same.
  const sentence = section('decisions').lines.find(([name]) => name === 'W014')![1];
  const allowed = /at most ([\d.]+) gram of sensor/.exec(String(sentence))?.[1];
  expect(w014).toContain(`≤ ${allowed} gram sensor mass`);
  expect(w014).not.toContain('Ce-100');
});
