import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';

const ABOUT = 'docProps/app.xml';
/** LibreOffice shows stored texts of formulas it does not know only in files of these makers. */
const TRUSTED = /^(?:Microsoft|LibreOffice)/i;
const APPLICATION = /<((?:\w+:)?Application)>([^<]*)</;

/** True when LibreOffice without the add-in will show the stored texts of this workbook. */
export const isTrusted = (archive: Uint8Array): boolean => {
  const about = unzipSync(archive, { filter: ({ name, originalSize }) => name === ABOUT && originalSize < 100_000 });
  const maker = APPLICATION.exec(strFromU8(about[ABOUT] ?? new Uint8Array()))?.[2];
  return maker !== undefined && TRUSTED.test(maker);
};

/** A workbook of our own making, named as most writers of this format name themselves, so that its texts are shown. */
export const withTrustedMaker = (archive: Uint8Array): Uint8Array => {
  const parts = unzipSync(archive);
  const about = strFromU8(parts[ABOUT] ?? new Uint8Array());
  parts[ABOUT] = strToU8(about.replace(APPLICATION, '<$1>Microsoft Excel<'));
  return zipSync(parts);
};
