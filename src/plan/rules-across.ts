import type { ChannelCheck } from './check';
import type { Limits } from './limits';
import { addedMasses } from './rules/added-masses';
import { calibrationDue } from './rules/calibration';
import { channelNames, controlChannels } from './rules/control';
import { localAxes, otherPoints, sameDirections } from './rules/directions';
import { inputModules } from './rules/modules';
import { otherTypes } from './rules/other-type';
import type { AcrossRows } from './rules/rows';
import { housingAxes } from './rules/triax';
import { inputChannels, overlappingRuns, sensorsTwice } from './rules/used-twice';

/** What shows only when the rows are looked at together. */
export const acrossRows = (checks: readonly ChannelCheck[], limits: Limits): readonly AcrossRows[] => [
  ...controlChannels(checks),
  ...addedMasses(checks, limits),
  ...channelNames(checks),
  ...localAxes(checks),
  ...otherPoints(checks),
  ...sameDirections(checks),
  ...housingAxes(checks),
  ...inputChannels(checks),
  ...otherTypes(checks),
  ...sensorsTwice(checks),
  ...overlappingRuns(checks),
  ...calibrationDue(checks),
  ...inputModules(checks),
];
