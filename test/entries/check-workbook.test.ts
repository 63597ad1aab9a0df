import { execFileSync } from 'node:child_process';
import { copyFileSync, existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import { openHeadless } from '../../src/adapters/embedded/node';
import { workbookFromFile } from '../../src/adapters/embedded/import/workbook';
import { EmbeddedSpreadsheet } from '../../src/adapters/embedded/spreadsheet';
import { openFile, saveFile } from '../../src/adapters/xlsx/file-on-disk';
import { FUNCTIONS } from '../../src/functions/index';
import { fromSi } from '../../src/core/units';
import { openPlan } from '../../src/entries/cli/workbook-plan';
import { OWN_COLUMNS, OWN_KEYS, ownIndex, type OwnKey } from '../../src/workbook/own-columns';
import { isCellError, type Cell } from '../../src/functions/define';
import type { Change } from '../../src/workbook/port';
import { DEMO, run, temporaryFolder } from './run';

const NAMES = FUNCTIONS.map(({ name }) => name);
const folder = temporaryFolder();
const at = (name: string) => join(folder, name);
const checked = at('checked.xlsx');
let first: Awaited<ReturnType<typeof run>>;

const partsOf = (path: string) => unzipSync(new Uint8Array(readFileSync(path)));
/** The demo plan changed as a person or another program would, before any check. */
const edited = async (name: string, changes: readonly Change[]): Promise<string> => {
  const file = await openFile(DEMO, NAMES);
  file.edit(changes);
  await saveFile(file, at(name), { input: DEMO });
  return at(name);
};
const own = async (path: string) => {
  const file = await openFile(path, NAMES);
  const { values, formulas, row, column } = file.readSheet('Channels');
  const heading = values.findIndex((line) => line.includes(OWN_COLUMNS[0]!.heading));
  const place = values[heading]!.indexOf(OWN_COLUMNS[0]!.heading);
  return {
    file,
    verdictCell: { row: heading + 1 + row, column: place + column },
    values: values.slice(heading + 1).map((line) => line.slice(place, place + OWN_KEYS.length)),
    formulas: formulas.slice(heading + 1).map((line) => line.slice(place, place + OWN_KEYS.length)),
  };
};

beforeAll(async () => {
  first = await run(['check', DEMO, '-o', checked]);
}, 60_000);

describe('a checked workbook', () => {
  it('holds what the plan layer computes', async () => {
    const [{ values, formulas }, { judged }] = await Promise.all([own(checked), openPlan(DEMO, undefined)]);
    const checks = [...judged.byRow.values()];
    expect(values).toHaveLength(checks.length);
    checks.forEach(({ level, mass, thermal, frequency, verdict, channel }, i) => {
      const cell = (key: OwnKey) => values[i]![ownIndex(key)];
      const near = (key: OwnKey, expected: number | undefined) => {
        const actual = cell(key) ?? null;
        if (expected === undefined) expect([channel.id, key, isCellError(actual)]).toEqual([channel.id, key, true]);
        else expect(Math.abs((actual as number) - expected)).toBeLessThanOrEqual(1e-9 * Math.abs(expected) + 1e-12);
      };
      expect([channel.id, cell('verdict')]).toEqual([channel.id, verdict]);
      expect(cell('levelVerdict')).toBe(level.verdict);
      expect(cell('massVerdict')).toBe(mass.verdict);
      expect(cell('thermalVerdict')).toBe(thermal.verdict);
      expect(cell('frequencyVerdict')).toBe(frequency.verdict);
      near('signalToNoise', level.signalToNoise);
      near('headroom', level.headroom);
      near('massRatio', mass.ratio);
      near('thermalLow', thermal.band && fromSi(thermal.band.low, '%'));
      near('thermalHigh', thermal.band && fromSi(thermal.band.high, '%'));
      near('spanHigh', frequency.span?.high);
    });
    expect(formulas.flat().every((formula) => formula.startsWith('='))).toBe(true);
  });

  it('holds what the embedded engine calculates from the same formulas', async () => {
    const host = await openHeadless(await workbookFromFile(new Uint8Array(readFileSync(checked)), 'checked'));
    try {
      const spreadsheet = new EmbeddedSpreadsheet(host);
      await spreadsheet.calculated();
      const content = await spreadsheet.readSheet('Channels');
      const { values, verdictCell } = await own(checked);
      const wrong: unknown[] = [];
      values.forEach((line, r) =>
        line.forEach((stored, c) => {
          const calculated =
            content.values[verdictCell.row + r - content.row]?.[verdictCell.column + c - content.column];
          if (!isSame(stored, calculated ?? null)) wrong.push([r, OWN_KEYS[c], stored, calculated]);
        }),
      );
      expect(wrong).toEqual([]);
    } finally {
      host.univer.dispose();
    }
  }, 60_000);

  it('does not change a part of the file that is not ours', () => {
    const [before, after] = [partsOf(DEMO), partsOf(checked)];
    const touched = Object.keys(before).filter((name) => strFromU8(before[name]!) !== strFromU8(after[name]!));
    expect(touched.sort()).toEqual(
      [
        '[Content_Types].xml',
        'xl/_rels/workbook.xml.rels',
        'xl/styles.xml',
        'xl/workbook.xml',
        'xl/worksheets/sheet1.xml',
      ].sort(),
    );
  });

  it('checked again is the same file, byte for byte', async () => {
    await run(['check', checked, '-o', at('again.xlsx')]);
    expect(readFileSync(at('again.xlsx')).equals(readFileSync(checked))).toBe(true);
  }, 60_000);

  it('says in a note on each verdict that is not PASS why, and by how much', () => {
    const notes = strFromU8(partsOf(checked)['xl/comments1.xml']!);
    const counts = /(\d+) FAIL, (\d+) INCOMPLETE, (\d+) WARN/.exec(first.out)!;
    expect(notes.match(/<comment /g)).toHaveLength(Number(counts[1]) + Number(counts[2]) + Number(counts[3]));
    expect(notes).toMatch(/Channel W001: FAIL\nFAIL: Headroom −[\d.]+ dB, limit 3\.5 dB/);
  });

  it('loses the note of a row that has become PASS, and gains none', async () => {
    const { file, values, verdictCell } = await own(checked);
    const row = values.findIndex(([verdict]) => verdict === 'PASS');
    const place = { sheet: 'Channels', row: verdictCell.row + row, column: verdictCell.column };
    file.edit([{ kind: 'note', ...place, text: 'Channel W004: FAIL\nfrom an earlier state' }]);
    await saveFile(file, at('stale.xlsx'), { input: checked });
    expect(strFromU8(partsOf(at('stale.xlsx'))['xl/comments1.xml']!)).toContain('earlier state');
    await run(['check', at('stale.xlsx'), '-o', at('renewed.xlsx')]);
    const notesIn = (path: string) => strFromU8(partsOf(path)['xl/comments1.xml']!).match(/<comment .*?<\/comment>/gs);
    expect(notesIn(at('renewed.xlsx'))).toEqual(notesIn(checked));
  }, 60_000);

  it('has a summary that counts what the list says', async () => {
    const { file } = await own(checked);
    const lines = file.readSheet('Check summary').values;
    const total = lines.find(([label]) => label === 'All channels')!;
    const counts = /(\d+) FAIL, (\d+) INCOMPLETE, (\d+) WARN, (\d+) PASS/.exec(first.out)!.slice(1).map(Number);
    expect(total.slice(2, 7)).toEqual([...counts, counts.reduce((a, b) => a + b)]);
    const labels = lines.map(([label]) => label);
    for (const part of [
      'Structure part',
      'To decide first',
      'Rows taken together',
      'Cautions',
      'Limits used',
      'Verdict',
    ])
      expect(labels).toContain(part);
    expect(JSON.stringify(lines)).not.toMatch(/\bsafe\b/i);
  });

  it('keeps numbers in LibreOffice, and words as well when written as values', async () => {
    await run(['check', DEMO, '--values', '-o', at('values.xlsx')]);
    const csvOf = (name: string) => {
      execFileSync('soffice', ['--headless', `-env:UserInstallation=file://${at('profile')}`, '--convert-to', 'csv', '--outdir', folder, at(name)], { stdio: 'ignore' }); // prettier-ignore
      return readFileSync(at(name.replace('.xlsx', '.csv')), 'utf8');
    };
    const { values } = await own(checked);
    const ratio = String(values[0]![ownIndex('signalToNoise')]).slice(0, 12);
    const verdicts = values.map((line) => String(line[0]));
    const shown = (csv: string) => [...csv.matchAll(/^[A-Z]\d{3}(?:,(?:"[^"]*"|[^,]*)){23},(\w+)/gm)].map((m) => m[1]);
    expect(csvOf('checked.xlsx')).toContain(`,${ratio}`);
    expect(shown(csvOf('values.xlsx'))).toEqual(verdicts);
    // LibreOffice trusts stored texts of formulas only in files of Excel's or its own.
    const parts = partsOf(DEMO);
    const about = strFromU8(parts['docProps/app.xml']!);
    parts['docProps/app.xml'] = strToU8(about.replace(/<Application>[^<]*/, '<Application>Microsoft Excel'));
    writeFileSync(at('excel.xlsx'), zipSync(parts));
    await run(['check', at('excel.xlsx'), '-o', at('excel-checked.xlsx')]);
    expect(shown(csvOf('excel-checked.xlsx'))).toEqual(verdicts);
  }, 120_000);
});

const isSame = (stored: Cell | undefined, calculated: Cell): boolean => {
  if (typeof stored === 'number' && typeof calculated === 'number')
    return Math.abs(stored - calculated) <= 1e-9 * Math.abs(stored);
  if (typeof stored === 'object' && stored !== null) return JSON.stringify(stored) === JSON.stringify(calculated);
  return (stored ?? '') === (calculated ?? '');
};

describe('what check says', () => {
  it('ends with 1 for the demo plan, has a line for each channel and no escape codes', async () => {
    expect(first.status).toBe(1);
    expect(first.out).not.toContain('\u001b');
    expect(first.out.match(/^\S+ .* (PASS|WARN|FAIL|INCOMPLETE)\b/gm)).toHaveLength(287);
    // Lines are wrapped wherever the file's path makes them long.
    expect(first.out.replace(/\s+/g, ' ')).toContain(
      'read "1,250", which can mean 1.25 Hz or 1250 Hz, expected a number in Hz',
    );
    expect((await run(['check', DEMO], { colour: true })).out).toContain('\u001b[');
  });

  it('writes nothing without being asked to', async () => {
    const before = readdirSync(folder).sort();
    const bytes = readFileSync(DEMO);
    await run(['check', DEMO]);
    expect(readdirSync(folder).sort()).toEqual(before);
    expect(readFileSync(DEMO).equals(bytes)).toBe(true);
  });

  it('goes into a report as well, Markdown or text', async () => {
    const { out } = await run(['check', DEMO, '--json', '--report', at('report.md')]);
    const report = readFileSync(at('report.md'), 'utf8');
    const all = report.slice(report.indexOf('## All channels'));
    expect(all.match(/^\|.*\| (PASS|WARN|FAIL|INCOMPLETE) \|$/gm)).toHaveLength(287);
    expect(report).toContain('## Limits used');
    expect((JSON.parse(out) as { plans: { channels: unknown[] }[] }).plans[0]!.channels).toHaveLength(287);
    await run(['check', DEMO, '--report', at('report.txt')]);
    expect(readFileSync(at('report.txt'), 'utf8')).toContain('287 channels on “Channels”');
  });

  it('goes into a page in the language and on the paper asked for', async () => {
    await run(['check', DEMO, '--report', at('report.html'), '--language', 'de', '--paper', 'A3']);
    const page = readFileSync(at('report.html'), 'utf8');
    expect(page).toContain('<html lang="de">');
    expect(page).toContain('size: A3 landscape');
    expect(page).toContain('287 Kanäle, 33 FAIL');
    expect(page).not.toContain(DEMO);
    expect(await run(['check', DEMO, '--report', at('x.html'), '--language', 'xx'])).toMatchObject({ status: 64 });
    expect(await run(['check', DEMO, '--report', at('x.html'), '--paper', 'B7'])).toMatchObject({ status: 64 });
    expect(await run(['check', DEMO, DEMO, '--report', at('x.html')])).toMatchObject({ status: 64 });
  }, 60_000);
});

describe('files that are not ours', () => {
  it('are never replaced without --in-place, and then a copy is kept', async () => {
    copyFileSync(DEMO, at('mine.xlsx'));
    const before = readFileSync(at('mine.xlsx'));
    expect((await run(['check', at('mine.xlsx'), '-o', at('mine.xlsx')])).status).not.toBe(1);
    copyFileSync(DEMO, at('other.xlsx'));
    const foreign = await run(['check', at('mine.xlsx'), '-o', at('other.xlsx')]);
    expect([foreign.status, foreign.error]).toEqual([64, expect.stringContaining('is no checked copy')]);
    expect(readFileSync(at('mine.xlsx')).equals(before)).toBe(true);
    expect(readFileSync(at('other.xlsx')).equals(before)).toBe(true);
    expect((await run(['check', at('mine.xlsx'), '--in-place'])).status).toBe(1);
    expect(readFileSync(at('mine.before-1.xlsx')).equals(before)).toBe(true);
    expect(readFileSync(at('mine.xlsx')).equals(before)).toBe(false);
  }, 60_000);

  it('keep a sheet that happens to have the name of our summary', async () => {
    const path = await edited('named.xlsx', [
      { kind: 'sheet', name: 'Check summary' },
      { kind: 'cells', sheet: 'Check summary', row: 0, column: 0, cells: [['my own words']] },
    ]);
    await run(['check', path, '-o', at('named-checked.xlsx')]);
    const { file } = await own(at('named-checked.xlsx'));
    expect(file.readSheet('Check summary').values).toEqual([['my own words']]);
    expect(file.readSheet('Check summary 2').values.length).toBeGreaterThan(20);
  }, 60_000);

  it('keep a column that happens to have a heading of ours, and say so', async () => {
    const plan = await openFile(DEMO, NAMES);
    const { values, row, column } = plan.readSheet('Channels');
    const heading = row + values.findIndex((line) => line.includes('Sensor type'));
    const free = column + values[0]!.length;
    const words = values.slice(heading - row + 1).map((_, i) => [`ask Jo about ${i}`]);
    const path = await edited('reasons.xlsx', [
      { kind: 'cells', sheet: 'Channels', row: heading, column: free, cells: [['Reason'], ...words] },
    ]);
    const { out } = await run(['check', path, '-o', at('reasons-checked.xlsx')]);
    expect(out.replace(/\s+/g, ' ')).toContain('a column of yours with a heading like one of ours; it was left');
    const after = (await openFile(at('reasons-checked.xlsx'), NAMES)).readSheet('Channels');
    const kept = after.values.slice(heading + 1 - after.row).map((line) => [line[free - after.column]]);
    expect(kept).toEqual(words);
    expect((await own(at('reasons-checked.xlsx'))).verdictCell.column).toBe(free + 1);
  }, 60_000);

  it('that several people share in the old way are not replaced in place, and a copy says so', async () => {
    const parts = partsOf(DEMO);
    const relation = (kind: string, target: string) =>
      `<Relationship Id="rId${kind}" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/${kind}" Target="${target}"/>`;
    parts['xl/revisions/userNames.xml'] = strToU8('<users/>');
    parts['xl/_rels/workbook.xml.rels'] = strToU8(
      strFromU8(parts['xl/_rels/workbook.xml.rels']!).replace(
        '</Relationships>',
        `${relation('usernames', 'revisions/userNames.xml')}</Relationships>`,
      ),
    );
    const before = zipSync(parts);
    writeFileSync(at('shared.xlsx'), before);
    const refused = await run(['check', at('shared.xlsx'), '--in-place']);
    expect(refused.status).toBe(64);
    expect(refused.error).toContain('Stop sharing it first');
    expect(Buffer.from(before).equals(readFileSync(at('shared.xlsx')))).toBe(true);
    const { out } = await run(['check', at('shared.xlsx'), '-o', at('shared-checked.xlsx')]);
    expect(out.replace(/\s+/g, ' ')).toContain('shared between several people in the old way');
  }, 60_000);

  it('with formulas that nothing has calculated are judged, what needs those INCOMPLETE', async () => {
    const plan = await openFile(DEMO, NAMES);
    const { values, row, column } = plan.readSheet('Channels');
    const heading = values.findIndex((line) => line.includes('Sensor type'));
    const highest = values[heading]!.findIndex((cell) => String(cell).startsWith('Highest level'));
    const tolerance = values[heading]!.findIndex((cell) => String(cell).startsWith('Thermal tolerance'));
    expect(Math.min(highest, tolerance)).toBeGreaterThan(0);
    const formulaAt = (line: number, c: number): Change => ({
      kind: 'cells',
      sheet: 'Channels',
      row: row + heading + line,
      column: column + c,
      cells: [['=10*2']],
    });
    const path = await edited('uncalculated.xlsx', [formulaAt(1, highest), formulaAt(2, tolerance)]);
    const { status, out } = await run(['check', path, '-o', at('uncalculated-checked.xlsx'), '--json']);
    const { plans } = JSON.parse(out) as { plans: { channels: { verdict: string }[]; unread: string[] }[] };
    expect(status).toBe(1);
    expect(plans[0]!.channels.slice(0, 2).map(({ verdict }) => verdict)).not.toContain('PASS');
    const words = plans[0]!.unread.join('\n');
    expect(words).toMatch(/Channels![A-Z]+6, Channels![A-Z]+7: read a formula without a stored value/);
    expect(words).toContain('read "formula without a stored value", expected a number in %');
    expect(words).toContain('save it there and check again');
    const alone = await openPlan(path, undefined);
    const [first, second] = [...alone.judged.byRow.values()];
    expect([first!.level.verdict, second!.thermal.verdict]).toEqual(['INCOMPLETE', 'INCOMPLETE']);
    const written = (await own(at('uncalculated-checked.xlsx'))).values;
    expect(written[0]![ownIndex('levelVerdict')]).toBe('INCOMPLETE');
    // As in any spreadsheet the unknown limit makes the check itself an error, which no verdict takes for a PASS.
    expect(written[1]![ownIndex('thermalVerdict')]).toEqual({ error: '#N/A' });
    expect(written[1]![ownIndex('verdict')]).not.toBe('PASS');
  }, 60_000);

  it("keep somebody's note on a verdict cell, and say so", async () => {
    const parts = partsOf(checked);
    const comments = strFromU8(parts['xl/comments1.xml']!);
    const author = comments.replace(
      '<author>Channelwright</author>',
      '<author>Jo</author><author>Channelwright</author>',
    );
    // All notes now belong to the first author of two; the second note is given back to us.
    parts['xl/comments1.xml'] = strToU8(author);
    writeFileSync(at('noted.xlsx'), zipSync(parts));
    const { out } = await run(['check', at('noted.xlsx'), '-o', at('noted-checked.xlsx')]);
    expect(out.replace(/\s+/g, ' ')).toContain("somebody's note stands there and was left");
    expect(strFromU8(partsOf(at('noted-checked.xlsx'))['xl/comments1.xml']!)).toBe(author);
  }, 60_000);

  it('may hold texts that look like formulas or commands: they stay texts', async () => {
    const path = await edited('hostile.xlsx', []);
    const parts = partsOf(path);
    const evil = '=HYPERLINK("http://example.invalid","x")';
    const sheet = strFromU8(parts['xl/sharedStrings.xml']!)
      .replace('>W001<', `>${evil.replaceAll('"', '&quot;')}<`)
      .replace('>Wing skin<', '>=1+1|\u001b[31m&lt;b&gt;<');
    parts['xl/sharedStrings.xml'] = strToU8(sheet.replaceAll('\u001b', '_x001B_'));
    writeFileSync(path, zipSync(parts));
    const { out } = await run(['check', path, '-o', at('hostile-checked.xlsx'), '--report', at('hostile.md')]);
    expect(out).not.toContain('\u001b');
    expect(readFileSync(at('hostile.md'), 'utf8')).not.toMatch(/<b>|\u001b/);
    const written = partsOf(at('hostile-checked.xlsx'));
    const formulas = Object.entries(written)
      .filter(([name]) => name.startsWith('xl/worksheets/'))
      .flatMap(([, part]) => strFromU8(part).match(/<f[ >][^<]*/g) ?? []);
    expect(formulas.length).toBeGreaterThan(1000);
    expect(formulas.filter((formula) => /HYPERLINK|1\+1/.test(formula))).toEqual([]);
    const { file } = await own(at('hostile-checked.xlsx'));
    const summary = file.readSheet('Check summary');
    expect(summary.formulas.flat().every((formula) => formula === '')).toBe(true);
    expect(JSON.stringify(summary.values)).toContain('HYPERLINK');
  }, 60_000);
});

describe('a path that cannot be checked', () => {
  const refused = async (path: string, status: number, words: RegExp) => {
    const result = await run(['check', path]);
    expect(result.status).toBe(status);
    expect(result.error).toMatch(words);
    expect(result.error).toContain(path);
    expect(result.error).not.toMatch(/should not have happened|\.ts:\d/);
  };

  it('is named, with what was expected', async () => {
    writeFileSync(at('text.xlsx'), 'not a workbook');
    writeFileSync(at('list.csv'), 'a,b');
    await refused(at('nowhere.xlsx'), 65, /no such file/);
    await refused(at('text.xlsx'), 65, /text\.xlsx/);
    await refused(at('list.csv'), 65, /expected a workbook \(\.xlsx, \.xlsm\) or a JSON plan/);
    mkdirSync(at('empty'), { recursive: true });
    await refused(at('empty'), 65, /no \.xlsx or \.xlsm workbook/);
  });

  it('does not keep the others from being checked', async () => {
    const { status, out, error } = await run(['check', at('nowhere.xlsx'), DEMO]);
    expect(status).toBe(65);
    expect(out).toContain('287 channels');
    expect(error).toContain('nowhere.xlsx');
  });

  it('is a wrong call when the options do not fit together', async () => {
    const calls = [
      ['check'],
      ['check', DEMO, '--colour'],
      ['check', DEMO, '-o', at('x.xlsm')],
      ['check', DEMO, '-o', at('x.xlsx'), '--in-place'],
      ['check', DEMO, checked, '-o', at('x.xlsx')],
      ['look', DEMO],
      [],
    ];
    for (const call of calls) expect([call, (await run(call)).status]).toEqual([call, 64]);
    expect(existsSync(at('x.xlsx'))).toBe(false);
  });

  it('whose print area ends before our columns is kept, and the user is told', async () => {
    const parts = partsOf(DEMO);
    const area =
      '<definedNames><definedName name="_xlnm.Print_Area" localSheetId="0">Channels!$A$1:$Y$292</definedName>';
    const book = strFromU8(parts['xl/workbook.xml']!).replace('<definedNames>', area);
    writeFileSync(at('area.xlsx'), zipSync({ ...parts, 'xl/workbook.xml': strToU8(book) }));
    const { out } = await run(['check', at('area.xlsx'), '-o', at('area-checked.xlsx')]);
    expect(out.replace(/\s+/g, ' ')).toContain('Channels prints A1:Y292 only; our columns');
    expect(strFromU8(partsOf(at('area-checked.xlsx'))['xl/workbook.xml']!)).toContain(area);
  }, 60_000);

  it('may be a folder, whose workbooks are all checked', async () => {
    mkdirSync(at('plans/more'), { recursive: true });
    mkdirSync(at('out'), { recursive: true });
    copyFileSync(DEMO, at('plans/a.xlsx'));
    copyFileSync(DEMO, at('plans/more/b.xlsx'));
    writeFileSync(at('plans/~$a.xlsx'), 'lock');
    const { status, out } = await run(['check', at('plans'), '-o', at('out')]);
    expect(status).toBe(1);
    expect(out.match(/287 channels/g)).toHaveLength(2);
    expect(readdirSync(at('out')).sort()).toEqual(['a.xlsx', 'b.xlsx']);
  }, 60_000);
});

describe('a mapping', () => {
  it('says which column holds a field, and is remembered in the copy', async () => {
    writeFileSync(at('map.json'), JSON.stringify({ channels: { fields: { localMass: null } } }));
    const { out } = await run(['check', DEMO, '--mapping', at('map.json'), '-o', at('mapped.xlsx')]);
    const counts = (text: string) => /(\d+) PASS/.exec(text)![1];
    expect(counts(out)).toBe('0');
    expect(counts((await run(['check', at('mapped.xlsx')])).out)).toBe('0');
  }, 60_000);

  it('with a word that means nothing is refused', async () => {
    for (const given of [
      '{',
      '[]',
      '{"sensor": {}}',
      '{"channels": {"fields": {"mass": "M"}}}',
      '{"channels": {"headingRow": 0}}',
    ]) {
      writeFileSync(at('wrong.json'), given);
      const { status, error } = await run(['check', DEMO, '--mapping', at('wrong.json')]);
      expect([given, status]).toEqual([given, 65]);
      expect(error).toMatch(/wrong\.json.*expected/);
    }
  });
});
