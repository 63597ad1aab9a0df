import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { inflateSync } from 'node:zlib';
import { ICON_SIZES, iconPng, iconRaster, iconSvg } from '../../src/generate/icons';

const folder = join(__dirname, '../../assets/icons');
const idat = (png: Buffer) => inflateSync(png.subarray(png.indexOf('IDAT') + 4));

describe('the icons', () => {
  it.each(ICON_SIZES)('show the drawing at %s pixels as committed', (size) => {
    expect(idat(readFileSync(join(folder, `icon-${size}.png`))).equals(iconRaster(size))).toBe(true);
    expect(idat(iconPng(size)).length).toBe(size * (1 + 4 * size));
  });

  it('have sharp edges: away from the rounded corners every pixel has one of the three colours', () => {
    for (const size of ICON_SIZES) {
      const raster = iconRaster(size);
      const corner = Math.ceil((3 / 16) * size);
      const colours = new Set<string>();
      for (let row = corner; row < size - corner; row++)
        for (let column = 0; column < size; column++)
          colours.add(
            raster.toString('hex', row * (1 + 4 * size) + 1 + 4 * column, row * (1 + 4 * size) + 5 + 4 * column),
          );
      expect([...colours].sort()).toEqual(['0f5c59ff', 'f6c567ff', 'ffffffff']);
    }
  });

  it('are the same drawing as the vector file', () => {
    expect(readFileSync(join(folder, 'icon.svg'), 'utf8')).toBe(iconSvg());
  });
});
