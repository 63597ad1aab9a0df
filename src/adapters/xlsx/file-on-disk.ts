import { randomUUID } from 'node:crypto';
import { constants } from 'node:fs';
import { copyFile, open, readFile, realpath, rename, rm, stat } from 'node:fs/promises';
import { basename, dirname, extname, join, resolve } from 'node:path';
import { nodeCodec } from './codec-node';
import { FILE_LIMITS, type Limits } from './limits';
import { refuse } from './refuse';
import { openWorkbook, type WorkbookFile } from './workbook-file';

export async function openFile(
  path: string,
  functionNames: readonly string[],
  limits: Limits = FILE_LIMITS,
): Promise<WorkbookFile> {
  const { size } = await stat(path).catch(() => refuse('not-found', `There is no file ${path}.`));
  if (size > limits.fileBytes)
    refuse('too-large', `${path} has more than ${Math.round(limits.fileBytes / 1_048_576)} MB.`);
  return openWorkbook(new Uint8Array(await readFile(path)), { codec: nodeCodec, functionNames, limits });
}

export interface SaveOptions {
  /** The file that was opened: it is only replaced when `inPlace` says so, and then a copy of it is kept. */
  readonly input: string;
  readonly inPlace?: boolean;
}

/**
 * Writes beside the target and renames, so that the target is always either the old file or the new one, whole.
 * Returns where the copy of a replaced input lies.
 */
export async function saveFile(file: WorkbookFile, path: string, options: SaveOptions): Promise<string | undefined> {
  const target = await realpath(path).catch(() => resolve(path));
  const isInput = target === (await realpath(options.input).catch(() => resolve(options.input)));
  if (isInput && !options.inPlace)
    refuse('occupied', `${path} is the file that was read. Name another file, or ask to replace it in place.`);
  if (extname(target).toLowerCase() !== extname(options.input).toLowerCase())
    refuse(
      'unsupported',
      `The file must keep its ending ${extname(options.input)}: programs refuse it under another one.`,
    );
  const bytes = file.save();
  const backup = isInput ? await backUp(target) : undefined;
  const beside = join(dirname(target), `.${basename(target)}.${randomUUID()}.part`);
  try {
    const mode = isInput ? (await stat(target)).mode : 0o666;
    const handle = await open(beside, 'wx', mode);
    try {
      await handle.writeFile(bytes);
      await handle.sync();
    } finally {
      await handle.close();
    }
    await rename(beside, target);
  } catch (error) {
    await rm(beside, { force: true });
    throw error;
  }
  return backup;
}

/** Copies a file to a free name like `plan.before-1.xlsx`, never over anything. */
async function backUp(path: string): Promise<string> {
  const extension = extname(path);
  const stem = path.slice(0, path.length - extension.length);
  for (let n = 1; ; n++) {
    const copy = `${stem}.before-${n}${extension}`;
    try {
      await copyFile(path, copy, constants.COPYFILE_EXCL);
      return copy;
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== 'EEXIST') throw error;
    }
  }
}
