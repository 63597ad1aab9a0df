// `npm run bench`: how long the work takes, each beside a rival in the same run. Figures, never pass or fail.
import { dirname, join, resolve } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

const here = dirname(fileURLToPath(import.meta.url));
const root = resolve(here, '../..');
const wanted = process.argv.slice(2);
const PARTS = ['checks', 'files', 'workbench', 'payload', 'assign', 'lists', 'texts'];

for (const part of wanted.length > 0 ? wanted : PARTS) {
  const { build } = await import('esbuild');
  // Inside the project, so that packages are found.
  const outfile = join(root, '.cache/bench', `${part}.mjs`);
  await build({
    entryPoints: [join(here, `${part}.ts`)],
    outfile,
    bundle: true,
    platform: 'node',
    format: 'esm',
    target: 'node20',
    packages: 'external',
    absWorkingDir: root,
    logLevel: 'warning',
    // The calculation engine is for single formulas; nothing here calls it.
    plugins: [
      {
        name: 'engine-apart',
        setup: (build) => build.onResolve({ filter: /^\.\/engine$/ }, () => ({ path: './engine.mjs', external: true })),
      },
    ],
    banner: {
      js: `import { createRequire } from 'node:module'; const require = createRequire(${JSON.stringify(join(root, 'package.json'))});`,
    },
  });
  const { run } = await import(pathToFileURL(outfile).href);
  await run(root);
}
