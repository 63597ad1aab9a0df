import type { Verdict } from '../../core/verdict';

/** The streams that a command talks to. */
export interface Io {
  out(text: string): void;
  error(text: string): void;
  input(): Promise<string>;
  /** Escape codes are understood, and wished for, on the output. */
  readonly colour: boolean;
  /** A person watches the error stream. */
  readonly watched: boolean;
  /** Characters in a line of the output. */
  readonly columns: number;
}

const PIPE_COLUMNS = 120;
const LEAST_COLUMNS = 60;

export const processIo = (): Io => {
  const { stdout, stderr, stdin, env } = process;
  return {
    out: (text) => void stdout.write(text),
    error: (text) => void stderr.write(text),
    async input() {
      const pieces: Buffer[] = [];
      for await (const piece of stdin) pieces.push(piece as Buffer);
      return Buffer.concat(pieces).toString('utf8');
    },
    colour: Boolean(stdout.isTTY) && !env['NO_COLOR'] && env['TERM'] !== 'dumb',
    watched: Boolean(stderr.isTTY) && env['TERM'] !== 'dumb',
    columns: Math.max(LEAST_COLUMNS, stdout.isTTY ? (stdout.columns ?? PIPE_COLUMNS) : PIPE_COLUMNS),
  };
};

/** Text from a file, fit for one line of a terminal: control characters and direction marks could make it say something else. */
export const plainLine = (text: string): string =>
  text
    .replace(/[\r\n\t]+/g, ' ')
    .replace(/[\u0000-\u001f\u007f-\u009f\u061c\u200e\u200f\u2028-\u202e\u2066-\u2069]/g, '');

/** Blue, amber, vermilion and grey from the 256 fixed colours; the word carries the meaning. */
const INKS: Readonly<Record<Verdict, string>> = {
  PASS: '38;5;32',
  WARN: '38;5;178',
  FAIL: '1;38;5;166',
  INCOMPLETE: '38;5;245',
};

export class Pen {
  constructor(private readonly colour: boolean) {}
  verdict(verdict: Verdict, text: string): string {
    return this.colour ? `\u001b[${INKS[verdict]}m${text}\u001b[0m` : text;
  }
  strong(text: string): string {
    return this.colour ? `\u001b[1m${text}\u001b[0m` : text;
  }
}

/** One line on the error stream that is written over; silent when nobody watches. */
export class Progress {
  private shown = false;
  constructor(private readonly io: Io) {}
  say(text: string): void {
    if (!this.io.watched) return;
    this.shown = true;
    this.io.error(`\r\u001b[K${plainLine(text).slice(0, this.io.columns - 1)}`);
  }
  done(): void {
    if (this.shown) this.io.error('\r\u001b[K');
    this.shown = false;
  }
}
