import type { Statistic } from '../issue';
import { isDigit, isLetter, isSpace } from './characters';
import type { Factor } from './unit-bases';
import { powerAt } from './unit-power';

export type Spelled =
  | { kind: 'unit'; factors: readonly Factor[]; statistic?: Statistic }
  | { kind: 'ambiguous'; readings: readonly [string, string] }
  | { kind: 'unknown' }
  | { kind: 'malformed' };

/** A place in a unit text, the first failure met, and the smallest things to take from there. */
export class UnitScanner {
  protected at = 0;
  protected failed: Spelled | undefined;

  constructor(protected readonly text: string) {}

  /** Keeps the first failure and ends the reading. */
  protected fail(result: Spelled): readonly Factor[] {
    this.failed ??= result;
    this.at = this.text.length;
    return [];
  }

  protected skipSpaces(): void {
    while (isSpace(this.text[this.at])) this.at++;
  }

  protected word(): string {
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

  protected power(): number {
    const found = powerAt(this.text, this.at);
    if (!found) {
      this.fail({ kind: 'malformed' });
      return 1;
    }
    this.at = found.end;
    return found.power;
  }
}
