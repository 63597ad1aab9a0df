// Jest runs CommonJS only; packages that ship nothing but ES modules are bundled once and kept in .cache.
const { existsSync, mkdirSync, readFileSync, writeFileSync } = require('node:fs');
const path = require('node:path');
const { buildSync } = require('esbuild');

const root = path.resolve(__dirname, '..');
const folder = path.join(root, '.cache/bundled');

const bundle = (name) => {
  const { version } = JSON.parse(readFileSync(path.join(root, 'node_modules', name, 'package.json')));
  const outfile = path.join(folder, `${name}-${version}.cjs`);
  if (existsSync(outfile)) return outfile;
  const { outputFiles } = buildSync({
    stdin: { contents: `module.exports = require('${name}')`, resolveDir: root },
    bundle: true,
    format: 'cjs',
    platform: 'node',
    write: false,
  });
  mkdirSync(folder, { recursive: true });
  writeFileSync(outfile, outputFiles[0].contents);
  return outfile;
};

/** A moduleNameMapper entry for each package. */
module.exports = (names) => Object.fromEntries(names.map((name) => [`^${name}$`, bundle(name)]));
