import type { ReadPlanFile } from './revisions/revisions-state';
import type { Language } from '../core/language';
import type { Assigner } from '../plan/assign/assigner';
import type { ShareChoices } from '../workbook/share/choices';

/** What the pane has to know of the program around it, beyond the spreadsheet. */
export interface Surroundings {
  /** Name of the open workbook, where it is known. */
  readonly planName: () => string | undefined;
  /** Whether a link that saves a file works for certain; add-ins of some programs may not save. */
  readonly savesFiles: 'yes' | 'perhaps';
  /** Without one the pane assigns nothing. */
  readonly assign?: Assigner;
  /** Without it the pane compares with no other file. */
  readonly readPlanFile?: ReadPlanFile;
  /** Makes the copy for a customer; absent where the program does not hand out its workbook. Rejects with a HostProblem. */
  readonly shareCopy?: (
    choices: ShareChoices,
    toldIn: Language,
  ) => Promise<{ readonly bytes: Uint8Array; readonly told: readonly string[] }>;
}
export const PLAIN_SURROUNDINGS: Surroundings = { planName: () => undefined, savesFiles: 'yes' };
