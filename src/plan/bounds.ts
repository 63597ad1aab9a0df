import type { TableName } from './fields';

/** Numbers a quantity can have at all, in any unit without offset. */
export type SignRule = 'above 0' | 'at least 0';

type Keys = Partial<Record<TableName, Readonly<Record<string, SignRule>>>>;

const RULES: Keys = {
  channels: {
    levelLow: 'above 0',
    levelHigh: 'above 0',
    bandLow: 'at least 0',
    bandHigh: 'above 0',
    lineSpacing: 'above 0',
    localMass: 'above 0',
    thermalTolerance: 'above 0',
    spanTolerance: 'above 0',
    massRatioLimit: 'above 0',
    referenceFrequency: 'above 0',
  },
  sensors: {
    axes: 'above 0',
    sensitivity: 'above 0',
    chargeSensitivity: 'above 0',
    fullScale: 'above 0',
    mass: 'at least 0',
    capacitance: 'at least 0',
    resonance: 'above 0',
    qualityFactor: 'above 0',
    lowLimit: 'at least 0',
    lowLimitLoss: 'above 0',
    zeroDrift: 'at least 0',
    quantity: 'at least 0',
  },
  mounts: { mountMass: 'at least 0', stiffness: 'above 0', holdingForce: 'above 0' },
  cables: { cableCapacitance: 'at least 0', cableMass: 'at least 0' },
  inputs: {
    range: 'above 0',
    dynamicRange: 'above 0',
    sampleRate: 'above 0',
    couplingPoles: 'above 0',
    supply: 'above 0',
    supplyCurrent: 'above 0',
    sourceDrop: 'at least 0',
    biasFloor: 'at least 0',
    sensorCurrent: 'at least 0',
    gain: 'above 0',
    noiseVoltage: 'at least 0',
    feedbackCapacitance: 'above 0',
    timeConstant: 'above 0',
    outputLimit: 'above 0',
    modules: 'at least 0',
    moduleChannels: 'above 0',
  },
};

export const signRule = (table: TableName, key: string): SignRule | undefined => RULES[table]?.[key];

export const obeys = (value: number, rule: SignRule | undefined): boolean =>
  rule === undefined || (rule === 'above 0' ? value > 0 : value >= 0);
