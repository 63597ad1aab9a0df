import { fileURLToPath } from 'node:url';
import { loadGenerators } from './load.mjs';

const check = process.argv.includes('--check');
const root = fileURLToPath(new URL('../..', import.meta.url));

try {
  const { generate } = await loadGenerators();
  const changed = await generate(root, check);
  if (changed.length === 0) console.log('Generated files are up to date.');
  else if (check) {
    console.error(`Out of date: ${changed.join(', ')}. Run "npm run generate".`);
    process.exitCode = 1;
  } else console.log(`Wrote ${changed.join(', ')}.`);
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
}
