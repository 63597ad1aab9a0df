export interface MountPractice {
  readonly mount: string;
  /** Hz for a sensor of PRACTICE_MASS. */
  readonly usableFrom: number;
  readonly usableTo: number;
  readonly temperature: string;
  readonly remark: string;
}

/** Mass in kg, middle of the 5 to 20 gram for which the frequencies are usually quoted. */
export const PRACTICE_MASS = 0.01;

/** Common practice, no source: how far a carefully made joint usually reaches. */
export const MOUNT_PRACTICE: readonly MountPractice[] = [
  {
    mount: 'cyanoacrylate, thin',
    usableFrom: 5000,
    usableTo: 10000,
    temperature: 'about 80 °C',
    remark: 'Brittle; needs solvent to debond; bonds skin and eyes.',
  },
  {
    mount: 'structural epoxy, thin',
    usableFrom: 5000,
    usableTo: 10000,
    temperature: '80 to 120 °C, special ones above 200 °C',
    remark: 'Removal can damage sensor and structure.',
  },
  {
    mount: 'wax, thin',
    usableFrom: 3000,
    usableTo: 8000,
    temperature: 'about 40 °C',
    remark: 'Up to about 10 g peak.',
  },
  {
    mount: 'adhesive pad with stud',
    usableFrom: 5000,
    usableTo: 8000,
    temperature: 'that of the adhesive',
    remark: 'Adds mass; isolates electrically.',
  },
  {
    mount: 'double-sided film tape',
    usableFrom: 500,
    usableTo: 2000,
    temperature: '60 to 80 °C',
    remark: 'Creeps.',
  },
  {
    mount: 'double-sided foam tape',
    usableFrom: 100,
    usableTo: 500,
    temperature: '60 to 80 °C',
    remark: 'Not for measurement.',
  },
  {
    mount: 'flat magnet',
    usableFrom: 2000,
    usableTo: 5000,
    temperature: 'NdFeB about 80 °C, SmCo about 250 °C',
    remark: 'Needs ferrous metal; 4 to 60 gram more mass; shock when it snaps on.',
  },
  {
    mount: 'two-pole magnet on a curve',
    usableFrom: 1000,
    usableTo: 2000,
    temperature: 'NdFeB about 80 °C, SmCo about 250 °C',
    remark: 'Needs ferrous metal; shock when it snaps on.',
  },
  {
    mount: 'hand-held probe',
    usableFrom: 500,
    usableTo: 1000,
    temperature: 'what a hand may touch',
    remark: 'Not repeatable; never on rotating plant.',
  },
];

/** Usual frequencies for another sensor mass in kg: a joint keeps its stiffness, so frequency goes as 1/√m. */
export const practiceScale = (mass: number): number => Math.sqrt(PRACTICE_MASS / mass);
