import { toSi } from '../../../src/core/units';
import type { Channel } from '../../../src/plan/model';
import type { Situation } from '../../fixtures/technology-situations';

export const channelOf = ({ name, ask }: Situation): Channel => ({
  id: name,
  requirement: {
    purpose: ask.purpose,
    levelLow: toSi(ask.level[0], 'g'),
    levelHigh: toSi(ask.level[1], 'g'),
    bandLow: ask.band[0],
    bandHigh: ask.band[1],
    temperatureLow: ask.temperature[0],
    temperatureHigh: ask.temperature[1],
    thermalTolerance: ask.tolerance && toSi(ask.tolerance, '%'),
    detector: { kind: 'band' },
    localMass: [{ model: 'value', mass: toSi(ask.mass[0], 'gram') }],
  },
  mount: { name: 'mount', mass: toSi(ask.mass[1], 'gram') },
  cable: {
    name: 'cable',
    mass: toSi(ask.mass[2], 'gram'),
    capacitance: ask.cableCapacitance && toSi(ask.cableCapacitance, 'pF'),
  },
});
