import { FakeExcel } from './fake-excel';

// The adapter is only as well tested as this stand-in is strict, so its rules are tested too.
const codeOf = async (batch: (context: Excel.RequestContext) => Promise<unknown>, excel = new FakeExcel()) => {
  try {
    await excel.run({}, batch);
  } catch (error) {
    return (error as { code?: string }).code;
  }
  return undefined;
};
const sheet = (context: Excel.RequestContext) => context.workbook.worksheets.getItemOrNullObject('Sheet1');

describe('the stand-in for Excel', () => {
  it('keeps a property back until it was loaded and synced', async () => {
    expect(await codeOf((context) => Promise.resolve(sheet(context).name))).toBe('PropertyNotLoaded');
    expect(
      await codeOf((context) => {
        const one = sheet(context);
        one.load('name');
        return Promise.resolve(one.name);
      }),
    ).toBe('PropertyNotLoaded');
    expect(
      await codeOf(async (context) => {
        const one = sheet(context);
        await context.sync();
        return one.name;
      }),
    ).toBe('PropertyNotLoaded');
  });

  it('does not know whether an object is there before a sync', async () => {
    expect(await codeOf((context) => Promise.resolve(sheet(context).isNullObject))).toBe('PropertyNotLoaded');
  });

  it('refuses to use what is not there', async () => {
    expect(
      await codeOf(async (context) => {
        context.workbook.worksheets.getItemOrNullObject('Nowhere').getRange('A1').formulas = [['x']];
        await context.sync();
      }),
    ).toBe('ItemNotFound');
  });

  it('counts rows from 0 by index and from 1 by address', async () => {
    const excel = new FakeExcel();
    await excel.run({}, async (context) => {
      sheet(context).getRangeByIndexes(1, 2, 1, 1).formulas = [['index']];
      sheet(context).getRange('C2').load('values');
      await context.sync();
    });
    expect(excel.sheet('Sheet1').cells['1,2']?.value).toBe('index');
    expect(
      await codeOf(async (context) => {
        sheet(context).getRangeByIndexes(0, 0, 0, 1).load('values');
        await context.sync();
      }),
    ).toBe('InvalidArgument');
  });

  it('refuses a matrix of another shape, and leaves a cell alone for null', async () => {
    const write = (matrix: unknown[][]) => async (context: Excel.RequestContext) => {
      sheet(context).getRange('A1:B1').formulas = matrix;
      await context.sync();
    };
    expect(await codeOf(write([['a']]))).toBe('InvalidArgument');
    const excel = new FakeExcel();
    await excel.run({}, write([['a', 'b']]));
    await excel.run({}, write([[null, 'c']]));
    expect(Object.values(excel.sheet('Sheet1').cells).map((cell) => cell.value)).toEqual(['a', 'c']);
  });

  it('reads an entry as if it had been typed', async () => {
    const excel = new FakeExcel();
    await excel.run({}, async (context) => {
      sheet(context).getRange('A1:E1').formulas = [['1/2', '-5', 'true', "'1/2", '3 mV/g']];
      await context.sync();
    });
    expect(Object.values(excel.sheet('Sheet1').cells).map((cell) => cell.value)).toEqual([
      45_000,
      -5,
      true,
      '1/2',
      '3 mV/g',
    ]);
  });

  it('keeps what a batch did before its failing instruction, and does not do the rest', async () => {
    const excel = new FakeExcel();
    excel.addSheet('Locked').isProtected = true;
    const code = await codeOf(async (context) => {
      sheet(context).getRange('A1').formulas = [['before']];
      context.workbook.worksheets.getItemOrNullObject('Locked').getRange('A1').formulas = [['x']];
      sheet(context).getRange('A2').formulas = [['after']];
      await context.sync();
    }, excel);
    expect(code).toBe('AccessDenied');
    expect(Object.keys(excel.sheet('Sheet1').cells)).toEqual(['0,0']);
  });

  it('limits what one request and one answer may weigh', async () => {
    const small = { requestBytes: 1500, responseBytes: 1500 };
    const long = [['x'.repeat(1600)]];
    expect(
      await codeOf(
        async (context) => {
          sheet(context).getRange('A1').formulas = long;
          await context.sync();
        },
        new FakeExcel('1.20', small),
      ),
    ).toBe('RequestPayloadSizeLimitExceeded');
    const excel = new FakeExcel('1.20', small);
    excel.fill('Sheet1', 0, 0, long);
    expect(
      await codeOf(async (context) => {
        sheet(context).getRange('A1').load('values');
        await context.sync();
      }, excel),
    ).toBe('ResponsePayloadSizeLimitExceeded');
  });

  it('knows no call that is newer than its version', async () => {
    const old = new FakeExcel('1.9');
    await expect(old.run({ mergeUndoGroup: true }, () => Promise.resolve())).rejects.toMatchObject({
      code: 'ApiNotFound',
    });
    expect(
      await codeOf(async (context) => {
        sheet(context).getRange('A1').getMergedAreasOrNullObject();
        await context.sync();
      }, old),
    ).toBe('ApiNotFound');
  });

  it('refuses a batch while a cell is being edited, unless it may wait', async () => {
    const excel = new FakeExcel();
    excel.isEditing = true;
    expect(await codeOf((context) => context.sync(), excel)).toBe('InvalidOperationInCellEditMode');
    await excel.run({ delayForCellEdit: true }, (context) => context.sync());
  });
});
