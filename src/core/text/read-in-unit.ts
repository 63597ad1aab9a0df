import type { Problem, Read } from '../issue';
import { read, unread } from '../issue';
import { fromSi } from '../units';
import { shown } from './characters';
import { readQuantity, type ReadingOptions } from './quantity';
import type { UnitMeaning } from './spelled-unit';

interface Answer {
  value: number;
  quantity: string;
}
const PRECISION = 1e-9;
/** A temperature passes through its zero at −273.15 °C, which costs digits of small numbers. */
const slack = (a: Answer, b: Answer): number =>
  PRECISION * Math.abs(a.value) + (a.quantity === 'temperature' || b.quantity === 'temperature' ? PRECISION : 0);

/** The number all answers agree on; two that differ make the text ambiguous. */
const agreed = (answers: readonly Answer[], given: string): Read<number> | undefined => {
  const first = answers.find(({ quantity }) => quantity !== 'temperature') ?? answers[0];
  if (!first) return undefined;
  const other = answers.find((answer) => Math.abs(answer.value - first.value) > slack(first, answer));
  if (!other) return read(first.value);
  return unread({
    code: 'ambiguous',
    given: shown(given),
    readings: [`${first.value} (${first.quantity})`, `${other.value} (${other.quantity})`],
  });
};

/** Pairs of meanings that measure the same quantity, so that each unit decides what the other means. */
const pairs = (from: readonly UnitMeaning[], to: readonly UnitMeaning[]): [UnitMeaning, UnitMeaning][] =>
  from.flatMap((a) => to.filter((b) => b.quantity === a.quantity).map((b): [UnitMeaning, UnitMeaning] => [a, b]));

export const convertNumber = (
  value: number,
  from: readonly UnitMeaning[],
  to: readonly UnitMeaning[],
  given: string,
): Read<number> | undefined =>
  agreed(
    pairs(from, to).map(([a, b]) => ({ value: b.fromSi(a.toSi(value)), quantity: a.quantity })),
    given,
  );

/** A text with its own unit, or a bare number in `from`, as a number in `to`. */
export const convertText = (
  text: string,
  from: readonly UnitMeaning[],
  to: readonly UnitMeaning[],
  options?: ReadingOptions,
): Read<number> | undefined => {
  const answers: Answer[] = [];
  let problem: Problem | undefined;
  for (const [a, b] of pairs(from, to)) {
    const reading = readQuantity(text, a.field, options);
    if (!reading.ok) {
      problem ??= reading.problem;
      continue;
    }
    const { si, unitText } = reading.value;
    answers.push({ value: b.fromSi(unitText === undefined ? a.toSi(fromSi(si, a.field)) : si), quantity: a.quantity });
  }
  return agreed(answers, text) ?? (problem && unread(problem));
};
