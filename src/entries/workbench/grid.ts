// The grid and all it needs, in one chunk that loads after the page is drawn.
export { createGrid } from '../../adapters/embedded/page';
export { openInGrid } from '../../adapters/embedded/open';
export { workbookFromFile } from '../../adapters/embedded/import/workbook';
export { FileProblem } from '../../adapters/embedded/import/file-kind';
