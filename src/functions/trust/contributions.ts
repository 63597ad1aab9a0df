import { failure, outcome, type Outcome } from '../../core/issue';
import { readQuantity } from '../../core/text/quantity';
import type { Contribution } from '../../core/trust/budget';
import { DISTRIBUTIONS, divisorOf } from '../../core/trust/distribution';
import { toSi, type UnitId } from '../../core/units';
import { isCellError, type ArgSpec, type Block, type Cell } from '../define';

export const CONTRIBUTIONS = {
  kind: 'block',
  text: 'Three to five columns: name, ± value in %, distribution (rectangular, triangular, U-shaped, normal, standard, bias) or divisor, degrees of freedom, effect. A heading row is passed over.',
} as const satisfies ArgSpec;

const ARG = 'contributions';
const isBlank = (cell: Cell | undefined): boolean =>
  cell === null || cell === undefined || (typeof cell === 'string' && cell.trim() === '');

const numberOf = (cell: Cell | undefined, unit: UnitId): number | undefined => {
  if (typeof cell === 'number') return toSi(cell, unit);
  const reading = typeof cell === 'string' ? readQuantity(cell, unit) : undefined;
  return reading?.ok ? reading.value.si : undefined;
};

const spreadOf = (cell: Cell | undefined): Outcome<{ divisor: number; isBias: boolean }> => {
  const divisor = numberOf(cell, '1');
  if (divisor !== undefined) {
    return divisor > 0
      ? outcome({ divisor, isBias: false })
      : failure({ code: 'out-of-range', arg: ARG, given: divisor, unit: '1', rule: '> 0' });
  }
  const word = String(cell ?? '')
    .trim()
    .toLowerCase();
  if (word === 'bias') return outcome({ divisor: 1, isBias: true });
  const distribution = DISTRIBUTIONS.find((name) => name.toLowerCase() === word);
  return distribution
    ? outcome({ divisor: divisorOf(distribution), isBias: false })
    : failure({ code: 'unknown-choice', arg: ARG, given: word, choices: [...DISTRIBUTIONS, 'bias', 'a divisor'] });
};

const readRow = ([name, half, spread, freedomCell, effect]: readonly Cell[]): Outcome<Contribution> => {
  const halfWidth = numberOf(half, '%');
  if (halfWidth === undefined) {
    return isBlank(half)
      ? failure({ code: 'missing', arg: ARG })
      : failure({ code: 'not-a-number', arg: ARG, given: String(half), unit: '%' });
  }
  const kind = spreadOf(spread);
  if (!kind.ok) return kind;
  if (halfWidth < 0 && !kind.value.isBias) {
    return failure({ code: 'out-of-range', arg: ARG, given: halfWidth * 100, unit: '%', rule: '≥ 0' });
  }
  const freedom = isBlank(freedomCell) ? Infinity : numberOf(freedomCell, '1');
  if (freedom === undefined || !(freedom > 0)) {
    return failure({ code: 'not-a-number', arg: ARG, given: String(freedomCell), unit: 'degrees of freedom' });
  }
  const sameEffect = isBlank(effect) ? undefined : String(effect).trim().toLowerCase();
  return outcome({ name: String(name ?? ''), halfWidth, ...kind.value, freedom, effect: sameEffect });
};

/** The rows of a budget; blank rows and a heading are passed over, anything unreadable is an issue. */
export const readContributions = (table: Block): Outcome<Contribution[]> => {
  const wrong = table.flat().find(isCellError);
  if (wrong) return failure({ code: 'cell-error', arg: ARG, given: wrong.error });
  const filled = table.filter((row) => row.some((cell) => !isBlank(cell)));
  const first = filled[0];
  const isHeading = first !== undefined && !isBlank(first[1]) && numberOf(first[1], '%') === undefined;
  const rows: Contribution[] = [];
  for (const row of isHeading ? filled.slice(1) : filled) {
    const reading = readRow(row);
    if (!reading.ok) return reading;
    rows.push(reading.value);
  }
  return rows.length > 0 ? outcome(rows) : failure({ code: 'missing', arg: ARG });
};
