import type { CellLook } from '../../workbook/port';

const ALIGN = { left: 'Left', right: 'Right', center: 'Center' } as const satisfies Record<
  NonNullable<CellLook['align']>,
  `${Excel.HorizontalAlignment}`
>;

const VERTICAL = { top: 'Top', center: 'Center', bottom: 'Bottom' } as const satisfies Record<
  NonNullable<CellLook['vertical']>,
  `${Excel.VerticalAlignment}`
>;

export const applyLook = (range: Excel.Range, look: CellLook, rows: number): void => {
  const { format } = range;
  if (look.bold !== undefined) format.font.bold = look.bold;
  if (look.ink !== undefined) format.font.color = look.ink;
  if (look.ground !== undefined) format.fill.color = look.ground;
  if (look.align !== undefined) format.horizontalAlignment = ALIGN[look.align];
  if (look.vertical !== undefined) format.verticalAlignment = VERTICAL[look.vertical];
  if (look.hairline !== undefined)
    for (const edge of ['EdgeBottom', ...(rows > 1 ? (['InsideHorizontal'] as const) : [])] as const) {
      const border = format.borders.getItem(edge);
      border.style = 'Continuous';
      border.weight = 'Hairline';
      border.color = look.hairline;
    }
  if (look.wrap !== undefined) format.wrapText = look.wrap;
  // One value, not a matrix: Office.js then gives it to every cell of the range.
  if (look.numberFormat !== undefined) range.numberFormat = look.numberFormat as unknown as string[][];
};

/** Points for a width in characters of the default font: 7 pixels each and 5 of margin, at 0.75 points a pixel. */
export const pointsOf = (characters: number): number => (characters * 7 + 5) * 0.75;
