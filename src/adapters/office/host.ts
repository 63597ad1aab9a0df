/** What the adapter needs from Office.js, gathered in one place so that it can run against another implementation. */
export interface OfficeHost {
  run<T>(options: Excel.RunOptions, batch: (context: Excel.RequestContext) => Promise<T>): Promise<T>;
  /** Whether this Excel has the ExcelApi requirement set of that version. */
  supports(version: string): boolean;
  /** Lets Excel and the page breathe; an add-in that blocks for five seconds is ended by Excel. */
  pause(milliseconds: number): Promise<void>;
}

/** The Excel that the page is loaded in. Call only after Office.onReady named Excel as the host. */
export const excelHost = (): OfficeHost => ({
  run: (options, batch) => Excel.run(options, batch),
  supports: (version) => Office.context.requirements.isSetSupported('ExcelApi', version),
  pause: (milliseconds) => new Promise((resolve) => setTimeout(resolve, milliseconds)),
});

/** The sets beyond ExcelApi 1.9, which the manifest demands. Older hosts do without what needs them. */
export const SETS = {
  mergedAreas: '1.13',
  tableResize: '1.13',
  changeTrigger: '1.14',
  notes: '1.18',
  oneUndo: '1.20',
} as const;
