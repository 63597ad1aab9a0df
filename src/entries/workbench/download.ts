const TYPES: Readonly<Record<string, string>> = {
  '.xlsx': 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet',
  '.xlsm': 'application/vnd.ms-excel.sheet.macroEnabled.12',
};
/** Long enough for a slow disk dialog. */
const KEEP_MS = 60_000;

/** Splits "Plan.xlsm" into its name and the ending a copy of it gets. */
export const nameParts = (file: string): { stem: string; ending: '.xlsx' | '.xlsm' } => ({
  stem: file.replace(/\.xls[xm]$/i, ''),
  ending: /\.xlsm$/i.test(file) ? '.xlsm' : '.xlsx',
});

/** The copy's name; a copy of a copy is not marked twice. */
export const copyName = (file: string): string => {
  const { stem, ending } = nameParts(file);
  return `${stem.replace(/ \(planned\)$/, '')} (planned)${ending}`;
};

/** Hands the bytes to the browser as a file. */
export const download = (bytes: Uint8Array, name: string): void => {
  const type = TYPES[nameParts(name).ending];
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([bytes as BlobPart], { type }));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), KEEP_MS);
};
