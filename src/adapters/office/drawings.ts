import type { Verdict } from '../../core/verdict';
import type { BarChart } from '../../workbook/charts';
import { DRAWING_DROP, isPlot, OWN_DRAWING, type Drawing, type DrawingPlace } from '../../workbook/drawings';
import type { RangeAddress } from '../../workbook/port';
import { CALL_COST, type Batch } from './batch';
import type { OfficeHost } from './host';

const POINTS_PER_PIXEL = 3 / 4;
const FILL: Readonly<Record<Verdict, string>> = { FAIL: '#b23a0e', INCOMPLETE: '#8c8c89', WARN: '#e8b54a', PASS: '#a9cbe3' }; // prettier-ignore
const PLAIN = '#0f5c59';
const GAP = 45;

/** Deletes the charts and pictures that we made before and no others. */
const deleteOwn = async (context: Excel.RequestContext, sheet: Excel.Worksheet): Promise<void> => {
  sheet.charts.load('items/name');
  sheet.shapes.load('items/name,items/type');
  await context.sync();
  for (const chart of sheet.charts.items) if (chart.name.startsWith(OWN_DRAWING)) chart.delete();
  for (const shape of sheet.shapes.items)
    if (shape.type === 'Image' && shape.name.startsWith(OWN_DRAWING)) shape.delete();
};

/** Distances from the sheet's corner in points; `Range.top` would need ExcelApi 1.10. */
const corners = async (context: Excel.RequestContext, sheet: Excel.Worksheet, places: readonly DrawingPlace[]) => {
  const sizes = (count: number, at: (n: number) => Excel.Range, size: 'rowHeight' | 'columnWidth') =>
    Array.from({ length: count }, (_, n) => {
      const { format } = at(n);
      format.load(size);
      return () => format[size];
    });
  const most = (of: (place: DrawingPlace) => number): number => Math.max(0, ...places.map(of));
  const rows = sizes(
    most(({ row }) => row),
    (n) => sheet.getRangeByIndexes(n, 0, 1, 1),
    'rowHeight',
  );
  const columns = sizes(
    most(({ column }) => column),
    (n) => sheet.getRangeByIndexes(0, n, 1, 1),
    'columnWidth',
  );
  if (rows.length + columns.length > 0) await context.sync();
  const sum = (list: readonly (() => number)[]): number => list.reduce((all, size) => all + size(), 0);
  return (place: DrawingPlace) => ({
    left: sum(columns.slice(0, place.column)) + place.x * POINTS_PER_PIXEL,
    top: sum(rows.slice(0, place.row)) + DRAWING_DROP * POINTS_PER_PIXEL,
    width: place.width * POINTS_PER_PIXEL,
    height: place.height * POINTS_PER_PIXEL,
  });
};

const rangeOf = (sheet: Excel.Worksheet, { row, column, rows, columns }: RangeAddress): Excel.Range =>
  sheet.getRangeByIndexes(row, column, rows, columns);

const addChart = (sheet: Excel.Worksheet, { title, valueTitle, categories, series }: BarChart): Excel.Chart => {
  const isStacked = series.length > 1;
  const [first, ...others] = series;
  const chart = sheet.charts.add(
    isStacked ? 'BarStacked' : 'BarClustered',
    rangeOf(sheet, first?.values ?? categories),
    'Columns',
  );
  const drawn = [chart.series.getItemAt(0), ...others.map(({ caption }) => chart.series.add(caption))];
  series.forEach(({ values, caption, verdict }, n) => {
    const bars = drawn[n]!;
    bars.name = caption;
    if (n > 0) bars.setValues(rangeOf(sheet, values));
    bars.setXAxisValues(rangeOf(sheet, categories));
    bars.gapWidth = GAP;
    bars.format.fill.setSolidColor(verdict ? FILL[verdict] : PLAIN);
  });
  chart.title.text = title;
  chart.legend.visible = isStacked;
  chart.legend.position = 'Bottom';
  chart.axes.categoryAxis.reversePlotOrder = true;
  chart.axes.valueAxis.minimum = 0;
  chart.axes.valueAxis.title.visible = true;
  chart.axes.valueAxis.title.text = valueTitle;
  return chart;
};

const addPicture = (sheet: Excel.Worksheet, png: string, words: string): Excel.Shape => {
  const shape = sheet.shapes.addImage(png);
  shape.lockAspectRatio = false;
  shape.altTextDescription = words;
  return shape;
};

/** Puts these drawings in place of ours of an earlier time. */
export const replaceDrawings = async (
  host: OfficeHost,
  batch: Batch,
  sheet: Excel.Worksheet,
  drawings: readonly Drawing[],
): Promise<void> => {
  const { context } = batch;
  await batch.send();
  await deleteOwn(context, sheet);
  const cornerOf = await corners(
    context,
    sheet,
    drawings.map(({ place }) => place),
  );
  for (const [n, drawing] of drawings.entries()) {
    const png = isPlot(drawing) ? await host.pngOf(drawing.plot) : '';
    await batch.make({ characters: 20 * CALL_COST + png.length, steps: 0 });
    const made = isPlot(drawing)
      ? addPicture(sheet, png, `${drawing.plot.title}. ${drawing.plot.inWords}`)
      : addChart(sheet, drawing);
    made.name = `${OWN_DRAWING}${n + 1}`;
    Object.assign(made, cornerOf(drawing.place));
  }
};

/** Landscape and one page wide. Without a printer Excel may refuse, and the sheet is good without. */
export const setUpPrint = async (
  context: Excel.RequestContext,
  sheets: readonly { readonly sheet: Excel.Worksheet; readonly foot: string }[],
): Promise<void> => {
  for (const { sheet, foot } of sheets) {
    sheet.pageLayout.orientation = 'Landscape';
    sheet.pageLayout.zoom = { horizontalFitToPages: 1 };
    const { defaultForAllPages: page } = sheet.pageLayout.headersFooters;
    page.leftFooter = '&A';
    page.rightFooter = foot;
  }
  if (sheets.length > 0) await context.sync().catch(() => undefined);
};
