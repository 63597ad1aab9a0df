import { TEXT_SIZE, widthOf, type Mark, type Plot, type Tone } from '../../plots/plot';
import { escapeAttribute, escapeXml } from './xml-text';

const EMU_PER_PIXEL = 9525;
const emu = (pixels: number): number => Math.round(pixels * EMU_PER_PIXEL);

const COLOUR: Readonly<Record<Tone, string>> = {
  ink: '1D2423',
  quiet: '5D6664',
  hair: 'D9D6CC',
  span: '8FB8B4',
  wide: 'D3E3E1',
  pass: '0B5C94',
  warn: '8A5A00',
  fail: 'B23A0E',
  incomplete: '5A5A58',
};
const PAPER = '<a:solidFill><a:srgbClr val="FFFEFB"/></a:solidFill>';
const fill = (tone: Tone): string => `<a:solidFill><a:srgbClr val="${COLOUR[tone]}"/></a:solidFill>`;
const stroke = (tone: Tone, pixels: number, dashed = false): string =>
  `<a:ln w="${emu(pixels)}">${fill(tone)}${dashed ? '<a:prstDash val="sysDash"/>' : ''}</a:ln>`;

interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}
const place = ({ x, y, width, height }: Box): string =>
  `<a:xfrm><a:off x="${emu(x)}" y="${emu(y)}"/><a:ext cx="${emu(width)}" cy="${emu(height)}"/></a:xfrm>`;

const shape = (id: number, properties: string, body = ''): string =>
  `<xdr:sp macro="" textlink=""><xdr:nvSpPr><xdr:cNvPr id="${id}" name="Part ${id}"/><xdr:cNvSpPr${body ? ' txBox="1"' : ''}/></xdr:nvSpPr>` +
  `<xdr:spPr>${properties}</xdr:spPr>${body}</xdr:sp>`;

const freeform = (points: readonly (readonly [number, number])[], line: string): string => {
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  const box = { x: Math.min(...xs), y: Math.min(...ys), width: 0, height: 0 };
  const width = Math.max(...xs) - box.x;
  const height = Math.max(...ys) - box.y;
  const steps = points.map(
    ([x, y], i) =>
      `<a:${i === 0 ? 'moveTo' : 'lnTo'}><a:pt x="${emu(x - box.x)}" y="${emu(y - box.y)}"/></a:${i === 0 ? 'moveTo' : 'lnTo'}>`,
  );
  return (
    place({ ...box, width, height }) +
    '<a:custGeom><a:avLst/><a:gdLst/><a:ahLst/><a:cxnLst/><a:rect l="0" t="0" r="r" b="b"/><a:pathLst>' +
    `<a:path w="${emu(width)}" h="${emu(height)}" fill="none">${steps.join('')}</a:path></a:pathLst></a:custGeom><a:noFill/>${line}`
  );
};

const ALIGN = { start: 'l', middle: 'ctr', end: 'r' } as const;
/** Points of a letter whose height is given in pixels of 1/96 inch. */
const POINTS = (TEXT_SIZE * 72) / 96;
const textShape = (id: number, mark: Extract<Mark, { kind: 'text' }>): string => {
  const { x, y, text, anchor = 'start', tone, bold } = mark;
  const width = widthOf(text) + 4;
  const left = anchor === 'end' ? x - width : anchor === 'middle' ? x - width / 2 : x;
  const properties =
    place({ x: left, y: y - TEXT_SIZE, width, height: TEXT_SIZE + 4 }) +
    '<a:prstGeom prst="rect"><a:avLst/></a:prstGeom><a:noFill/><a:ln><a:noFill/></a:ln>';
  const size = `sz="${Math.round(POINTS * 100)}" b="${bold ? 1 : 0}"`;
  const run = `<a:r><a:rPr lang="en-GB" ${size}>${fill(tone)}<a:latin typeface="Calibri"/></a:rPr><a:t>${escapeXml(text)}</a:t></a:r>`;
  const body =
    '<xdr:txBody><a:bodyPr vertOverflow="overflow" horzOverflow="overflow" wrap="none" lIns="0" tIns="0" rIns="0" bIns="0"/>' +
    `<a:p><a:pPr algn="${ALIGN[anchor]}"/>${run}</a:p></xdr:txBody>`;
  return shape(id, properties, body);
};

const markXml = (mark: Mark, id: number): string => {
  switch (mark.kind) {
    case 'text':
      return textShape(id, mark);
    case 'rect':
      return shape(id, `${place(mark)}<a:prstGeom prst="rect"><a:avLst/></a:prstGeom>${fill(mark.tone)}<a:ln><a:noFill/></a:ln>`); // prettier-ignore
    case 'line': {
      const { x1, y1, x2, y2, tone, width = 1, dashed } = mark;
      return shape(id, freeform([[x1, y1], [x2, y2]], stroke(tone, width, dashed))); // prettier-ignore
    }
    case 'path':
      return shape(id, freeform(mark.points, stroke(mark.tone, mark.width ?? 1.5)));
  }
};

/** A plot as one group of drawn shapes: crisp in every program and on paper, and still editable. */
export const plotShape = ({ width, height, title, inWords, marks }: Plot, id: number, name: string): string => {
  const size = `cx="${emu(width)}" cy="${emu(height)}"`;
  const about = escapeAttribute(`${title}. ${inWords}`);
  return [
    `<xdr:grpSp><xdr:nvGrpSpPr><xdr:cNvPr id="${id}" name="${escapeAttribute(name)}" descr="${about}"/><xdr:cNvGrpSpPr/></xdr:nvGrpSpPr>`,
    `<xdr:grpSpPr><a:xfrm><a:off x="0" y="0"/><a:ext ${size}/><a:chOff x="0" y="0"/><a:chExt ${size}/></a:xfrm></xdr:grpSpPr>`,
    // The lines of the cells behind would cross the drawing.
    shape(id * 1000, `${place({ x: 0, y: 0, width, height })}<a:prstGeom prst="rect"><a:avLst/></a:prstGeom>${PAPER}<a:ln><a:noFill/></a:ln>`), // prettier-ignore
    ...marks.map((mark, i) => markXml(mark, id * 1000 + i + 1)),
    '</xdr:grpSp>',
  ].join('');
};
