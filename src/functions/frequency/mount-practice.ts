import { MOUNT_PRACTICE, practiceScale } from '../../core/frequency/mount';
import { defineFunction } from '../define';

const SOURCE = 'common practice, no source';

export const mountPractice = defineFunction({
  name: 'MOUNT.PRACTICE',
  family: 'frequency span',
  summary: 'Table of how far the usual mounts reach, for a sensor of a given mass.',
  equation: 'f = f_10·√(10 gram/m)',
  args: {
    mass: { unit: 'gram', symbol: 'm', text: 'Mass of the sensor.', above: 0, default: 10 },
  },
  result: { kind: 'block', text: 'A heading row, then one row for each mount.' },
  validity:
    'Rough figures for orientation, sensors of about 5 to 20 gram; scaled by mass beyond. A lapped, oiled stud at its torque keeps the sensor’s own limit. Check the mount’s temperature limit as well as the sensor’s.',
  source: { kind: 'practice', note: SOURCE },

  compute: ({ mass }) => [
    ['mount', 'usable to Hz, poor', 'usable to Hz, careful', 'temperature limit', 'remark', 'source'],
    ...MOUNT_PRACTICE.map(({ mount, usableFrom, usableTo, temperature, remark }) => [
      mount,
      Math.round(usableFrom * practiceScale(mass)),
      Math.round(usableTo * practiceScale(mass)),
      temperature,
      remark,
      SOURCE,
    ]),
  ],

  examples: [
    {
      args: [10],
      result: [
        ['mount', 'usable to Hz, poor', 'usable to Hz, careful', 'temperature limit', 'remark', 'source'],
        [
          'cyanoacrylate, thin',
          5000,
          10000,
          'about 80 °C',
          'Brittle; needs solvent to debond; bonds skin and eyes.',
          'common practice, no source',
        ],
        [
          'structural epoxy, thin',
          5000,
          10000,
          '80 to 120 °C, special ones above 200 °C',
          'Removal can damage sensor and structure.',
          'common practice, no source',
        ],
        ['wax, thin', 3000, 8000, 'about 40 °C', 'Up to about 10 g peak.', 'common practice, no source'],
        [
          'adhesive pad with stud',
          5000,
          8000,
          'that of the adhesive',
          'Adds mass; isolates electrically.',
          'common practice, no source',
        ],
        ['double-sided film tape', 500, 2000, '60 to 80 °C', 'Creeps.', 'common practice, no source'],
        ['double-sided foam tape', 100, 500, '60 to 80 °C', 'Not for measurement.', 'common practice, no source'],
        [
          'flat magnet',
          2000,
          5000,
          'NdFeB about 80 °C, SmCo about 250 °C',
          'Needs ferrous metal; 4 to 60 gram more mass; shock when it snaps on.',
          'common practice, no source',
        ],
        [
          'two-pole magnet on a curve',
          1000,
          2000,
          'NdFeB about 80 °C, SmCo about 250 °C',
          'Needs ferrous metal; shock when it snaps on.',
          'common practice, no source',
        ],
        [
          'hand-held probe',
          500,
          1000,
          'what a hand may touch',
          'Not repeatable; never on rotating plant.',
          'common practice, no source',
        ],
      ],
      from: 'common practice, no source: figures as usually quoted for 5 to 20 gram',
    },
    {
      args: [40],
      result: [
        ['mount', 'usable to Hz, poor', 'usable to Hz, careful', 'temperature limit', 'remark', 'source'],
        [
          'cyanoacrylate, thin',
          2500,
          5000,
          'about 80 °C',
          'Brittle; needs solvent to debond; bonds skin and eyes.',
          'common practice, no source',
        ],
        [
          'structural epoxy, thin',
          2500,
          5000,
          '80 to 120 °C, special ones above 200 °C',
          'Removal can damage sensor and structure.',
          'common practice, no source',
        ],
        ['wax, thin', 1500, 4000, 'about 40 °C', 'Up to about 10 g peak.', 'common practice, no source'],
        [
          'adhesive pad with stud',
          2500,
          4000,
          'that of the adhesive',
          'Adds mass; isolates electrically.',
          'common practice, no source',
        ],
        ['double-sided film tape', 250, 1000, '60 to 80 °C', 'Creeps.', 'common practice, no source'],
        ['double-sided foam tape', 50, 250, '60 to 80 °C', 'Not for measurement.', 'common practice, no source'],
        [
          'flat magnet',
          1000,
          2500,
          'NdFeB about 80 °C, SmCo about 250 °C',
          'Needs ferrous metal; 4 to 60 gram more mass; shock when it snaps on.',
          'common practice, no source',
        ],
        [
          'two-pole magnet on a curve',
          500,
          1000,
          'NdFeB about 80 °C, SmCo about 250 °C',
          'Needs ferrous metal; shock when it snaps on.',
          'common practice, no source',
        ],
        [
          'hand-held probe',
          250,
          500,
          'what a hand may touch',
          'Not repeatable; never on rotating plant.',
          'common practice, no source',
        ],
      ],
      from: 'by hand: four times the mass on the same stiffness halves the frequency',
    },
  ],
});
