import { HostProblem } from '../../workbook/port';

type Answer = readonly [HostProblem['code'], string];

const BUSY: Answer = ['host', 'Excel is busy with something else. Finish what is open there, then try again.'];
const TOO_LARGE: Answer = ['too-large', 'That is more than Excel takes at once. Try again with fewer rows.'];
const MISSING: Answer = [
  'not-found',
  'Something that was there before is gone: a sheet, a table or a cell. Read the sheet again.',
];
const MERGED: Answer = [
  'occupied',
  'Merged cells are in the way. Take the merge apart there, or choose other columns.',
];
const UNSUPPORTED: Answer = ['unsupported', 'This version of Excel cannot do that.'];
const REFUSED: Answer = ['host', 'Excel refused the change.'];
const ELSEWHERE: Answer = ['host', 'The data behind this workbook cannot be reached now. Try again later.'];

/** Every code that Excel documents, and what it means for a planner. */
const ANSWERS = {
  AccessDenied: [
    'protected',
    'The sheet or the workbook is protected. Remove the protection (Review tab), then try again.',
  ],
  ApiNotFound: UNSUPPORTED,
  Conflict: ['host', 'Somebody else changed the same cells at the same time. Try again.'],
  DirtySupportingFormula: BUSY,
  EmptyChartSeries: REFUSED,
  FilteredRangeConflict: ['occupied', 'A filter is in the way. Clear the filter of this sheet, then try again.'],
  FormulaLengthExceedsLimit: ['too-large', 'A formula is longer than Excel allows (8,192 characters).'],
  GeneralException: REFUSED,
  InactiveWorkbook: ['host', 'This workbook is not in front. Bring its window to the front, then try again.'],
  InsertDeleteConflict: ['occupied', 'There is no room: something lies where the columns should go.'],
  InvalidArgument: REFUSED,
  InvalidBinding: MISSING,
  InvalidOperation: REFUSED,
  InvalidReference: MISSING,
  InvalidSelection: ['not-found', 'No cells are selected.'],
  ItemAlreadyExists: ['occupied', 'Something of that name is there already.'],
  ItemNotFound: MISSING,
  MergedRangeConflict: MERGED,
  NonBlankCellOffSheet: ['occupied', 'There is no room at the end of the sheet.'],
  NotImplemented: UNSUPPORTED,
  OpenWorkbookLinksBlocked: ELSEWHERE,
  OperationCellsExceedLimit: TOO_LARGE,
  PivotTableRangeConflict: ['occupied', 'A pivot table is in the way. Move it, or choose other columns.'],
  PowerQueryRefreshResourceChallenge: ELSEWHERE,
  RangeExceedsLimit: TOO_LARGE,
  RangeImageExceedsLimit: TOO_LARGE,
  RefreshWorkbookLinksBlocked: ELSEWHERE,
  RequestAborted: ['host', 'Excel broke the request off. Try again.'],
  ResponsePayloadSizeLimitExceeded: TOO_LARGE,
  UnsupportedFeature: UNSUPPORTED,
  UnsupportedFillType: UNSUPPORTED,
  UnsupportedOperation: UNSUPPORTED,
  UnsupportedSheet: ['unsupported', 'This kind of sheet holds no cells. Choose a worksheet.'],
  InvalidOperationInCellEditMode: ['host', 'A cell is being edited. Press Enter or Esc there, then try again.'],
} as const satisfies Record<`${Excel.ErrorCodes}`, Answer>;

/** Codes that the shared layer below Excel adds. */
const SHARED_ANSWERS: Readonly<Record<string, Answer>> = {
  ActivityLimitReached: BUSY,
  ApiNotAvailable: UNSUPPORTED,
  InvalidCellAddress: MISSING,
  InvalidObjectPath: MISSING,
  RequestPayloadSizeLimitExceeded: TOO_LARGE,
  ServiceNotAvailable: BUSY,
  Timeout: ['host', 'Excel did not answer in time. Try again.'],
  TooManyRequests: BUSY,
};

export const hostCodeOf = (error: unknown): string | undefined =>
  typeof error === 'object' && error !== null && 'code' in error && typeof error.code === 'string'
    ? error.code
    : undefined;

/** Any rejection of Office.js as a sentence for the user. What is no host error is a fault of ours and passes unchanged. */
export const asHostProblem = (error: unknown): unknown => {
  if (error instanceof HostProblem) return error;
  const code = hostCodeOf(error);
  if (code === undefined || code === 'PropertyNotLoaded') return error;
  const answer = (ANSWERS as Readonly<Record<string, Answer>>)[code] ?? SHARED_ANSWERS[code];
  const [kind, sentence] = answer ?? REFUSED;
  const said = answer === REFUSED || !answer ? ` Its answer was: ${error instanceof Error ? error.message : code}` : '';
  return new HostProblem(sentence + said, kind);
};
