import { nodeCodec } from '../../adapters/xlsx/codec-node';
import { FileSpreadsheet } from '../../adapters/xlsx/spreadsheet';
import { openWorkbook, type WorkbookFile } from '../../adapters/xlsx/workbook-file';
import { child, childrenOf, parseTree } from '../../adapters/xlsx/xml-tree';
import { fitHeights } from '../../adapters/xlsx/summary-sheet';
import type { Language } from '../../core/language';
import { fillPlanNotes } from '../../workbook/plan-notes/fill';
import { HostProblem } from '../../workbook/port';
import { readingsOf } from '../../workbook/readings';
import { onSheet } from './on-sheet';
import { FUNCTION_NAMES, type WorkbookPlan } from './workbook-plan';

const USUAL_WIDTH = 8.43;
/** Bold words need more room than the digits that widths count. */
const BOLD = 0.85;

/** Widths of the two columns of the notes, in characters, as the sheet has them. */
const widthsIn = (part: Uint8Array, name: string, column: number): number[] => {
  const columns = childrenOf(child(parseTree(part, name), 'cols'), 'col');
  return [column, column + 1].map((at) => {
    const found = columns.find(
      ({ attributes }) => Number(attributes.get('min')) <= at + 1 && Number(attributes.get('max')) >= at + 1,
    );
    return Number(found?.attributes.get('width') ?? USUAL_WIDTH) * BOLD;
  });
};

/** Fills the notes of the plan in the workbook that is written. Returns what to tell. */
export const withPlanNotes = async (
  file: WorkbookFile,
  { tables, contentOf, judged }: WorkbookPlan,
  language: Language,
): Promise<{ readonly file: WorkbookFile; readonly told: string }> => {
  const readings = readingsOf(tables, contentOf, language);
  const notes = { checks: [...judged.byRow.values()], limits: judged.limits, readings };
  const today = new Date().toISOString().slice(0, 10);
  try {
    const { sheet, block, told } = await fillPlanNotes(new FileSpreadsheet(file), tables, notes, { language, today });
    if (!block) return { file, told };
    const { row, column, rows } = block;
    const bytes = onSheet(file.save(), sheet, (pkg, own) =>
      fitHeights(pkg, own, rows, widthsIn(pkg.read(own.part), own.part, column), row),
    );
    return { file: openWorkbook(bytes, { codec: nodeCodec, functionNames: FUNCTION_NAMES }), told };
  } catch (error) {
    if (error instanceof HostProblem) return { file, told: error.message };
    throw error;
  }
};
