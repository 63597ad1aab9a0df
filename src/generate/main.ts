import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { inflateSync } from 'node:zlib';
import { FUNCTIONS, NAMESPACE } from '../functions/index';
import { demoPlan } from './demo-plan';
import { examplesWorkbook } from './examples-workbook';
import { brokenPromises, grown, type Frozen } from './frozen';
import { ICON_SIZES, iconPng, iconRaster, iconSvg } from './icons';
import { END, functionReference, START, withReference } from './reference';

export { readBaseUrl } from './base-url';
export { functionsJson } from './functions-json';
export { packageAddIn } from './package';
export { staticPages } from './static-pages';

export interface Output {
  readonly path: string;
  /** The file as it should be, given how it is. */
  make(existing: Buffer | undefined, root: string): Buffer | Promise<Buffer>;
  isSame(existing: Buffer, made: Buffer): boolean;
}

const sameBytes = (existing: Buffer, made: Buffer): boolean => existing.equals(made);

/** Compressed bytes depend on the zlib of the machine, so pictures are compared by what they show. */
const showsIcon = (size: number) => (existing: Buffer) => {
  const data = existing.subarray(existing.indexOf('IDAT') + 4);
  return inflateSync(data).equals(iconRaster(size));
};

const readme = (existing: Buffer | undefined): Buffer => {
  const page = withReference(existing?.toString('utf8') ?? '', functionReference(FUNCTIONS, NAMESPACE));
  if (page === undefined) throw new Error(`README.md must hold the lines "${START}" and "${END}".`);
  return Buffer.from(page);
};

const frozenIds = (existing: Buffer | undefined): Buffer => {
  const frozen = JSON.parse(existing?.toString('utf8') ?? '{}') as Frozen;
  const broken = brokenPromises(frozen, FUNCTIONS);
  if (broken.length > 0) throw new Error(`Released functions changed: ${broken.join('; ')}.`);
  const lines = Object.entries(grown(frozen, FUNCTIONS)).map(
    ([id, args]) => `  ${JSON.stringify(id)}: [${args.map((arg) => JSON.stringify(arg)).join(', ')}]`,
  );
  return Buffer.from(`{\n${lines.join(',\n')}\n}\n`);
};

/** Every file of the repository that is made from something else in it. */
export const OUTPUTS: readonly Output[] = [
  { path: 'README.md', make: readme, isSame: sameBytes },
  { path: 'test/generate/frozen-ids.json', make: frozenIds, isSame: sameBytes },
  {
    path: 'assets/demo-plan.xlsx',
    make: async (_, root) => Buffer.from(await demoPlan(root)),
    isSame: sameBytes,
  },
  {
    path: 'assets/examples.xlsx',
    make: async () => Buffer.from(await examplesWorkbook()),
    isSame: sameBytes,
  },
  { path: 'assets/icons/icon.svg', make: () => Buffer.from(iconSvg()), isSame: sameBytes },
  ...ICON_SIZES.map((size) => ({
    path: `assets/icons/icon-${size}.png`,
    make: () => iconPng(size),
    isSame: showsIcon(size),
  })),
];

/** Writes what has changed, or with `check` only tells. Returns the paths that differ. */
export const generate = async (root: string, check: boolean): Promise<string[]> => {
  const changed: string[] = [];
  for (const { path, make, isSame } of OUTPUTS) {
    const file = join(root, path);
    const existing = existsSync(file) ? readFileSync(file) : undefined;
    const made = await make(existing, root);
    if (existing && isSame(existing, made)) continue;
    if (!check) writeFileSync(file, made);
    changed.push(path);
  }
  return changed;
};
