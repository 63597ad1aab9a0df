import { HostProblem } from '../../workbook/port';

const SLICE_BYTES = 1024 * 1024;

/** Whether this program hands its workbook to add-ins. */
export const givesFile = (): boolean => Office.context.requirements.isSetSupported('CompressedFile', '1.1');

const asked = <T>(ask: (answer: (result: Office.AsyncResult<T>) => void) => void): Promise<T> =>
  new Promise((resolve, reject) =>
    ask(({ status, value, error }) =>
      status === Office.AsyncResultStatus.Succeeded
        ? resolve(value)
        : reject(new HostProblem(error.message || 'The workbook could not be read as a file.', 'host')),
    ),
  );

/** The open workbook as the file that this program would save now. */
export const wholeFile = async (): Promise<Uint8Array> => {
  const file = await asked<Office.File>((answer) =>
    Office.context.document.getFileAsync(Office.FileType.Compressed, { sliceSize: SLICE_BYTES }, answer),
  );
  try {
    const bytes = new Uint8Array(file.size);
    let at = 0;
    for (let n = 0; n < file.sliceCount; n++) {
      const slice = await asked<Office.Slice>((answer) => file.getSliceAsync(n, answer));
      bytes.set(slice.data as number[], at);
      at += slice.size;
    }
    return bytes;
  } finally {
    // Only two files may be open at a time.
    file.closeAsync();
  }
};
