import type { Plot } from '../../plots/plot';
import { svgText } from '../../plots/svg';

/** Sharp on paper too. */
const SCALE = 3;
const PAPER = '#fffefb';

/** A plot as a PNG in Base64. Excel takes pictures since ExcelApi 1.9; its own call for SVG is in no numbered set. */
export const pngOf = async (plot: Plot): Promise<string> => {
  const image = new Image();
  image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(svgText(plot))}`;
  await image.decode();
  const canvas = document.createElement('canvas');
  canvas.width = plot.width * SCALE;
  canvas.height = plot.height * SCALE;
  const context = canvas.getContext('2d');
  if (!context) throw new Error('this browser draws on no canvas');
  context.fillStyle = PAPER;
  context.fillRect(0, 0, canvas.width, canvas.height);
  context.drawImage(image, 0, 0, canvas.width, canvas.height);
  return canvas.toDataURL('image/png').replace(/^data:image\/png;base64,/, '');
};
