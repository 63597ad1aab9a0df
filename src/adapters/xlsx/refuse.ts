import { HostProblem } from '../../workbook/port';

/** Stops with a sentence for the user that names the part or cell and the reason. */
export function refuse(code: HostProblem['code'], sentence: string): never {
  throw new HostProblem(sentence, code);
}
