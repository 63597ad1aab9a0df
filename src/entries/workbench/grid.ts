// The grid and all it needs, in one chunk that loads after the page is drawn.
export { describeSelection } from '../../adapters/embedded/active-cell';
export { FileProblem } from '../../adapters/embedded/import/file-kind';
export { workbookFromFile } from '../../adapters/embedded/import/workbook';
export { openInGrid } from '../../adapters/embedded/open';
export { createGrid, focusGrid } from '../../adapters/embedded/page';
export { endEditing } from '../../adapters/embedded/grid-facts';
export { loadGridTexts } from '../../adapters/embedded/texts/load';
export { EmbeddedSpreadsheet } from '../../adapters/embedded/spreadsheet';
export { browserAssigner } from '../../adapters/solver/browser-assigner';
export { mountPane } from '../../pane/mount';
export { readPlanFile } from '../read-plan-file';
export { Saving } from './save';
