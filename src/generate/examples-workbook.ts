import { writeXlsx } from 'hucre';
import { nodeCodec } from '../adapters/xlsx/codec-node';
import { withTrustedMaker } from '../adapters/xlsx/trusted-maker';
import { openWorkbook } from '../adapters/xlsx/workbook-file';
import { FUNCTIONS, NAMESPACE } from '../functions/index';
import { workedExamples } from './examples';
import { blocksSheet } from './examples-blocks';
import { listSheet } from './examples-list';
import { inputsSheet } from './examples-inputs';
import { steadyZip } from './steady-zip';

/** The package writes a date of its own choice; a fixed one keeps the file the same on every run. */
const REVISED = new Date(Date.UTC(2026, 8, 18, 8));

/** Every worked example as a live formula beside its expected value. The same bytes on every run. */
export const examplesWorkbook = async (): Promise<Uint8Array> => {
  const examples = workedExamples(FUNCTIONS, NAMESPACE);
  const inputs = inputsSheet(examples);
  const blocks = blocksSheet(examples, inputs.formulas);
  const list = listSheet(examples, inputs.formulas, blocks.places);
  const bare = await writeXlsx({
    sheets: [list.sheet, blocks.sheet, inputs.sheet],
    properties: { title: 'Worked examples', creator: 'Channelwright', created: REVISED, modified: REVISED },
    defaultFont: { name: 'Calibri', size: 10 },
    activeSheet: 0,
  });
  const functionNames = FUNCTIONS.map(({ name }) => name);
  const file = openWorkbook(bare, { codec: nodeCodec, functionNames });
  file.edit([...list.changes, ...blocks.changes, ...inputs.changes]);
  return steadyZip(withTrustedMaker(file.save()), REVISED);
};
