import type { Statistic } from '../issue';
import { isDigit, isLetter, isSpace } from './characters';
import type { Factor } from './unit-bases';
import { powerAt } from './unit-power';
import { PREFIX_BY_WORD, unitWord, type Context } from './unit-words';

export type Spelled =
  | { kind: 'unit'; factors: readonly Factor[]; statistic?: Statistic }
  | { kind: 'ambiguous'; readings: readonly [string, string] }
  | { kind: 'unknown' }
  | { kind: 'malformed' };

/** Longer than any unit a person writes. */
export const LONGEST_UNIT = 60;
const DEEPEST = 4;
const ROOTS = ['sqrt', 'root', 'rt'];
const DEGREES = new Set(['°', 'deg', 'degs', 'degree', 'degrees']);
const SCALES: Readonly<Record<string, string>> = {
  c: 'degC',
  celsius: 'degC',
  f: 'degF',
  fahrenheit: 'degF',
  k: 'K',
};
const GLUED: readonly (readonly [string, Statistic])[] = [
  ['rms', 'rms'],
  ['peak', 'peak'],
  ['pk', 'peak'],
];

/** Reads "mV/(m/s^2)", "ug/rtHz", "pC/ms-2", "in-lb" into units and powers. */
class UnitReader {
  private at = 0;
  private depth = 0;
  private statistic: Statistic | undefined;
  private failed: Spelled | undefined;

  constructor(
    private readonly text: string,
    private readonly context: Context,
    /** "a/b c" as a/(b c) instead of (a/b) c. */
    private readonly tight: boolean,
  ) {}

  all(): Spelled {
    const factors = this.product();
    if (this.at < this.text.length) this.fail({ kind: 'malformed' });
    return this.failed ?? { kind: 'unit', factors, statistic: this.statistic };
  }

  /** Keeps the first failure and ends the reading. */
  private fail(result: Spelled): readonly Factor[] {
    this.failed ??= result;
    this.at = this.text.length;
    return [];
  }

  private skipSpaces(): void {
    while (isSpace(this.text[this.at])) this.at++;
  }

  private product(): Factor[] {
    const factors: Factor[] = [];
    let sign = 1;
    for (;;) {
      for (const [name, power] of this.term()) factors.push([name, power * sign]);
      this.skipSpaces();
      const next = this.text[this.at];
      if (next === undefined || next === ')') return factors;
      if (next === '/') {
        sign = -1;
        this.at++;
      } else if (this.text.startsWith('per ', this.at)) {
        sign = -1;
        this.at += 4;
      } else {
        if (!this.tight) sign = 1;
        if (next === '*' || next === '-' || next === '.') this.at++;
      }
    }
  }

  private term(): readonly Factor[] {
    this.skipSpaces();
    const start = this.at;
    const char = this.text[this.at];
    let inner: readonly Factor[];
    if (char === '(') inner = this.group();
    else if (char === '√') {
      this.at++;
      return this.term().map(([name, power]) => [name, power / 2]);
    } else if (char === '1' && !isDigit(this.text[this.at + 1])) {
      this.at++;
      return [];
    } else {
      const word = this.word();
      const rest = ROOTS.find((root) => word.toLowerCase().startsWith(root));
      if (rest !== undefined) {
        this.at = start + rest.length;
        this.skipSpaces();
        if (this.text[this.at] === '-') this.at++;
        return this.term().map(([name, power]) => [name, power / 2]);
      }
      inner = this.named(word);
      const power = this.power();
      // "ms-2", "ms²": nobody writes a squared millisecond.
      if (word === 'ms' && Math.abs(power) === 2)
        return [
          ['m', 1],
          ['s', -2],
        ];
      return inner.map(([name, own]) => [name, own * power]);
    }
    const power = this.power();
    return inner.map(([name, own]) => [name, own * power]);
  }

  private group(): readonly Factor[] {
    if (++this.depth > DEEPEST) return this.fail({ kind: 'malformed' });
    this.at++;
    const inner = this.product();
    if (this.text[this.at] !== ')') this.fail({ kind: 'malformed' });
    this.at++;
    this.depth--;
    return inner;
  }

  private word(): string {
    const from = this.at;
    const single = this.text[from];
    if (single !== undefined && '%‰°"'.includes(single)) {
      this.at++;
      return single;
    }
    while (isLetter(this.text[this.at]) || this.text[this.at] === '_') this.at++;
    if (this.at === from) {
      this.fail({ kind: 'malformed' });
      return '';
    }
    const word = this.text.slice(from, this.at);
    if ((word === 'g' || word === 'G') && this.text.startsWith("'s", this.at)) this.at += 2;
    const zero = (word === 'g' || word === 'g_') && this.text[this.at] === '0' && !isDigit(this.text[this.at + 1]);
    if (zero) this.at++;
    return zero ? 'g0' : word;
  }

  private named(word: string): readonly Factor[] {
    const prefix = PREFIX_BY_WORD.get(word.toLowerCase());
    if (prefix !== undefined && (this.text[this.at] === '-' || isSpace(this.text[this.at]))) {
      this.at++;
      return this.known(prefix + this.word());
    }
    return DEGREES.has(word.toLowerCase()) ? this.degrees(word) : this.known(word);
  }

  private degrees(word: string): readonly Factor[] {
    const back = this.at;
    if (this.text[this.at] === '.') this.at++;
    this.skipSpaces();
    if (isLetter(this.text[this.at])) {
      const scale = SCALES[this.word().toLowerCase()];
      if (scale !== undefined) return this.known(scale);
    }
    this.at = back;
    return this.known(word);
  }

  private known(word: string): readonly Factor[] {
    if (this.failed) return [];
    const found = unitWord(word, this.context);
    if (found && 'factors' in found) return found.factors;
    if (found) return this.fail({ kind: 'ambiguous', readings: this.inPlaceOf(word, found.ambiguous) });
    const low = word.toLowerCase();
    for (const [suffix, statistic] of GLUED) {
      if (!low.endsWith(suffix)) continue;
      this.statistic = statistic;
      let stem = word.slice(0, -suffix.length);
      if (stem.endsWith('_')) stem = stem.slice(0, -1);
      return stem === '' ? [] : this.known(stem);
    }
    return this.fail({ kind: 'unknown' });
  }

  private inPlaceOf(word: string, [one, other]: readonly [string, string]): readonly [string, string] {
    const from = this.at - word.length;
    const whole = (instead: string): string => this.text.slice(0, from) + instead + this.text.slice(this.at);
    return this.text.startsWith(word, from) ? [whole(one), whole(other)] : [one, other];
  }

  private power(): number {
    const found = powerAt(this.text, this.at);
    if (!found) {
      this.fail({ kind: 'malformed' });
      return 1;
    }
    this.at = found.end;
    return found.power;
  }
}

export const spellUnit = (text: string, context: Context, tight = false): Spelled =>
  text.length > LONGEST_UNIT ? { kind: 'malformed' } : new UnitReader(text, context, tight).all();
