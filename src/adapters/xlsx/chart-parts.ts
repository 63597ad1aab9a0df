import type { Plot } from '../../plots/plot';
import type { BarChart } from '../../workbook/charts';
import { chartXml } from './chart-xml';
import { freePartName, setContentType } from './content-types';
import { anchorXml, drawingXml, OWN_DRAWING, ownDrawing, writeText, type DrawingPlace } from './drawing-part';
import type { Package } from './package';
import { addRelation, relationsOf } from './relations';
import { plotShape } from './shape-xml';
import { escapeAttribute, utf8 } from './xml-text';

const CHART = 'http://schemas.openxmlformats.org/drawingml/2006/chart';
const CHART_TYPE = 'application/vnd.openxmlformats-officedocument.drawingml.chart+xml';

/** A sheet of ours in the package. */
export interface OwnSheet {
  readonly name: string;
  readonly part: string;
  /** Namespace of relation ids in this workbook. */
  readonly relationSpace: string;
}

/**
 * Puts charts on a sheet of ours in place of those of an earlier time. The same charts leave every part as it is, and so
 * does a drawing to which somebody added something.
 */
export const putCharts = (pkg: Package, sheet: OwnSheet, charts: readonly BarChart[]): void => {
  const { name, part, relationSpace } = sheet;
  const drawing = ownDrawing(pkg, part, relationSpace);
  if (drawing === undefined) return;
  const there = relationsOf(pkg, drawing).filter(({ kind, target }) => kind === 'chart' && pkg.has(target));
  const ids = charts.map((chart, i) => {
    const xml = chartXml(name, chart);
    const old = there[i];
    if (old) {
      writeText(pkg, old.target, xml);
      return old.id;
    }
    const target = freePartName(pkg, 'xl/charts/chart', 'xml');
    pkg.write(target, utf8(xml));
    setContentType(pkg, target, CHART_TYPE);
    return addRelation(pkg, drawing, `${relationSpace}/chart`, target);
  });
  const anchors = charts.map(({ title, place }, i) => anchorXml(place, frameXml(title, ids[i]!, i + 1)));
  writeText(pkg, drawing, drawingXml(anchors, relationSpace));
};

/** Draws plots on a sheet of ours, likewise. */
export const putPlots = (
  pkg: Package,
  { part, relationSpace }: OwnSheet,
  plots: readonly { readonly plot: Plot; readonly place: DrawingPlace }[],
): void => {
  const drawing = ownDrawing(pkg, part, relationSpace);
  if (drawing === undefined) return;
  const anchors = plots.map(({ plot, place }, i) => anchorXml(place, plotShape(plot, i + 1, `${OWN_DRAWING}${i + 1}`)));
  writeText(pkg, drawing, drawingXml(anchors, relationSpace));
};

const frameXml = (title: string, id: string, n: number): string =>
  [
    `<xdr:graphicFrame macro=""><xdr:nvGraphicFramePr><xdr:cNvPr id="${n + 1}" name="${OWN_DRAWING}${n}" descr="${escapeAttribute(title)}"/>`,
    '<xdr:cNvGraphicFramePr/></xdr:nvGraphicFramePr><xdr:xfrm><a:off x="0" y="0"/><a:ext cx="0" cy="0"/></xdr:xfrm>',
    `<a:graphic><a:graphicData uri="${CHART}"><c:chart xmlns:c="${CHART}" r:id="${id}"/></a:graphicData></a:graphic>`,
    '</xdr:graphicFrame>',
  ].join('');
