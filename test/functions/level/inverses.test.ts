import { functionByName } from '../../../src/functions/index';
import { describeInverses, number } from '../inverse';

const call = (name: string, ...args: (number | string | null)[]): number => {
  const fn = functionByName(name);
  if (!fn) throw new Error(`no function ${name}`);
  return number(fn, args);
};
const SPECTRUM = '20:0.01; 80:0.04; 500:0.04; 2000:0.01';
const raised = (decibels: number) =>
  [20, 80, 500, 2000].map((f, i) => `${f}:${[0.01, 0.04, 0.04, 0.01][i]! * 10 ** (decibels / 10)}`).join('; ');

describeInverses('level and dynamic range', [
  {
    title: 'PSD.CHANGE raises PSD.RMS to the level wanted',
    inputs: [[0.1, 50]],
    target: ([wanted]) => wanted!,
    reached: ([wanted]) => call('PSD.RMS', raised(call('PSD.CHANGE', SPECTRUM, wanted!))),
  },
  {
    title: 'PSD.SLOPE leads PSD.ALONG back to the second point',
    inputs: [
      [1, 50],
      [0.001, 1],
      [200, 2000],
      [0.001, 1],
    ],
    target: ([, , , level]) => level!,
    reached: ([f1, p1, f2, p2]) => call('PSD.ALONG', f1!, p1!, call('PSD.SLOPE', f1!, p1!, f2!, p2!), f2!),
  },
  {
    title: 'PSD.ALLOWED keeps RESPONSE.RANDOM',
    inputs: [
      [10, 1000],
      [1, 50],
      [0.1, 50],
    ],
    target: ([, , rms]) => rms!,
    reached: ([fn, q, rms]) => call('RESPONSE.RANDOM', fn!, q!, call('PSD.ALLOWED', fn!, q!, rms!)),
  },
  {
    title: 'INPUT.ALLOWED keeps RESPONSE.SINE',
    inputs: [
      [1, 500],
      [1, 50],
    ],
    target: ([ceiling]) => ceiling!,
    reached: ([ceiling, q]) => call('RESPONSE.SINE', call('INPUT.ALLOWED', ceiling!, q!), q!),
  },
  {
    title: 'PEAK.DURATION is the time of PEAK.EXPECTED',
    inputs: [
      [0.1, 10],
      [10, 2000],
      [3, 6],
    ],
    target: ([rms, , multiple]) => rms! * multiple!,
    reached: ([rms, f, multiple]) => call('PEAK.EXPECTED', rms!, f!, call('PEAK.DURATION', rms!, f!, rms! * multiple!)),
  },
  {
    title: 'PEAK.EXCEEDED is exceeded for the share of PEAK.SHARE',
    inputs: [
      [0.1, 10],
      [0.001, 90],
    ],
    target: ([, share]) => share!,
    reached: ([rms, share]) => call('PEAK.SHARE', rms!, call('PEAK.EXCEEDED', rms!, share!)),
  },
  {
    title: 'SINE.DISPLACEMENT has the acceleration of LEVEL.SINE',
    inputs: [
      [1, 2000],
      [0.1, 100],
    ],
    target: ([, level]) => level!,
    reached: ([f, level]) => call('LEVEL.SINE', f!, call('SINE.DISPLACEMENT', f!, level!)),
  },
  {
    title: 'SINE.VELOCITY has the acceleration of LEVEL.SINE',
    inputs: [
      [1, 2000],
      [0.1, 100],
    ],
    target: ([, level]) => level!,
    reached: ([f, level]) => call('LEVEL.SINE', f!, null, call('SINE.VELOCITY', f!, level!)),
  },
  {
    title: 'at CROSSOVER.FREQUENCY displacement and acceleration are the same sine',
    inputs: [
      [0.01, 10],
      [0.1, 100],
    ],
    target: ([, level]) => level!,
    reached: ([x, level]) => call('LEVEL.SINE', call('CROSSOVER.FREQUENCY', x!, level!), x!),
  },
  {
    title: 'RANDOM.ALLOWED fills what the sine leaves under the limit',
    inputs: [
      [20, 100],
      [0, 19],
      [1, 5],
    ],
    target: ([ceiling]) => ceiling!,
    reached: ([ceiling, sine, k]) => sine! + k! * call('RANDOM.ALLOWED', ceiling!, sine!, k!),
  },
  {
    title: 'CREST.FACTOR comes back from LEVEL.PEAK',
    inputs: [
      [0.1, 50],
      [1, 20],
    ],
    target: ([, k]) => k!,
    reached: ([rms, k]) => call('CREST.FACTOR', call('LEVEL.PEAK', rms!, k!), rms!),
  },
  {
    title: 'NOISE.ALLOWED leaves the signal-to-noise ratio of NOISE.BAND',
    inputs: [
      [0.0001, 1],
      [0, 60],
      [1, 100],
      [110, 5000],
    ],
    target: ([, ratio]) => 100 + ratio!,
    reached: ([lowest, ratio, low, high]) => {
      const density = call('NOISE.ALLOWED', lowest!, ratio!, low!, high!);
      return 100 + call('SIGNAL.TO.NOISE', lowest!, call('NOISE.BAND', `1:${density}`, low!, high!));
    },
  },
  {
    title: 'NOISE.ALLOWED leaves the signal-to-noise ratio in one line',
    inputs: [
      [0.0001, 1],
      [0, 60],
      [1, 100],
      [0.1, 10],
    ],
    target: ([, ratio]) => 100 + ratio!,
    reached: ([lowest, ratio, low, spacing]) => {
      const density = call('NOISE.ALLOWED', lowest!, ratio!, low!, 5000, spacing!);
      return 100 + call('SIGNAL.TO.NOISE', lowest!, call('NOISE.MODEL', density, 0, low!, 5000, spacing!));
    },
  },
  {
    title: 'BANDWIDTH.ALLOWED is the band whose density is NOISE.ALLOWED',
    inputs: [
      [0.0001, 1],
      [0.1, 100],
      [0, 60],
    ],
    target: ([, density]) => density!,
    reached: ([lowest, density, ratio]) =>
      call('NOISE.ALLOWED', lowest!, ratio!, 0, call('BANDWIDTH.ALLOWED', lowest!, density!, ratio!)),
  },
  {
    title: 'SIGNAL.TO.NOISE.NEEDED keeps NOISE.BIAS',
    inputs: [[0.01, 50]],
    target: ([bias]) => bias!,
    reached: ([bias]) => call('NOISE.BIAS', call('SIGNAL.TO.NOISE.NEEDED', bias!)),
  },
  {
    title: 'SIGNAL.TO.NOISE.NEEDED keeps COHERENCE.LIMIT',
    inputs: [[0.01, 0.999]],
    target: ([coherence]) => coherence!,
    reached: ([coherence]) => call('COHERENCE.LIMIT', call('SIGNAL.TO.NOISE.NEEDED', null, coherence!)),
  },
  {
    title: 'BITS.EFFECTIVE comes back from BITS.RANGE',
    inputs: [[1, 32]],
    target: ([bits]) => bits!,
    reached: ([bits]) => call('BITS.EFFECTIVE', call('BITS.RANGE', bits!)),
  },
  {
    title: 'INPUT.DYNAMIC.NEEDED keeps NOISE.INPUT',
    inputs: [
      [0.1, 10],
      [1e-5, 1e-3],
      [1000, 2e5],
      [1, 100],
      [0, 10],
      [20, 400],
    ],
    target: ([, noise]) => noise!,
    reached: ([range, noise, rate, s, low, high]) =>
      call(
        'NOISE.INPUT',
        range!,
        call('INPUT.DYNAMIC.NEEDED', range!, noise!, rate!, s!, low!, high!),
        rate!,
        s!,
        low!,
        high!,
      ),
  },
  {
    title: 'SENSITIVITY.ALLOWED fills the range of RANGE.NEEDED',
    inputs: [
      [0.1, 20],
      [0.1, 500],
      [1, 3],
    ],
    target: ([range]) => range!,
    reached: ([range, peak, margin]) =>
      call('RANGE.NEEDED', peak!, call('SENSITIVITY.ALLOWED', range!, peak!, margin!), margin!),
  },
  {
    title: 'SUPPLY.NEEDED gives the swing of BIAS.SWING',
    inputs: [
      [1, 60],
      [10, 60],
    ],
    target: ([peak, s]) => (peak! * s!) / 1000,
    reached: ([peak, s]) => call('BIAS.SWING', call('SUPPLY.NEEDED', peak!, s!, 8, 12, 1.5, 2, 1), 8, 12, 1.5, 2),
  },
  {
    title: 'LINEARITY.LEVEL keeps LINEARITY.SCALE',
    inputs: [
      [0.1, 5],
      [1, 5000],
      [0.1, 20],
    ],
    target: ([, , error]) => error!,
    reached: ([linearity, scale, error]) =>
      call('LINEARITY.SCALE', linearity!, scale!, call('LINEARITY.LEVEL', linearity!, scale!, error!)),
  },
  {
    title: 'LINEARITY.REACH keeps LINEARITY.GROWTH',
    inputs: [
      [0.1, 5],
      [0.1, 20],
    ],
    target: ([, error]) => error!,
    reached: ([growth, error]) => call('LINEARITY.GROWTH', growth!, call('LINEARITY.REACH', growth!, error!)),
  },
  {
    title: 'CHARGE.RUN.ALLOWED leaves the signal-to-noise ratio of NOISE.CHARGE',
    inputs: [
      [1, 40],
      [1, 200],
      [0.01, 0.1],
      [1, 50],
    ],
    target: ([ratio]) => ratio!,
    reached: ([ratio, perMetre, lowest, s]) => {
      const length = call('CHARGE.RUN.ALLOWED', lowest!, ratio!, 5, 300, 100, perMetre!, s!, 5, 2000);
      const noise = call('NOISE.CHARGE', 5, 300, length * perMetre!, 100, s!, 5, 2000);
      return call('SIGNAL.TO.NOISE', lowest!, noise);
    },
  },
  {
    title: 'SOURCE.RESISTANCE.NEEDED keeps NOISE.GAIN',
    inputs: [
      [1, 1e4],
      [1.1, 100],
    ],
    target: ([, gain]) => gain!,
    reached: ([rf, gain]) => call('NOISE.GAIN', rf!, call('SOURCE.RESISTANCE.NEEDED', rf!, gain!)),
  },
  {
    title: 'DYNAMIC.RANGE.NEEDED is what DYNAMIC.RANGE offers when both margins are just met',
    inputs: [
      [1e-4, 1],
      [2, 500],
      [0, 60],
      [1, 3],
    ],
    target: ([lowest, highest]) => 200 + 20 * Math.log10(highest! / lowest!),
    reached: ([lowest, highest, ratio, margin]) => {
      const needed = call('DYNAMIC.RANGE.NEEDED', lowest!, highest!, ratio!, margin!);
      return 200 + needed - ratio! - 20 * Math.log10(margin!);
    },
  },
]);
