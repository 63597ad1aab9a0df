import { givesFile, wholeFile } from '../../../src/adapters/office/whole-file';
import { HostProblem } from '../../../src/workbook/port';

/** Office.js as documented: a file in slices, answers with a status, at most two files open. */
const office = (content: Uint8Array, failing = false, sets: readonly string[] = ['CompressedFile']) => {
  const closed: number[] = [];
  const file = (sliceSize: number) => ({
    size: content.length,
    sliceCount: Math.ceil(content.length / sliceSize),
    getSliceAsync: (n: number, answer: (result: unknown) => void) => {
      const data = [...content.subarray(n * sliceSize, (n + 1) * sliceSize)];
      answer({ status: 'succeeded', value: { data, size: data.length, index: n } });
    },
    closeAsync: () => closed.push(1),
  });
  const getFileAsync = (type: string, { sliceSize }: { sliceSize: number }, answer: (result: unknown) => void) =>
    answer(
      failing || type !== 'compressed'
        ? { status: 'failed', error: { message: 'The document is too large.' } }
        : { status: 'succeeded', value: file(sliceSize) },
    );
  Object.assign(globalThis, {
    Office: {
      AsyncResultStatus: { Succeeded: 'succeeded' },
      FileType: { Compressed: 'compressed' },
      context: { document: { getFileAsync }, requirements: { isSetSupported: (name: string) => sets.includes(name) } },
    },
  });
  return closed;
};
afterEach(() => Reflect.deleteProperty(globalThis, 'Office'));

describe('the whole file of the host', () => {
  it('comes together from its slices and is closed again', async () => {
    const content = Uint8Array.from({ length: 2_500_000 }, (_, i) => i % 251);
    const closed = office(content);
    expect(Buffer.compare(await wholeFile(), content)).toBe(0);
    expect(closed).toHaveLength(1);
  });

  it('is refused in the words of the host', async () => {
    office(new Uint8Array(3), true);
    await expect(wholeFile()).rejects.toThrow(new HostProblem('The document is too large.', 'host'));
  });

  it('is asked for only where the host hands it out', () => {
    office(new Uint8Array(0), false, []);
    expect(givesFile()).toBe(false);
  });
});
