import { failure } from '../../core/issue';
import { memberModalMassShare, MEMBERS } from '../../core/mass/members';
import { defineFunction } from '../define';

export const localMassMember = defineFunction({
  name: 'LOCAL.MASS.MEMBER',
  family: 'mass loading',
  summary: 'Local effective mass of a uniform beam or plate in one mode.',
  equation: 'm_eff = M·mean(φ²)/φ²(x)',
  args: {
    memberMass: { unit: 'gram', symbol: 'M', text: 'Mass of the whole beam or plate.', above: 0 },
    member: { kind: 'choice', choices: MEMBERS, text: 'Which member, by its supports.' },
    mode: { unit: '1', symbol: 'n', text: 'Number of the mode, 1 the lowest.', atLeast: 1, atMost: 50, default: 1 },
    position: {
      unit: '1',
      symbol: 'x/L',
      text: 'Position over the length from the first-named end, or radius over the rim’s; blank: where it moves most.',
      atLeast: 0,
      atMost: 1,
      optional: true,
    },
    secondMode: {
      unit: '1',
      symbol: 'k',
      text: 'Rectangular plate: number of half waves across.',
      atLeast: 1,
      atMost: 50,
      default: 1,
    },
    secondPosition: {
      unit: '1',
      symbol: 'y/b',
      text: 'Rectangular plate: position over the width; blank: where it moves most.',
      atLeast: 0,
      atMost: 1,
      optional: true,
    },
  },
  result: { unit: 'gram', symbol: 'm_eff', text: 'Local effective mass in this mode.' },
  validity:
    'Slender uniform beam, thin uniform plate, ideal supports. A cantilever is clamped at 0, a clamped-pinned beam too. Clamped circular plate: modes without nodal diameters, up to the fifth.',
  source: {
    kind: 'book',
    cite: 'R. D. Blevins, Formulas for Natural Frequency and Mode Shape, Van Nostrand Reinhold 1979',
    locator: 'tables of beam and plate mode shapes; rows not checked',
    read: 'from memory',
  },

  compute: ({ memberMass, member, mode, position, secondMode, secondPosition }) => {
    const whole = [mode, secondMode].find((number) => !Number.isInteger(number));
    if (whole !== undefined) {
      const arg = whole === mode ? 'mode' : 'secondMode';
      return failure({ code: 'out-of-range', arg, given: whole, unit: '1', rule: 'a whole number' });
    }
    const share = memberModalMassShare(member, [mode, secondMode], [position, secondPosition]);
    if (share === 'no such mode')
      return failure({ code: 'out-of-range', arg: 'mode', given: mode, unit: '1', rule: '≤ 5' });
    return share === 'node'
      ? failure({ code: 'no-result', rule: 'the point is a node of this mode' })
      : share * memberMass;
  },

  examples: [
    { args: [800, 'simply supported beam'], result: 400, within: 1e-9, from: 'by hand: mean of sin² is a half' },
    {
      args: [800, 'cantilever'],
      result: 200,
      within: 1e-9,
      from: 'by scipy quadrature of the exact shape: 0.2500 at the tip, in every mode',
    },
    {
      args: [1000, 'clamped beam', 1, 0.5],
      result: 396.47792,
      within: 1e-7,
      from: 'by scipy quadrature of the exact shape: 0.39647792',
    },
    {
      args: [1000, 'free beam', 1, 0.5],
      result: 676.68547,
      within: 1e-7,
      from: 'by scipy quadrature of the exact shape: 0.67668547',
    },
    {
      args: [500, 'simply supported plate', 2, 0.25, 1, 0.25],
      result: 250,
      within: 1e-9,
      from: 'by hand: mean ¼ over sin²(π/2)·sin²(π/4) = ½',
    },
    {
      args: [1000, 'clamped circular plate'],
      result: 182.83429,
      within: 1e-7,
      from: 'by scipy quadrature of the Bessel shape: 0.18283429',
    },
  ],
});
