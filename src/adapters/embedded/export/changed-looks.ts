import type { IStyleData, IWorkbookData } from '@univerjs/core';
import type { WholeLook } from '../../../workbook/whole-look';
import { Services, type Host } from '../host';
import { LookBlocks, type LookBlock } from './look-blocks';
import { lookOf } from './looks';

/** What takes a part of a look away; a font and its size are only ever replaced. */
const AWAY: WholeLook = {
  ink: null,
  ground: null,
  align: null,
  vertical: null,
  bold: false,
  italic: false,
  underline: false,
  strike: false,
  wrap: false,
  numberFormat: 'General',
  borders: {},
};

/** What has to be laid over the one look so that it becomes the other. */
export const lookChange = (before: WholeLook, now: WholeLook): WholeLook => {
  const keys = [...new Set([...Object.keys(before), ...Object.keys(now)])] as (keyof WholeLook)[];
  const changed = keys.filter((key) => JSON.stringify(before[key]) !== JSON.stringify(now[key]));
  return Object.fromEntries(
    changed.flatMap((key) => {
      const value = key in now ? now[key] : AWAY[key];
      return value === undefined ? [] : [[key, value]];
    }),
  );
};

/** Looks of these cells as they are now, where they differ from those right after opening, `opened`. */
export const changedLooks = (
  host: Host,
  name: string,
  opened: IWorkbookData,
  cells: readonly (readonly [row: number, column: number])[],
): LookBlock[] => {
  const services = new Services(host);
  const sheet = services.sheet(name);
  const styles = services.workbook().getStyles();
  const then = opened.sheets[sheet.getSheetId()]?.cellData;
  const styleThen = (row: number, column: number): IStyleData => {
    const style = then?.[row]?.[column]?.s;
    return (typeof style === 'string' ? opened.styles[style] : style) ?? {};
  };
  const blocks = new LookBlocks();
  for (const [row, column] of cells) {
    const now = styles.getStyleByCell(sheet.getCellRaw(row, column)) ?? {};
    blocks.add(row, column, lookChange(lookOf(styleThen(row, column)), lookOf(now)));
  }
  return blocks.blocks();
};
