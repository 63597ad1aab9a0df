import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'esbuild';

/** Bundles main.ts for Node and returns what it exports, so that scripts and the build need no compiled copy. */
export const loadGenerators = async () => {
  const folder = await mkdtemp(join(tmpdir(), 'channelwright-generate-'));
  const outfile = join(folder, 'main.mjs');
  try {
    await build({
      entryPoints: [fileURLToPath(new URL('./main.ts', import.meta.url))],
      outfile,
      bundle: true,
      platform: 'node',
      format: 'esm',
      target: 'node20',
      logLevel: 'warning',
    });
    return await import(pathToFileURL(outfile).href);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
};
