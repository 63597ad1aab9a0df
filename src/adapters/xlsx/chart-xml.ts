import { columnLetters, sheetPrefix } from '../../workbook/address';
import type { BarChart, ChartSeries } from '../../workbook/charts';
import type { RangeAddress } from '../../workbook/port';
import type { Verdict } from '../../core/verdict';
import { escapeXml } from './xml-text';

const CHART = 'http://schemas.openxmlformats.org/drawingml/2006/chart';
const DRAWING = 'http://schemas.openxmlformats.org/drawingml/2006/main';

const solid = (colour: string): string => `<a:solidFill><a:srgbClr val="${colour}"/></a:solidFill>`;
const pattern = (preset: string, ink: string, ground: string): string =>
  `<a:pattFill prst="${preset}"><a:fgClr><a:srgbClr val="${ink}"/></a:fgClr><a:bgClr><a:srgbClr val="${ground}"/></a:bgClr></a:pattFill>`;
/** Colour and pattern both differ, so that a grey print still tells them apart. */
const FILL: Readonly<Record<Verdict, string>> = {
  FAIL: solid('B23A0E'),
  INCOMPLETE: pattern('wdUpDiag', '4A4A48', 'FFFFFF'),
  WARN: pattern('pct50', 'B07A10', 'FFF3D6'),
  PASS: solid('A9CBE3'),
};
const PLAIN = solid('0F5C59');
const LINE = '<a:ln w="6350"><a:solidFill><a:srgbClr val="1F2A2E"/></a:solidFill></a:ln>';
const HAIRLINE = '<a:ln w="6350"><a:solidFill><a:srgbClr val="C9D3D1"/></a:solidFill></a:ln>';

const text = (points: number, bold: boolean): string =>
  `<a:defRPr sz="${points * 100}" b="${bold ? 1 : 0}"><a:solidFill><a:srgbClr val="1F2A2E"/></a:solidFill></a:defRPr>`;
const richText = (said: string, points: number, bold: boolean): string =>
  `<c:tx><c:rich><a:bodyPr/><a:p><a:pPr>${text(points, bold)}</a:pPr><a:r><a:rPr lang="en-GB" sz="${points * 100}" b="${bold ? 1 : 0}"/>` +
  `<a:t>${escapeXml(said)}</a:t></a:r></a:p></c:rich></c:tx><c:overlay val="0"/>`;
const textStyle = (points: number): string =>
  `<c:txPr><a:bodyPr/><a:p><a:pPr>${text(points, false)}</a:pPr><a:endParaRPr lang="en-GB"/></a:p></c:txPr>`;

const fixed = (row: number, column: number): string => `$${columnLetters(column)}$${row + 1}`;
const rangeText = (sheet: string, { row, column, rows, columns }: RangeAddress): string =>
  escapeXml(`${sheetPrefix(sheet)}${fixed(row, column)}:${fixed(row + rows - 1, column + columns - 1)}`);

const points = (values: readonly (string | number)[]): string =>
  `<c:ptCount val="${values.length}"/>${values.map((value, i) => `<c:pt idx="${i}"><c:v>${escapeXml(String(value))}</c:v></c:pt>`).join('')}`;

const seriesXml = (sheet: string, chart: BarChart, series: ChartSeries, n: number): string => {
  const { name, values, verdict, caption, numbers } = series;
  const nameAt = escapeXml(`${sheetPrefix(sheet)}${fixed(name.row, name.column)}`);
  return [
    `<c:ser><c:idx val="${n}"/><c:order val="${n}"/>`,
    `<c:tx><c:strRef><c:f>${nameAt}</c:f><c:strCache>${points([caption])}</c:strCache></c:strRef></c:tx>`,
    `<c:spPr>${verdict ? FILL[verdict] : PLAIN}${LINE}</c:spPr><c:invertIfNegative val="0"/>`,
    `<c:cat><c:strRef><c:f>${rangeText(sheet, chart.categories)}</c:f><c:strCache>${points(chart.labels)}</c:strCache></c:strRef></c:cat>`,
    `<c:val><c:numRef><c:f>${rangeText(sheet, values)}</c:f><c:numCache><c:formatCode>General</c:formatCode>${points(numbers)}</c:numCache></c:numRef></c:val>`,
    '</c:ser>',
  ].join('');
};

/** The chart part of a bar chart whose data stand on the sheet named. */
export const chartXml = (sheet: string, chart: BarChart): string => {
  const isStacked = chart.series.length > 1;
  const legend = isStacked ? `<c:legend><c:legendPos val="b"/><c:overlay val="0"/>${textStyle(8)}</c:legend>` : '';
  return [
    '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n',
    `<c:chartSpace xmlns:c="${CHART}" xmlns:a="${DRAWING}"><c:roundedCorners val="0"/><c:chart>`,
    `<c:title>${richText(chart.title, 10, true)}</c:title><c:autoTitleDeleted val="0"/>`,
    '<c:plotArea><c:layout/>',
    `<c:barChart><c:barDir val="bar"/><c:grouping val="${isStacked ? 'stacked' : 'clustered'}"/><c:varyColors val="0"/>`,
    ...chart.series.map((series, n) => seriesXml(sheet, chart, series, n)),
    `<c:gapWidth val="45"/>${isStacked ? '<c:overlap val="100"/>' : ''}<c:axId val="111"/><c:axId val="112"/></c:barChart>`,
    '<c:catAx><c:axId val="111"/><c:scaling><c:orientation val="maxMin"/></c:scaling><c:delete val="0"/><c:axPos val="l"/>',
    '<c:majorTickMark val="none"/><c:minorTickMark val="none"/><c:tickLblPos val="nextTo"/>',
    `<c:spPr>${LINE}</c:spPr>${textStyle(8)}<c:crossAx val="112"/><c:crosses val="autoZero"/></c:catAx>`,
    '<c:valAx><c:axId val="112"/><c:scaling><c:orientation val="minMax"/><c:min val="0"/></c:scaling><c:delete val="0"/><c:axPos val="b"/>',
    `<c:majorGridlines><c:spPr>${HAIRLINE}</c:spPr></c:majorGridlines><c:title>${richText(chart.valueTitle, 8, false)}</c:title>`,
    '<c:numFmt formatCode="0" sourceLinked="0"/><c:majorTickMark val="none"/><c:minorTickMark val="none"/><c:tickLblPos val="nextTo"/>',
    `<c:spPr>${HAIRLINE}</c:spPr>${textStyle(8)}<c:crossAx val="111"/><c:crosses val="max"/></c:valAx>`,
    `</c:plotArea>${legend}<c:plotVisOnly val="0"/><c:dispBlanksAs val="gap"/></c:chart>`,
    `<c:spPr>${solid('FFFFFF')}${HAIRLINE}</c:spPr></c:chartSpace>`,
  ].join('');
};
