import { randomUUID } from 'node:crypto';
import { open, rename, rm } from 'node:fs/promises';
import { basename, dirname, join, resolve } from 'node:path';
import { CommandProblem, STATUS } from './status';

/** Writes beside the target and renames: the target is the old file or the new one, whole. */
export const writeWhole = async (path: string, content: string | Uint8Array): Promise<void> => {
  const target = resolve(path);
  const beside = join(dirname(target), `.${basename(target)}.${randomUUID()}.part`);
  try {
    const handle = await open(beside, 'wx');
    try {
      await handle.writeFile(content);
      await handle.sync();
    } finally {
      await handle.close();
    }
    await rename(beside, target);
  } catch (error) {
    await rm(beside, { force: true });
    throw new CommandProblem(`${path} cannot be written: ${reasonOf(error)}`, STATUS.usage);
  }
};

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'its folder does not exist.',
  EACCES: 'it may not be written here.',
  EPERM: 'it may not be written here.',
  EROFS: 'the disk is read-only.',
  ENOSPC: 'the disk is full.',
  EISDIR: 'it is a folder.',
  ENOTDIR: 'a part of its path is no folder.',
};
export const reasonOf = (error: unknown): string =>
  REASONS[(error as NodeJS.ErrnoException).code ?? ''] ?? (error instanceof Error ? error.message : String(error));
