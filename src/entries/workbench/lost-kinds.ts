import type { Codec } from '../../adapters/xlsx/codec';
import { FILE_LIMITS } from '../../adapters/xlsx/limits';
import { Package } from '../../adapters/xlsx/package';

/** Parts that a workbook made anew does not have, and what people call what they hold. */
const PARTS: readonly (readonly [RegExp, string])[] = [
  [/(^|\/)charts\/chart[^/]*\.xml$|\/chartsheets\//i, 'charts'],
  [/vbaProject\.bin$/i, 'macros'],
  [/\/media\//i, 'pictures'],
  [/pivotTables?\//i, 'pivot tables'],
  [/\/slicers?\//i, 'slicers'],
  [/\/(ctrlProps|activeX)\//i, 'buttons and other controls'],
  [/\/embeddings\//i, 'embedded documents'],
  [/\/externalLinks\//i, 'links to other workbooks'],
  [/\/(queryTables|connections)/i, 'data connections'],
  [/\/threadedComments\//i, 'comment threads'],
  [/\/diagrams\//i, 'diagrams'],
  [/printerSettings/i, 'printer settings'],
  [/^_xmlsignatures\//i, 'the digital signature'],
];

/** Sections of a sheet or the workbook that are not written anew. */
const SECTIONS: readonly (readonly [RegExp, string])[] = [
  [/<(\w+:)?dataValidation\b/, 'validation of entries'],
  [/<(\w+:)?conditionalFormatting\b/, 'conditional formats'],
  [/<(\w+:)?(pageSetup|headerFooter|printOptions|rowBreaks|colBreaks)\b|_xlnm\.Print_/, 'print set-up'],
  [/<(\w+:)?(sheet|workbook)Protection\b[^>]*\b(sheet|lock\w+)="(1|true)"/, 'protection'],
  [/<(\w+:)?hyperlink\b/, 'links'],
  [/<(\w+:)?sparklineGroup\b/, 'small charts in cells'],
  [/<(\w+:)?autoFilter\b/, 'filters'],
  [/<(\w+:)?(row|col)\b[^>]*outlineLevel=/, 'groups of rows or columns'],
];
const RICH_TEXT = /<(\w+:)?r>\s*<(\w+:)?rPr\b/;

/** Sections stand before and after the cells; the cells of a long sheet need not be read. */
const AROUND = 262_144;
const around = (bytes: Uint8Array): string => {
  const decode = (part: Uint8Array) => new TextDecoder().decode(part);
  return bytes.length <= 2 * AROUND
    ? decode(bytes)
    : `${decode(bytes.subarray(0, AROUND))}\n${decode(bytes.subarray(-AROUND))}`;
};

/** Kinds of things in this workbook that a new one would not have, those that are really there. */
export const lostKinds = (bytes: Uint8Array, codec: Codec): readonly string[] => {
  const pkg = new Package(bytes, codec, FILE_LIMITS);
  const parts = pkg.names();
  const found = new Set<string>();
  for (const [pattern, words] of PARTS) if (parts.some((part) => pattern.test(part))) found.add(words);
  for (const part of parts) {
    if (/(^|\/)drawings\/drawing[^/]*\.xml$/i.test(part) && /<(\w+:)?(sp|cxnSp)\b/.test(around(pkg.read(part))))
      found.add('drawn shapes');
    if (/(^|\/)sharedStrings\.xml$/i.test(part) && RICH_TEXT.test(around(pkg.read(part))))
      found.add('formats within a text');
    if (!/(^|\/)(worksheets\/[^/]+|workbook)\.xml$/i.test(part)) continue;
    const text = around(pkg.read(part));
    for (const [pattern, words] of SECTIONS) if (pattern.test(text)) found.add(words);
  }
  return [...found];
};
