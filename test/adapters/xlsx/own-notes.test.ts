import { FileSpreadsheet } from '../../../src/adapters/xlsx/spreadsheet';
import { MAIN, openTiny, saved } from './tiny-workbook';

const NOTES = 'xl/comments1.xml';
const open = (text: string) =>
  openTiny({
    sheets: [{ name: 'Plan', rows: '', relations: [['rId1', 'comments', '../comments1.xml']] }],
    parts: {
      [NOTES]: `<comments xmlns="${MAIN}"><authors><author>Jo</author></authors><commentList><comment ref="B2" authorId="0"><text><r><t>${text}</t></r></text></comment></commentList></comments>`,
    },
    types: { [NOTES]: 'application/vnd.openxmlformats-officedocument.spreadsheetml.comments+xml' },
  });
const set = (file: ReturnType<typeof open>, text: string | null) =>
  new FileSpreadsheet(file).apply([{ kind: 'note', sheet: 'Plan', row: 1, column: 1, text }], { label: 'test' });

describe('a note that a spreadsheet program stored under its user', () => {
  it('is ours by the line it begins with: it is brought up to date and removed', async () => {
    const file = open('Channelwright:\nold');
    await set(file, 'new');
    expect(saved(file)[NOTES]).toContain('Channelwright:\nnew');
    await set(file, null);
    expect(saved(file)[NOTES]).not.toContain('<comment ');
  });

  it('is that person’s without the line: it is not replaced', async () => {
    const file = open('ask Jo about Channelwright:\nfirst');
    await expect(set(file, 'new')).rejects.toMatchObject({ code: 'occupied' });
    await set(file, null);
    expect(saved(file)[NOTES]).toContain('ask Jo');
  });
});
