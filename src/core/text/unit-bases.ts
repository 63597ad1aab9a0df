/** What a letter such as g, C or lb means depends on the field it stands in, never on the text. */
export type Sense = 'gravity' | 'gram' | 'electric' | 'warmth' | 'pound-mass' | 'pound-force';

export type Factor = readonly [name: string, power: number];
export interface Base {
  spellings: string;
  factors: readonly Factor[];
  /** SI prefixes people write before the spellings. */
  prefixes?: string;
  only?: Sense;
}
const base = (spellings: string, name: string, prefixes = '', only?: Sense): Base => ({
  spellings,
  factors: [[name, 1]],
  prefixes,
  only,
});

/** Spellings and what they are in the unit algebra; an earlier line wins. */
export const BASES: readonly Base[] = [
  base('m metre metres meter meters', 'm', 'numck'),
  base('micron microns', 'um'),
  base('in inch inches "', 'in'),
  base('ft foot feet', 'ft'),
  base('mil mils thou', 'mil'),
  base('s sec secs second seconds', 's', 'num'),
  base('min mins minute minutes', 'minute'),
  base('h hr hrs hour hours', 'hour'),
  base('Hz hertz', 'Hz', 'mkMG'),
  base('cps', 'Hz'),
  base('rpm', 'rpm'),
  base('V volt volts', 'V', 'numk'),
  base('A amp amps ampere amperes', 'A', 'pnum'),
  base('N newton newtons', 'N', 'umkM'),
  base('Pa pascal pascals', 'Pa', 'mhkMG'),
  base('psi', 'psiexact', 'kM'),
  base('ksi', 'kpsiexact'),
  base('Msi', 'Mpsiexact'),
  base('Ω ohm ohms', 'ohm', 'mkMG'),
  base('bar', 'bar', 'm'),
  base('lbf', 'lbfexact'),
  base('kip klbf', 'klbfexact'),
  base('ozf', 'ozfexact'),
  base('kgf kp', 'kgf'),
  base('K kelvin kelvins', 'K', 'm'),
  base('kg kgs kilogram kilograms kilogramme', 'kg'),
  base('gram grams gramme grammes', 'g', 'num'),
  base('lbm', 'lbm'),
  base('grain grains', 'grain'),
  base('tonne tonnes', 'tonne'),
  base('dB decibel decibels', 'decibel'),
  base('oct octave octaves', 'octave'),
  base('dec', 'tenfold'),
  base('% percent pct', 'percent'),
  base('‰', 'permille'),
  base('ppm', 'ppm'),
  base('rad rads radian radians', 'rad', 'mu'),
  base('deg degs degree degrees °', 'deg'),
  base('W watt watts', 'W', 'num'),
  base('ε strain', 'strain', 'um'),
  base('ue', 'ustrain'),
  base('coulomb coulombs', 'C', 'pnu'),
  base('farad farads', 'F', 'pnu'),
  { spellings: 'cc ccm', factors: [['cm', 3]] },
  {
    spellings: 'Ns',
    factors: [
      ['N', 1],
      ['s', 1],
    ],
  },
  {
    spellings: 'Nm',
    factors: [
      ['N', 1],
      ['m', 1],
    ],
  },
  base('g gs gn g_n g0 g_0', 'gn', 'num', 'gravity'),
  base('G Gs', 'gn', 'numk', 'gravity'),
  base('g gm gms gs', 'g', 'num', 'gram'),
  base('lb lbs pound pounds', 'lbm', '', 'pound-mass'),
  base('oz ounce ounces', 'oz', '', 'pound-mass'),
  base('lb lbs pound pounds', 'lbfexact', '', 'pound-force'),
  base('oz ounce ounces', 'ozfexact', '', 'pound-force'),
  base('C', 'C', 'pnuf', 'electric'),
  base('F', 'F', 'pnuf', 'electric'),
  base('pC nC uC', 'C', '', 'warmth'),
  base('C degC celsius centigrade', 'stepC', '', 'warmth'),
  base('F degF fahrenheit', 'stepF', '', 'warmth'),
  base('degC celsius centigrade', 'stepC', '', 'electric'),
  base('degF fahrenheit', 'stepF', '', 'electric'),
];
