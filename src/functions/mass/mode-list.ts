import { failure, outcome, type Outcome } from '../../core/issue';
import type { Mode } from '../../core/mass/modes';
import type { ArgSpecs } from '../define';

/** Three lists of equal length: the modes as a test or a model gives them. */
export const MODE_LIST = {
  modeFrequencies: { kind: 'list', unit: 'Hz', text: 'Natural frequencies; 0 for a rigid-body mode.', atLeast: 0 },
  modalMasses: { kind: 'list', unit: 'gram', text: 'Modal mass of each mode.', above: 0 },
  shapes: {
    kind: 'list',
    unit: '1',
    text: 'Mode shape at the point, along the axis, in the scaling of the modal mass.',
  },
} as const satisfies ArgSpecs;

export const MOST_LISTED_MODES = 100;

interface Lists {
  readonly modeFrequencies: readonly number[];
  readonly modalMasses: readonly number[];
  readonly shapes: readonly number[];
}
export const modesOf = ({ modeFrequencies, modalMasses, shapes }: Lists): Outcome<Mode[]> => {
  const count = modeFrequencies.length;
  const rule = `one for each of the ${count} natural frequencies`;
  if (modalMasses.length !== count) {
    return failure({ code: 'wrong-size', arg: 'modalMasses', given: `${modalMasses.length} masses`, rule });
  }
  if (shapes.length !== count) {
    return failure({ code: 'wrong-size', arg: 'shapes', given: `${shapes.length} shapes`, rule });
  }
  if (count > MOST_LISTED_MODES) {
    const most = `at most ${MOST_LISTED_MODES} modes`;
    return failure({ code: 'wrong-size', arg: 'modeFrequencies', given: `${count} modes`, rule: most });
  }
  return outcome(
    modeFrequencies.map((frequency, i) => ({
      frequency,
      modalMass: modalMasses[i] as number,
      shape: shapes[i] as number,
    })),
  );
};
