import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { cell, demoPlaces, editedCopy } from './edited-demo';
import { DEMO, run, temporaryFolder } from './run';

jest.setTimeout(120_000);
const folder = temporaryFolder();

/** W004 gets a higher level in words, W006 another name, W009 a remark; one sensor type gets heavier, one limit stricter. */
const revision = async (): Promise<string> => {
  const { rowOf, columnOf, valueOf } = await demoPlaces();
  return editedCopy(join(folder, 'revision.xlsx'), [
    cell('Channels', rowOf('W004'), columnOf('Highest level'), '700 g pk'),
    cell('Channels', rowOf('W006'), columnOf('Channel'), 'W006b'),
    cell('Channels', rowOf('W009'), columnOf('Remarks'), 'moved 3 cm'),
    cell('Channels', rowOf('W008'), columnOf('Band high'), `${String(valueOf('W008', 'Band high'))} Hz`),
    cell('Sensors', 2, 1, 'miniature'),
    cell('Limits', 2, 1, 4.5),
  ]);
};

describe('channelwright compare', () => {
  it('says that nothing changed between a plan and itself, and between a plan and its export', async () => {
    expect(await run(['compare', DEMO, DEMO])).toMatchObject({ status: 0, out: expect.stringContaining('Nothing changed') }); // prettier-ignore
    const json = join(folder, 'demo.json');
    await run(['export', DEMO, '-o', json]);
    const { status, out } = await run(['compare', DEMO, json, '--json']);
    expect([status, JSON.parse(out).is_changed]).toEqual([0, false]);
  });

  it('tells what changed, as typed and as read, and which verdict it changed', async () => {
    const { status, out } = await run(['compare', DEMO, await revision(), '--json']);
    expect(status).toBe(1);
    const found = JSON.parse(out);
    const of = (id: string) => found.changed.find(({ channel }: { channel: string }) => channel === id);
    expect(of('W004')).toMatchObject({
      fields: [
        {
          field: 'levelHigh',
          before: { typed: '48', read: '48 g' },
          after: { typed: '700 g pk', read: '700 g' },
        },
      ],
      verdict: { before: 'PASS', after: 'FAIL', checks: ['level'] },
      causes: ['Highest level: 48 g → 700 g (typed 48 → 700 g pk)'],
    });
    expect(of('W006b')).toMatchObject({ renamed_from: 'W006', matched_by: 'point' });
    expect(of('W009').fields).toEqual([expect.objectContaining({ field: 'remarks' })]);
    expect(of('W008')).toBeUndefined();
    expect(found.typed_otherwise_only).toBe(1);
    expect(found.lists).toEqual([expect.objectContaining({ list: 'sensors', change: 'changed' })]);
    expect(found.limits).toEqual([{ limit: 'Headroom', bound: 'pass', unit: 'dB', text: 'Headroom, PASS: 3.5 dB → 4.5 dB' }]); // prettier-ignore
    expect([found.added, found.removed]).toEqual([[], []]);
  });

  it('takes a renamed channel for another one when it is told to', async () => {
    const { out } = await run(['compare', DEMO, await revision(), '--json', '--no-renames']);
    expect(JSON.parse(out)).toMatchObject({ added: ['W006b'], removed: ['W006'] });
  });

  it.each([
    ['en', 'Renamed? Please confirm', 'Because of: Highest level: 48 g → 700 g (typed 48 → 700 g pk).'],
    ['de', 'Umbenannt? Bitte bestätigen', 'Ursache: Größter Pegel: 48 g → 700 g (geschrieben 48 → 700 g pk).'],
    ['fr', 'Renommées ? À confirmer', 'Cause : Niveau le plus fort : 48 g → 700 g (écrit 48 → 700 g pk).'],
  ])('speaks %s', async (language, title, sentence) => {
    const report = join(folder, `${language}.md`);
    const { status, out } = await run(['compare', DEMO, await revision(), '--language', language, '--report', report], { columns: 400 }); // prettier-ignore
    expect(status).toBe(1);
    expect(out).toContain(title);
    expect(out).toContain(sentence);
    expect(readFileSync(report, 'utf8')).toContain(`## ${title}`);
  });

  it.each([
    [['compare', DEMO], 64, 'name two plans'],
    [['compare', DEMO, DEMO, '--report', 'x.pdf'], 64, '.md'],
    [['compare', DEMO, join(folder, 'none.xlsx')], 65, 'none.xlsx'],
  ])('refuses %j', async (argv, expected, words) => {
    const { status, error } = await run(argv);
    expect(status).toBe(expected);
    expect(error).toContain(words);
  });
});
