import { cellAddress } from './address';
import type { MarkRule } from './port';

/** N of a text is 0, so this changes no result; it says whose rule this is, in every file format and host. */
const OURS = 'N("Channelwright")=0';

/** The condition of a mark for the first cell of its range; a host shifts it for the others. With leading '='. */
export const markFormula = ({ range, equals }: MarkRule): string =>
  `=AND(EXACT(${cellAddress(range.row, range.column)},"${equals.replaceAll('"', '""')}"),${OURS})`;

export const isMarkFormula = (formula: string): boolean => formula.replaceAll(' ', '').includes(OURS);
