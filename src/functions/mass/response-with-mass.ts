import { complex, over, plus, scaled, type Complex } from '../../core/mass/complex';
import { fromAccelerance, type ResponseQuantity } from '../../core/mass/frequency-response';
import { failure, outcome, type Outcome } from '../../core/issue';
import type { Block } from '../define';
import { fromComplex, hasPhase, readResponse, type ResponseForm } from './response-table';

interface Given {
  readonly response: Block;
  readonly addedMass: number;
  readonly quantity: ResponseQuantity;
  readonly form: ResponseForm;
  readonly drivingPoint: Block | undefined;
}

/** The response table divided by 1 + m·A_dd line by line, A_dd from the driving-point table or the response itself. */
export const responseWithMass = (
  { response, addedMass, quantity, form, drivingPoint = [] }: Given,
  sign: 1 | -1,
): Outcome<number[][]> => {
  if (!hasPhase(form)) return failure({ code: 'wrong-size', arg: 'form', given: form, rule: 'a form with phase' });
  const reading = readResponse(response, quantity, form, 'response');
  if (!reading.ok) return reading;
  const isTransfer = drivingPoint.some((row) => row.some((cell) => cell !== null && cell !== ''));
  const point = isTransfer ? readResponse(drivingPoint, quantity, form, 'drivingPoint') : reading;
  if (!point.ok) return point;
  const { frequency } = reading.value;
  if (frequency.some((line, i) => line !== point.value.frequency[i])) {
    return failure({ code: 'bad-curve', arg: 'drivingPoint', given: 'other frequencies', rule: 'the same lines' });
  }
  const turned = reading.value.accelerance.map((value, i) =>
    over(value, plus(complex(1), scaled(point.value.accelerance[i] as Complex, sign * addedMass))),
  );
  const rows = turned.map((value, i) => [
    frequency[i] as number,
    ...fromComplex(fromAccelerance(value, quantity, frequency[i] as number), form),
  ]);
  return rows.flat().every(Number.isFinite)
    ? outcome(rows)
    : failure({ code: 'no-result', rule: 'the mass cancels the response at one line' });
};
