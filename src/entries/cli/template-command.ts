import { stat } from 'node:fs/promises';
import { extname } from 'node:path';
import { STATUS, usageProblem } from './status';
import type { Io } from './terminal';
import { writeWhole } from './write-file';

/** Writes an empty plan, never over an existing file. */
export const templateCommand = async (paths: readonly string[], io: Io): Promise<number> => {
  const [path] = paths;
  if (path === undefined || paths.length > 1)
    throw usageProblem('template: expected one file name that ends in .xlsx.');
  if (extname(path).toLowerCase() !== '.xlsx')
    throw usageProblem(`template: read "${path}", expected a file name that ends in .xlsx.`);
  if (await stat(path).catch(() => undefined))
    throw usageProblem(`template: ${path} exists. Name another file; nothing is replaced.`);
  await writeWhole(path, await (await import('./template-file')).templateFile());
  io.out(
    `Wrote ${path}: an empty plan with the sheets Channels, Sensors, Mounts, Cables, Inputs, Limits and Plan notes.\n`,
  );
  return STATUS.good;
};
