import { FakeExcel } from '../adapters/office/fake-excel';
import { blankSheet } from '../adapters/office/fake-workbook';

// What the page finds instead of Microsoft's office.js: the same names, over the stand-in workbook of the unit tests.
class RuntimeError {
  constructor(
    readonly code: string,
    readonly message?: string,
  ) {}
}
const excel = new FakeExcel();
excel.state.sheets = [blankSheet('Channels')];
excel.state.active = 'Channels';
excel.fill('Channels', 0, 0, [
  ['Channel', 'Lowest level (g rms)', 'Highest level (g peak)', 'Lowest frequency (Hz)', 'Highest frequency (Hz)'],
  ['wing root Z', 0.01, 12, 5, 500],
  ['fin tip Y', 0.02, 40, 5, 2000],
]);

const associated = new Map<string, (...given: unknown[]) => unknown>();
Object.assign(globalThis, {
  Excel: { run: excel.run },
  Office: {
    HostType: { Excel: 'Excel' },
    context: { requirements: { isSetSupported: (_set: string, version: string) => excel.supports(version) } },
    onReady: () => {
      // What Excel sees at this moment is what it will call.
      Object.assign(globalThis, { associatedWhenReady: [...associated.keys()] });
      return Promise.resolve({ host: 'Excel', platform: 'PC' });
    },
  },
  CustomFunctions: {
    associate: (id: string, body: (...given: unknown[]) => unknown) => void associated.set(id, body),
    Error: RuntimeError,
  },
  callAssociated: (id: string, ...given: unknown[]) => {
    try {
      return associated.get(id)?.(...given, {});
    } catch (error) {
      return error;
    }
  },
  stateOfExcel: () => ({ undoSteps: excel.undoStack.length, cells: Object.keys(excel.sheet('Channels').cells).length }),
});
