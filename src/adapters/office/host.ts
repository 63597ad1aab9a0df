import type { Plot } from '../../plots/plot';
import { pngOf } from './picture';

/** What the adapter needs from Office.js, gathered in one place so that it can run against another implementation. */
export interface OfficeHost {
  run<T>(options: Excel.RunOptions, batch: (context: Excel.RequestContext) => Promise<T>): Promise<T>;
  /** Whether this Excel has the ExcelApi requirement set of that version. */
  supports(version: string): boolean;
  /** A plot as a picture: PNG in Base64. */
  pngOf(plot: Plot): Promise<string>;
  /** Lets Excel and the page breathe; an add-in that blocks for five seconds is ended by Excel. */
  pause(milliseconds: number): Promise<void>;
  /** "Excel, PC, 16.0.18025.20104": what runs, where and in which version. */
  program?(): string;
  /** Whether functions and pane run in one place, as the manifest asks. */
  sharesRuntime?(): boolean;
}

/** The Excel that the page is loaded in. Call only after Office.onReady named Excel as the host. */
export const excelHost = (): OfficeHost => ({
  run: (options, batch) => Excel.run(options, batch),
  supports: (version) => Office.context.requirements.isSetSupported('ExcelApi', version),
  pngOf,
  pause: (milliseconds) => new Promise((resolve) => setTimeout(resolve, milliseconds)),
  program: () => {
    // Older hosts have no diagnostics.
    const { diagnostics } = Office.context as Partial<Office.Context>;
    return diagnostics ? [diagnostics.host, diagnostics.platform, diagnostics.version].join(', ') : 'Excel';
  },
  sharesRuntime: () => Office.context.requirements.isSetSupported('SharedRuntime', '1.1'),
});

/** The set that the manifest demands, with the formats of single cells. */
export const CELL_PROPERTIES = '1.9';

/** The sets beyond it. Older hosts do without what needs them. */
export const SETS = {
  separators: '1.11',
  mergedAreas: '1.13',
  tableResize: '1.13',
  changeTrigger: '1.14',
  notes: '1.18',
  oneUndo: '1.20',
} as const;
