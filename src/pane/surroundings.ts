import type { PaneSolver } from './choosing/assign-state';
import type { ReadPlanFile } from './revisions/revisions-state';

/** What the pane has to know of the program around it, beyond the spreadsheet. */
export interface Surroundings {
  /** Name of the open workbook, where it is known. */
  readonly planName: () => string | undefined;
  /** Whether a link that saves a file works for certain; add-ins of some programs may not save. */
  readonly savesFiles: 'yes' | 'perhaps';
  /** Without one the pane assigns nothing. */
  readonly solver?: PaneSolver;
  /** Without it the pane compares with no other file. */
  readonly readPlanFile?: ReadPlanFile;
}
export const PLAIN_SURROUNDINGS: Surroundings = { planName: () => undefined, savesFiles: 'yes' };
