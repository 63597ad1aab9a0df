import type { Codec } from '../../adapters/xlsx/codec';
import { FILE_LIMITS } from '../../adapters/xlsx/limits';
import { Package } from '../../adapters/xlsx/package';

export type LostKind =
  | 'charts'
  | 'macros'
  | 'pictures'
  | 'pivots'
  | 'slicers'
  | 'controls'
  | 'embedded'
  | 'external'
  | 'connections'
  | 'threads'
  | 'diagrams'
  | 'printer'
  | 'signature'
  | 'validation'
  | 'conditional'
  | 'print'
  | 'protection'
  | 'links'
  | 'sparklines'
  | 'filters'
  | 'groups'
  | 'shapes'
  | 'rich';

/** Parts that a workbook made anew does not have, and what they hold. */
const PARTS: readonly (readonly [RegExp, LostKind])[] = [
  [/(^|\/)charts\/chart[^/]*\.xml$|\/chartsheets\//i, 'charts'],
  [/vbaProject\.bin$/i, 'macros'],
  [/\/media\//i, 'pictures'],
  [/pivotTables?\//i, 'pivots'],
  [/\/slicers?\//i, 'slicers'],
  [/\/(ctrlProps|activeX)\//i, 'controls'],
  [/\/embeddings\//i, 'embedded'],
  [/\/externalLinks\//i, 'external'],
  [/\/(queryTables|connections)/i, 'connections'],
  [/\/threadedComments\//i, 'threads'],
  [/\/diagrams\//i, 'diagrams'],
  [/printerSettings/i, 'printer'],
  [/^_xmlsignatures\//i, 'signature'],
];

/** Sections of a sheet or the workbook that are not written anew. */
const SECTIONS: readonly (readonly [RegExp, LostKind])[] = [
  [/<(\w+:)?dataValidation\b/, 'validation'],
  [/<(\w+:)?conditionalFormatting\b/, 'conditional'],
  [/<(\w+:)?(pageSetup|headerFooter|printOptions|rowBreaks|colBreaks)\b|_xlnm\.Print_/, 'print'],
  [/<(\w+:)?(sheet|workbook)Protection\b[^>]*\b(sheet|lock\w+)="(1|true)"/, 'protection'],
  [/<(\w+:)?hyperlink\b/, 'links'],
  [/<(\w+:)?sparklineGroup\b/, 'sparklines'],
  [/<(\w+:)?autoFilter\b/, 'filters'],
  [/<(\w+:)?(row|col)\b[^>]*outlineLevel=/, 'groups'],
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
export const lostKinds = (bytes: Uint8Array, codec: Codec): readonly LostKind[] => {
  const pkg = new Package(bytes, codec, FILE_LIMITS);
  const parts = pkg.names();
  const found = new Set<LostKind>();
  for (const [pattern, kind] of PARTS) if (parts.some((part) => pattern.test(part))) found.add(kind);
  for (const part of parts) {
    if (/(^|\/)drawings\/drawing[^/]*\.xml$/i.test(part) && /<(\w+:)?(sp|cxnSp)\b/.test(around(pkg.read(part))))
      found.add('shapes');
    if (/(^|\/)sharedStrings\.xml$/i.test(part) && RICH_TEXT.test(around(pkg.read(part)))) found.add('rich');
    if (!/(^|\/)(worksheets\/[^/]+|workbook)\.xml$/i.test(part)) continue;
    const text = around(pkg.read(part));
    for (const [pattern, kind] of SECTIONS) if (pattern.test(text)) found.add(kind);
  }
  return [...found];
};
