import { CommandType, IUniverInstanceService, type IMutation, type Worksheet } from '@univerjs/core';
import type { Workbook } from '@univerjs/core';
import type { Drawing } from '../../workbook/drawings';
import type { ReadingSheet } from '../../workbook/port';
import type { Action } from './action';

/** What we know of a sheet of ours beside what the grid shows; it travels with the sheet. */
export interface OwnSheetFacts {
  readonly reading?: ReadingSheet;
  readonly drawings?: readonly Drawing[];
}

export const factsOf = (sheet: Worksheet): OwnSheetFacts => (sheet.getConfig().custom ?? {}) as OwnSheetFacts;

interface SetDrawings {
  readonly unitId: string;
  readonly subUnitId: string;
  readonly drawings?: readonly Drawing[];
}
const SET_DRAWINGS: IMutation<SetDrawings> = {
  id: 'channelwright.mutation.set-drawings',
  type: CommandType.MUTATION,
  handler: (accessor, { unitId, subUnitId, drawings }) => {
    const config = accessor
      .get(IUniverInstanceService)
      .getUnit<Workbook>(unitId)
      ?.getSheetBySheetId(subUnitId)
      ?.getConfig();
    if (!config) return false;
    config.custom = { ...config.custom, drawings };
    return true;
  },
};

/** The grid shows no drawings; it keeps them for the file that is saved. */
export const setDrawings = (action: Action, sheet: Worksheet, drawings: readonly Drawing[]): void => {
  const { commands } = action.services;
  if (!commands.hasCommand(SET_DRAWINGS.id)) commands.registerCommand(SET_DRAWINGS);
  const at = { unitId: action.unitId, subUnitId: sheet.getSheetId() };
  action.run({ id: SET_DRAWINGS.id, params: { ...at, drawings } }, [
    { id: SET_DRAWINGS.id, params: { ...at, drawings: factsOf(sheet).drawings } },
  ]);
};
