import type { Statistic } from '../issue';
import { isLetter, isSpace } from './characters';
import type { Factor } from './unit-bases';
import { UnitScanner, type Spelled } from './unit-scanner';
import { DEGREES, GLUED, PREFIX_BY_WORD, ROOTS, SCALES, unitWord, type Context } from './unit-words';

/** Longer than any unit a person writes. */
export const LONGEST_UNIT = 60;
const DEEPEST = 4;
/** "ms-2", "ms²": nobody writes a squared millisecond. */
const METRE_PER_SECOND_SQUARED: readonly Factor[] = [
  ['m', 1],
  ['s', -2],
];
const raised = (factors: readonly Factor[], power: number): readonly Factor[] =>
  factors.map(([name, own]) => [name, own * power]);

/** Reads "mV/(m/s^2)", "ug/rtHz", "pC/ms-2", "in-lb" into units and powers. */
class UnitReader extends UnitScanner {
  private depth = 0;
  private statistic: Statistic | undefined;

  constructor(
    text: string,
    private readonly context: Context,
    /** "a/b c" as a/(b c) instead of (a/b) c. */
    private readonly tight: boolean,
  ) {
    super(text);
  }

  all(): Spelled {
    const factors = this.product();
    if (this.at < this.text.length) this.fail({ kind: 'malformed' });
    return this.failed ?? { kind: 'unit', factors, statistic: this.statistic };
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
    const char = this.text[this.at];
    if (char === '√') {
      this.at++;
      return raised(this.term(), 0.5);
    }
    if (this.at === 0 && this.text.startsWith('1/')) {
      this.at++;
      return [];
    }
    return char === '(' ? raised(this.group(), this.power()) : this.wordTerm();
  }

  private wordTerm(): readonly Factor[] {
    const start = this.at;
    const word = this.word();
    const root = ROOTS.find((name) => word.toLowerCase().startsWith(name));
    if (root !== undefined) {
      this.at = start + root.length;
      this.skipSpaces();
      if (this.text[this.at] === '-') this.at++;
      return raised(this.term(), 0.5);
    }
    const named = this.named(word);
    const power = this.power();
    return word === 'ms' && Math.abs(power) === 2 ? METRE_PER_SECOND_SQUARED : raised(named, power);
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
}

export const spellUnit = (text: string, context: Context, tight = false): Spelled =>
  text.length > LONGEST_UNIT ? { kind: 'malformed' } : new UnitReader(text, context, tight).all();
