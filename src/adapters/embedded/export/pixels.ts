export const POINTS_PER_PIXEL = 3 / 4;
/** Width of a digit in the file format's default font, which column widths are counted in. */
const DIGIT_PIXELS = 7;

export const widthOfPixels = (pixels: number): number => Math.trunc((pixels / DIGIT_PIXELS) * 256) / 256;
