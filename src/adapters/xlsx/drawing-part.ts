import { DRAWING_DROP, OWN_DRAWING, type DrawingPlace } from '../../workbook/drawings';
import { freePartName, setContentType } from './content-types';
import type { Package } from './package';
import { addRelation, relationsOf } from './relations';
import { SECTION_ORDER } from './sheet-sections';
import { Splice } from './splice';
import { fromUtf8, utf8 } from './xml-text';
import { descendants, parseTree, tagName } from './xml-tree';

const PLACING = 'http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing';
const DRAWING = 'http://schemas.openxmlformats.org/drawingml/2006/main';
const DRAWING_TYPE = 'application/vnd.openxmlformats-officedocument.drawing+xml';
const EMU_PER_PIXEL = 9525;
const DECLARATION = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';

/** Writes a part only when its text differs. */
export const writeText = (pkg: Package, part: string, xml: string): void => {
  if (!pkg.has(part) || fromUtf8(pkg.read(part)) !== xml) pkg.write(part, utf8(xml));
};

/** The drawing part of a sheet of ours; made when there is none. Undefined where somebody drew on the sheet as well. */
export const ownDrawing = (pkg: Package, sheetPart: string, relationSpace: string): string | undefined => {
  const there = relationsOf(pkg, sheetPart).find(({ kind, target }) => kind === 'drawing' && pkg.has(target))?.target;
  if (there === undefined) return addDrawing(pkg, sheetPart, relationSpace);
  const anchored = parseTree(pkg.read(there), there).children.flatMap((anchor) => {
    const [first] = [...descendants(anchor)].filter(({ local }) => local === 'cNvPr');
    return [first?.attributes.get('name') ?? ''];
  });
  return anchored.every((name) => name.startsWith(OWN_DRAWING)) ? there : undefined;
};

const addDrawing = (pkg: Package, sheetPart: string, relationSpace: string): string => {
  const drawing = freePartName(pkg, 'xl/drawings/drawing', 'xml');
  pkg.write(drawing, utf8(drawingXml([], relationSpace)));
  setContentType(pkg, drawing, DRAWING_TYPE);
  const id = addRelation(pkg, sheetPart, `${relationSpace}/drawing`, drawing);
  const bytes = pkg.read(sheetPart);
  const root = parseTree(bytes, sheetPart);
  const splice = new Splice(bytes);
  const xml = `<${tagName(root, 'drawing')} xmlns:r="${relationSpace}" r:id="${id}"/>`;
  const rank = SECTION_ORDER.indexOf('drawing');
  const after = root.children.find(({ local }) => SECTION_ORDER.indexOf(local) > rank);
  if (after) splice.insert(after.start, xml);
  else splice.append(root, xml);
  pkg.write(sheetPart, splice.apply());
  return drawing;
};

const emu = (pixels: number): number => Math.round(pixels * EMU_PER_PIXEL);

/** One thing on the sheet at its place. */
export const anchorXml = ({ row, column, x, width, height }: DrawingPlace, content: string): string =>
  `<xdr:oneCellAnchor><xdr:from><xdr:col>${column}</xdr:col><xdr:colOff>${emu(x)}</xdr:colOff>` +
  `<xdr:row>${row}</xdr:row><xdr:rowOff>${emu(DRAWING_DROP)}</xdr:rowOff></xdr:from><xdr:ext cx="${emu(width)}" cy="${emu(height)}"/>` +
  `${content}<xdr:clientData/></xdr:oneCellAnchor>`;

export const drawingXml = (anchors: readonly string[], relationSpace: string): string =>
  `${DECLARATION}<xdr:wsDr xmlns:xdr="${PLACING}" xmlns:a="${DRAWING}" xmlns:r="${relationSpace}">${anchors.join('')}</xdr:wsDr>`;
