import { join } from 'node:path';
import { amplitudeRatio, decibels } from '../../../src/core/level/margin';
import { codedValue } from '../../../src/core/stock/data-sheet-code';
import { fullScaleNeeded, modulesNeeded } from '../../../src/core/stock/count';
import { handedness } from '../../../src/core/stock/handedness';
import { readDemoTable } from '../../../src/generate/demo-csv';
import { assignColumns } from '../../../src/plan/heading-assignment';
import { describeChecks } from '../published-checks';

const coded = ({ start, tolerance, code }: { start: number; tolerance: number; code: number }) =>
  codedValue(start, tolerance, code);

/** The cheapest assignment through the solver of largest sums: scores are what is left of the dearest cost. */
const cheapest = (cost: readonly (readonly number[])[]): number => {
  const dearest = Math.max(...cost.flat()) || 1;
  const chosen = assignColumns(
    cost.map((row) => row.map((value) => 1 - value / (2 * dearest))),
    cost[0]!.length,
  );
  return chosen.reduce<number>((sum, column, row) => sum + (column === undefined ? Infinity : cost[row]![column]!), 0);
};

describeChecks('inventory', {
  'upper limit of an electronic data sheet field, sensitivity': coded,
  'upper limit of an electronic data sheet field, high-pass corner': coded,
  'value of an electronic data sheet code': coded,
  'smallest assignment cost': ({ cost }) => cheapest(cost),
  'input modules needed': ({ channels, module_size }) => modulesNeeded(channels, module_size),
  "handedness of a three-axis sensor (determinant of its axes in the article's axes)": ({ axes }) => handedness(axes),
});

/** Charge sensitivity of a demo type; invented, so that the check is of the demo's plausibility only. */
const demoCharge = (sensor: string): number =>
  Number(
    readDemoTable(join(__dirname, '../../..'), 'sensors').find((row) => row['sensor'] === sensor)?.[
      'chargeSensitivity'
    ],
  );

describeChecks('choosing', {
  'full scale needed': ({ high_peak_gn }) => fullScaleNeeded(high_peak_gn),
  'band noise allowed': ({ low_rms_gn, snr_dB }) => (low_rms_gn / amplitudeRatio(snr_dB)) * 1e3,
  'overlap of a split pair': ({ low_pair_top_gn, high_pair_bottom_gn }) =>
    decibels(low_pair_top_gn, high_pair_bottom_gn),
  'sensitivity of engineered crystal over quartz, order only': () =>
    demoCharge('Cr-5 hot charge') / demoCharge('Qz-2 charge'),
});
