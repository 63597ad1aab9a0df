import type { BarChart } from '../../workbook/charts';
import { isPlot, OWN_DRAWING, type Drawing } from '../../workbook/drawings';
import { chartXml } from './chart-xml';
import { freePartName, setContentType } from './content-types';
import { anchorXml, drawingXml, ownDrawing, writeText } from './drawing-part';
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
 * Puts drawings on a sheet of ours in place of those of an earlier time. The same ones leave every part as it is, and so
 * does a drawing to which somebody added something.
 */
export const putDrawings = (pkg: Package, sheet: OwnSheet, drawings: readonly Drawing[]): void => {
  const { part, relationSpace } = sheet;
  if (drawings.length === 0 && !relationsOf(pkg, part).some(({ kind }) => kind === 'drawing')) return;
  const drawing = ownDrawing(pkg, part, relationSpace);
  if (drawing === undefined) return;
  const charts = chartRelations(pkg, sheet, drawing, drawings.filter((each) => !isPlot(each)) as BarChart[]);
  const anchors = drawings.map((each, i) => {
    const name = `${OWN_DRAWING}${i + 1}`;
    return isPlot(each)
      ? anchorXml(each.place, plotShape(each.plot, i + 2, name))
      : anchorXml(each.place, frameXml(each.title, charts.get(each)!, i + 2, name));
  });
  writeText(pkg, drawing, drawingXml(anchors, relationSpace));
};

/** The relation of each chart; parts of charts that were there before are used again. */
const chartRelations = (pkg: Package, sheet: OwnSheet, drawing: string, charts: readonly BarChart[]) => {
  const there = relationsOf(pkg, drawing).filter(({ kind, target }) => kind === 'chart' && pkg.has(target));
  return new Map(
    charts.map((chart, i) => {
      const xml = chartXml(sheet.name, chart);
      const old = there[i];
      if (old) {
        writeText(pkg, old.target, xml);
        return [chart, old.id] as const;
      }
      const target = freePartName(pkg, 'xl/charts/chart', 'xml');
      pkg.write(target, utf8(xml));
      setContentType(pkg, target, CHART_TYPE);
      return [chart, addRelation(pkg, drawing, `${sheet.relationSpace}/chart`, target)] as const;
    }),
  );
};

const frameXml = (title: string, relation: string, id: number, name: string): string =>
  [
    `<xdr:graphicFrame macro=""><xdr:nvGraphicFramePr><xdr:cNvPr id="${id}" name="${name}" descr="${escapeAttribute(title)}"/>`,
    '<xdr:cNvGraphicFramePr/></xdr:nvGraphicFramePr><xdr:xfrm><a:off x="0" y="0"/><a:ext cx="0" cy="0"/></xdr:xfrm>',
    `<a:graphic><a:graphicData uri="${CHART}"><c:chart xmlns:c="${CHART}" r:id="${relation}"/></a:graphicData></a:graphic>`,
    '</xdr:graphicFrame>',
  ].join('');
