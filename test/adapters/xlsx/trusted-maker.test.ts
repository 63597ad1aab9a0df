import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import { isTrusted, withTrustedMaker } from '../../../src/adapters/xlsx/trusted-maker';

const archive = (about: string | undefined): Uint8Array =>
  zipSync({ 'xl/workbook.xml': strToU8('<workbook/>'), ...(about && { 'docProps/app.xml': strToU8(about) }) });
const about = (maker: string) => `<Properties><Application>${maker}</Application></Properties>`;

// Tried in LibreOffice 7.4: stored texts of unknown functions are shown for these makers and asked for again for others.
test.each([
  [about('Microsoft Excel'), true],
  [about('LibreOffice/7.4.7.2$Linux_X86_64'), true],
  ['<p:Properties><p:Application>Microsoft Macintosh Excel</p:Application></p:Properties>', true],
  [about('a script'), false],
  ['<Properties/>', false],
  [undefined, false],
])('%p is trusted with stored texts: %p', (text, trusted) => {
  expect(isTrusted(archive(text))).toBe(trusted);
});

test('naming the maker changes nothing else', () => {
  const named = withTrustedMaker(archive(about('a script')));
  expect(isTrusted(named)).toBe(true);
  expect(strFromU8(unzipSync(named)['xl/workbook.xml']!)).toBe('<workbook/>');
});
