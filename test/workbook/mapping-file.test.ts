import { isMappingProblem, mappingText, mergedMapping, readMapping } from '../../src/workbook/mapping-file';
import type { Mapping } from '../../src/workbook/tables';

const CORRECTED: Mapping = {
  channels: {
    sheet: 'Test list',
    headerRow: 3,
    fields: {
      levelHigh: { column: { heading: 'Amax', column: 27 }, unitText: 'm/s²', statistic: 'peak' },
      group: { column: null },
      levelLow: { statistic: 'rms' },
    },
  },
};

describe('corrections in a file', () => {
  it('are read back as they were saved', () => {
    expect(readMapping(JSON.parse(mappingText(CORRECTED) ?? ''))).toEqual(CORRECTED);
  });

  it('hold which sheets make the list, and what was said of single ones, for the next list of the same kind', () => {
    const spread: Mapping = {
      channels: {
        lists: { Wing: true, Archive: false },
        fieldsOn: { Wing: { point: { column: { heading: 'Node', column: 2 } } } },
        fields: {},
      },
    };
    expect(readMapping(JSON.parse(mappingText(spread) ?? ''))).toEqual(spread);
    const merged = mergedMapping(spread, { channels: { lists: { Archive: true, Tail: true }, fields: {} } });
    expect(merged.channels?.lists).toEqual({ Wing: true, Archive: true, Tail: true });
    expect(merged.channels?.fieldsOn).toEqual(spread.channels?.fieldsOn);
  });

  it('name the column by its letters, which decide between equal headings', () => {
    const { channels } = JSON.parse(mappingText(CORRECTED) ?? '') as { channels: { fields: Record<string, object> } };
    expect(channels.fields.levelHigh).toMatchObject({ heading: 'Amax', column: 'AB' });
  });

  it('are none where nothing was corrected', () => {
    expect(mappingText({})).toBeUndefined();
    expect(mappingText({ channels: { fields: {} } })).toBeUndefined();
  });

  it.each([
    [{ channels: { fields: { levelHigh: { column: 'E' } } } }, 'channels.fields.levelHigh'],
    [{ channels: { fields: { levelHigh: { heading: 'Amax', column: 5 } } } }, 'channels.fields.levelHigh'],
    [{ channels: { lists: { Wing: 'yes' } } }, 'channels.lists'],
    [{ sensors: { lists: { Wing: true } } }, 'sensors.lists'],
    [{ channels: { fieldsOn: { Wing: { nothing: 'A' } } } }, 'channels.fieldsOn.Wing'],
    [{ chanels: {} }, 'a table'],
    [[], 'the file'],
  ])('say what is wrong in %j', (given, at) => {
    const read = readMapping(given);
    expect(isMappingProblem(read) && read.at).toBe(at);
  });

  it('add to what was said before, field by field', () => {
    const merged = mergedMapping(CORRECTED, {
      channels: { fields: { group: { column: { heading: 'Part', column: 1 } } } },
    });
    expect(merged.channels?.fields?.group).toEqual({ column: { heading: 'Part', column: 1 } });
    expect(merged.channels?.fields?.levelLow).toEqual({ statistic: 'rms' });
    expect(merged.channels?.sheet).toBe('Test list');
  });
});
