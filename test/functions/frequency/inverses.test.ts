import { functionByName } from '../../../src/functions/index';
import { describeInverses, number } from '../inverse';

const call = (name: string, ...args: (number | string | null)[]): number => {
  const fn = functionByName(name);
  if (!fn) throw new Error(`no function ${name}`);
  return number(fn, args);
};

describeInverses('frequency span', [
  {
    title: 'LIMIT.FROM.CORNER comes back from CORNER.FROM.LIMIT',
    inputs: [
      [0.01, 100],
      [0.1, 90],
    ],
    target: ([limit]) => limit!,
    reached: ([limit, loss]) => call('LIMIT.FROM.CORNER', call('CORNER.FROM.LIMIT', limit!, loss!), loss!),
  },
  {
    title: 'TIME.CONSTANT comes back from CORNER.FROM.TIME',
    inputs: [[0.001, 100]],
    target: ([time]) => time!,
    reached: ([time]) => call('TIME.CONSTANT', call('CORNER.FROM.TIME', time!)),
  },
  {
    title: 'CORNER.ALLOWED keeps the loss of POLES.LIMIT beside another pole',
    inputs: [
      [0.1, 100],
      [0.5, 50],
      [0.01, 0.05],
    ],
    target: ([low]) => low!,
    reached: ([low, loss, share]) => {
      const other = share! * low!;
      return call('POLES.LIMIT', `${other}; ${call('CORNER.ALLOWED', low!, loss!, null, other)}`, loss!);
    },
  },
  {
    title: 'CORNER.ALLOWED keeps RESPONSE.PHASE beside another pole',
    inputs: [
      [0.1, 100],
      [2, 10],
      [0.001, 0.02],
    ],
    target: ([, phase]) => phase!,
    reached: ([low, phase, share]) => {
      const other = share! * low!;
      return call('RESPONSE.PHASE', low!, `${other}; ${call('CORNER.ALLOWED', low!, 50, phase!, other)}`);
    },
  },
  {
    title: 'TIME.CONSTANT.NEEDED is the time constant of CORNER.ALLOWED',
    inputs: [
      [0.1, 100],
      [0.5, 50],
    ],
    target: ([low, loss]) => call('CORNER.ALLOWED', low!, loss!),
    reached: ([low, loss]) => call('CORNER.FROM.TIME', call('TIME.CONSTANT.NEEDED', low!, loss!)),
  },
  {
    title: 'POLES.LIMIT is where RESPONSE.DEVIATION has that loss',
    inputs: [
      [0.01, 10],
      [0.01, 10],
      [0.01, 10],
      [0.5, 80],
    ],
    target: ([, , , loss]) => -loss!,
    reached: ([a, b, c, loss]) => {
      const poles = `${a}; ${b}; ${c}`;
      return call('RESPONSE.DEVIATION', call('POLES.LIMIT', poles, loss!), poles, null, null, 1e9);
    },
  },
  {
    title: 'CORNER.FOR.SETTLING keeps SETTLING.TIME',
    inputs: [
      [0.1, 600],
      [1, 30],
      [1e-5, 0.5],
    ],
    target: ([wait]) => wait!,
    reached: ([wait, step, residue]) =>
      call('SETTLING.TIME', call('CORNER.FOR.SETTLING', wait!, step!, residue!), step!, residue!),
  },
  {
    title: 'RESONANCE.NEEDED keeps RESONANCE.LIMIT, damped or not',
    inputs: [
      [10, 20000],
      [0.5, 30],
      [0.3, 100],
    ],
    target: ([high]) => high!,
    reached: ([high, tolerance, q]) =>
      call('RESONANCE.LIMIT', call('RESONANCE.NEEDED', high!, tolerance!, q!), tolerance!, q!),
  },
  {
    title: 'RESONANCE.LIMIT is where RESPONSE.DEVIATION reaches the tolerance',
    inputs: [
      [100, 50000],
      [0.5, 20],
      [5, 100],
    ],
    target: ([, tolerance]) => tolerance!,
    reached: ([resonance, tolerance, q]) =>
      call('RESPONSE.DEVIATION', call('RESONANCE.LIMIT', resonance!, tolerance!, q!), 'none', resonance!, q!, 1e-6),
  },
  {
    title: 'STIFFNESS.NEEDED keeps RESONANCE.MOUNTED',
    inputs: [
      [0.05, 0.95],
      [1000, 80000],
      [0.2, 50],
    ],
    target: ([share, own]) => share! * own!,
    reached: ([share, own, mass]) =>
      call('RESONANCE.MOUNTED', own!, mass!, call('STIFFNESS.NEEDED', share! * own!, own!, mass!)),
  },
  {
    title: 'LAYER.THICKNESS.ALLOWED keeps STIFFNESS.LAYER',
    inputs: [
      [0.001, 10],
      [1, 500],
      [1e4, 1e10],
    ],
    target: ([, , stiffness]) => stiffness!,
    reached: ([modulus, area, stiffness]) =>
      call('STIFFNESS.LAYER', modulus!, area!, call('LAYER.THICKNESS.ALLOWED', modulus!, area!, stiffness!)),
  },
  {
    title: 'CURRENT.NEEDED keeps CABLE.LIMIT',
    inputs: [
      [100, 20000],
      [0.1, 2],
      [100, 1e5],
      [1, 500],
      [1, 200],
    ],
    target: ([high]) => high!,
    reached: ([high, kept, capacitance, peak, s]) => {
      const current = call('CURRENT.NEEDED', high!, kept!, capacitance!, peak!, s!);
      // What drives the cable must stand out of what the sensor keeps, else rounding alone is left.
      return current - kept! < 1e-6 ? high! : call('CABLE.LIMIT', current, kept!, capacitance!, peak!, s!);
    },
  },
  {
    title: 'CABLE.RUN.ALLOWED keeps CABLE.LIMIT',
    inputs: [
      [3, 20],
      [50, 150],
      [1, 500],
      [1, 200],
      [100, 20000],
    ],
    target: ([, , , , high]) => high!,
    reached: ([supply, perMetre, peak, s, high]) => {
      const length = call('CABLE.RUN.ALLOWED', supply!, 1, perMetre!, peak!, s!, high!);
      return call('CABLE.LIMIT', supply!, 1, perMetre! * length, peak!, s!);
    },
  },
  {
    title: 'CHARGE.CABLE.ALLOWED keeps CHARGE.CABLE.LOSS',
    inputs: [
      [0.001, 5],
      [1000, 1e6],
      [10, 10000],
    ],
    target: ([loss]) => loss!,
    reached: ([loss, gain, feedback]) =>
      call('CHARGE.CABLE.LOSS', call('CHARGE.CABLE.ALLOWED', loss!, gain!, feedback!), gain!, feedback!),
  },
  {
    title: 'SAMPLE.RATE.NEEDED keeps ANALYSER.LIMIT',
    inputs: [[1, 1e5]],
    target: ([high]) => high!,
    reached: ([high]) => call('ANALYSER.LIMIT', call('SAMPLE.RATE.NEEDED', high!)),
  },
  {
    title: 'RECORD.TIME gives LINE.SPACING',
    inputs: [[0.01, 100]],
    target: ([spacing]) => spacing!,
    reached: ([spacing]) => call('LINE.SPACING', call('RECORD.TIME', spacing!)),
  },
  {
    title: 'DELAY.ALLOWED keeps DELAY.PHASE',
    inputs: [
      [1, 20000],
      [0.1, 90],
    ],
    target: ([, phase]) => phase!,
    reached: ([f, phase]) => call('DELAY.PHASE', f!, call('DELAY.ALLOWED', f!, phase!)),
  },
  ...(['peak', 'undershoot', 'velocity'] as const).map((kind) => ({
    title: `PULSE.TIME.NEEDED keeps PULSE.ERROR of ${kind}`,
    inputs: [
      [0.1, 100],
      [0.1, 40],
    ] as const,
    target: ([, error]: readonly number[]) => -error!,
    reached: ([duration, error]: readonly number[]) =>
      call('PULSE.ERROR', call('PULSE.TIME.NEEDED', duration!, error!, kind), duration!, kind),
  })),
  {
    title: 'PULSE.SHORTEST keeps the product of resonance and duration',
    inputs: [
      [100, 1e5],
      [1, 50],
    ],
    target: ([, product]) => product!,
    reached: ([resonance, product]) => (resonance! * call('PULSE.SHORTEST', resonance!, product!)) / 1000,
  },
]);
