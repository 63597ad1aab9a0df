import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { DEFAULT_LIMITS } from '../../../src/plan/limits';
import { readJsonPlan } from '../../../src/plan/json-plan';
import type { Channel, Plan } from '../../../src/plan/model';
import { stockOf, type Stock } from '../../../src/plan/choosing/candidate';
import { toSi } from '../../../src/core/units';

/** The complete cases, computed independently with Python/scipy. */
export const CASES: Plan = readJsonPlan(
  JSON.parse(readFileSync(join(__dirname, '../../fixtures/cases.json'), 'utf8')),
).plan;
export const STOCK: Stock = stockOf(CASES);
export const LIMITS = CASES.limits;
export { DEFAULT_LIMITS };

export const caseOf = (id: string): Channel => {
  const found = CASES.channels.find((channel) => channel.id === id);
  if (!found) throw new Error(`no case ${id}`);
  return found;
};

/** Only what is asked, no part chosen yet. */
export const asked = ({ id, requirement }: Channel): Channel => ({ id, requirement });

/** One sensor for everything: 0.8 mg r.m.s. to 65 g peak, 5 to 2000 Hz, 15 to 135 °C, 20.69 gram of local mass at 2 kHz. */
export const EVERYTHING: Channel = {
  id: 'everything',
  requirement: {
    ...caseOf('C3').requirement,
    temperatureLow: 15,
    temperatureHigh: 135,
    thermalTolerance: 0.05,
  },
};

export const g = (value: number): number => toSi(value, 'g');
