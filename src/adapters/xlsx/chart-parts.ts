import type { BarChart } from '../../workbook/charts';
import { chartXml } from './chart-xml';
import { freePartName, setContentType } from './content-types';
import type { Package } from './package';
import { addRelation, relationsOf } from './relations';
import { SECTION_ORDER } from './sheet-sections';
import { Splice } from './splice';
import { escapeAttribute, fromUtf8, utf8 } from './xml-text';
import { descendants, parseTree, tagName } from './xml-tree';

const DECLARATION = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
const PLACING = 'http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing';
const DRAWING = 'http://schemas.openxmlformats.org/drawingml/2006/main';
const CHART = 'http://schemas.openxmlformats.org/drawingml/2006/chart';
const DRAWING_TYPE = 'application/vnd.openxmlformats-officedocument.drawing+xml';
const CHART_TYPE = 'application/vnd.openxmlformats-officedocument.drawingml.chart+xml';
const EMU_PER_PIXEL = 9525;
/** Names our charts, so that one which somebody else put on the sheet is never taken for ours. */
const OWN = 'Channelwright chart ';

const write = (pkg: Package, part: string, xml: string): void => {
  if (!pkg.has(part) || fromUtf8(pkg.read(part)) !== xml) pkg.write(part, utf8(xml));
};

/**
 * Puts charts on a sheet of ours, in place of those of an earlier time. The same charts leave every part as it is. Where
 * somebody added drawings of their own to the sheet, ours are renewed and theirs stay; more charts than before are then
 * not added.
 */
export const putCharts = (
  pkg: Package,
  sheet: string,
  part: string,
  charts: readonly BarChart[],
  relationSpace: string,
): void => {
  const drawing = relationsOf(pkg, part).find(({ kind, target }) => kind === 'drawing' && pkg.has(target))?.target;
  if (drawing === undefined) return addDrawing(pkg, sheet, part, charts, relationSpace);
  const root = parseTree(pkg.read(drawing), drawing);
  const names = [...descendants(root)]
    .filter(({ local }) => local === 'cNvPr')
    .map(({ attributes }) => attributes.get('name') ?? '');
  const isOurs = names.every((name) => name.startsWith(OWN));
  const relations = relationsOf(pkg, drawing).filter(({ kind, target }) => kind === 'chart' && pkg.has(target));
  const ours = relations.filter((_, i) => i < charts.length);
  ours.forEach(({ target }, i) => write(pkg, target, chartXml(sheet, charts[i]!)));
  if (isOurs && ours.length === charts.length)
    write(
      pkg,
      drawing,
      drawingXml(
        charts,
        ours.map(({ id }) => id),
        relationSpace,
      ),
    );
};

const addDrawing = (
  pkg: Package,
  sheet: string,
  part: string,
  charts: readonly BarChart[],
  relationSpace: string,
): void => {
  const drawing = freePartName(pkg, 'xl/drawings/drawing', 'xml');
  pkg.write(drawing, utf8(drawingXml([], [], relationSpace)));
  setContentType(pkg, drawing, DRAWING_TYPE);
  const ids = charts.map((chart) => {
    const target = freePartName(pkg, 'xl/charts/chart', 'xml');
    pkg.write(target, utf8(chartXml(sheet, chart)));
    setContentType(pkg, target, CHART_TYPE);
    return addRelation(pkg, drawing, `${relationSpace}/chart`, target);
  });
  pkg.write(drawing, utf8(drawingXml(charts, ids, relationSpace)));
  const id = addRelation(pkg, part, `${relationSpace}/drawing`, drawing);
  const bytes = pkg.read(part);
  const root = parseTree(bytes, part);
  const splice = new Splice(bytes);
  const xml = `<${tagName(root, 'drawing')} xmlns:r="${relationSpace}" r:id="${id}"/>`;
  const rank = SECTION_ORDER.indexOf('drawing');
  const after = root.children.find(({ local }) => SECTION_ORDER.indexOf(local) > rank);
  if (after) splice.insert(after.start, xml);
  else splice.append(root, xml);
  pkg.write(part, splice.apply());
};

const drawingXml = (charts: readonly BarChart[], ids: readonly string[], relationSpace: string): string =>
  [
    `${DECLARATION}<xdr:wsDr xmlns:xdr="${PLACING}" xmlns:a="${DRAWING}" xmlns:r="${relationSpace}">`,
    ...charts.map((chart, i) => anchorXml(chart, ids[i]!, i + 1)),
    '</xdr:wsDr>',
  ].join('');

const anchorXml = ({ title, place }: BarChart, id: string, n: number): string => {
  const { row, column, x, width, height } = place;
  const emu = (pixels: number): number => Math.round(pixels * EMU_PER_PIXEL);
  return [
    `<xdr:oneCellAnchor><xdr:from><xdr:col>${column}</xdr:col><xdr:colOff>${emu(x)}</xdr:colOff>`,
    `<xdr:row>${row}</xdr:row><xdr:rowOff>${emu(4)}</xdr:rowOff></xdr:from><xdr:ext cx="${emu(width)}" cy="${emu(height)}"/>`,
    `<xdr:graphicFrame macro=""><xdr:nvGraphicFramePr><xdr:cNvPr id="${n + 1}" name="${OWN}${n}" descr="${escapeAttribute(title)}"/>`,
    '<xdr:cNvGraphicFramePr/></xdr:nvGraphicFramePr><xdr:xfrm><a:off x="0" y="0"/><a:ext cx="0" cy="0"/></xdr:xfrm>',
    `<a:graphic><a:graphicData uri="${CHART}"><c:chart xmlns:c="${CHART}" r:id="${id}"/></a:graphicData></a:graphic>`,
    '</xdr:graphicFrame><xdr:clientData/></xdr:oneCellAnchor>',
  ].join('');
};
