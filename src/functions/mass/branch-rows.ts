import { failure, outcome, type Outcome } from '../../core/issue';
import type { LocalMassBranch } from '../../core/mass/local-mass';
import { readQuantity } from '../../core/text/quantity';
import { fromSi, toSi } from '../../core/units';
import { isCellError, type Block, type Cell } from '../define';

const isBlank = (cell: Cell): boolean => cell === null || (typeof cell === 'string' && cell.trim() === '');

const readMass = (cell: Cell, arg: string, name: string): Outcome<number> => {
  if (isBlank(cell)) return failure({ code: 'missing', arg: `${arg} (${name})` });
  if (typeof cell === 'number') return outcome(toSi(cell, 'gram'));
  const reading = readQuantity(String(cell), 'gram');
  return reading.ok ? outcome(reading.value.si) : failure({ ...reading.problem, arg });
};

/** Name and local mass of each filled row; a name without a mass is an issue, never passed over. */
export const readBranches = (table: Block, arg: string): Outcome<LocalMassBranch[]> => {
  const branches: LocalMassBranch[] = [];
  for (const [nameCell = null, cell = null] of table) {
    const wrong = [nameCell, cell].find(isCellError);
    if (wrong) return failure({ code: 'cell-error', arg, given: wrong.error });
    if (isBlank(nameCell) && isBlank(cell)) continue;
    const name = String(nameCell ?? '');
    const mass = readMass(cell, arg, name);
    if (!mass.ok) return mass;
    if (!(mass.value > 0)) {
      return failure({ code: 'out-of-range', arg, given: fromSi(mass.value, 'gram'), unit: 'gram', rule: '> 0' });
    }
    branches.push({ name, mass: mass.value, model: 'mass' });
  }
  return outcome(branches);
};
