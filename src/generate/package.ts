import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join, relative, sep } from 'node:path';
import { zipSync, type Zippable } from 'fflate';
import { readBaseUrl } from './base-url';
import { hostingNote } from './hosting-note';
import { manifestProblems } from './manifest-check';
import { addressesIn, packagedManifest } from './package-manifest';

export interface PackageRequest {
  /** A finished production build. */
  readonly dist: string;
  readonly out: string;
  readonly baseUrl: string | undefined;
  /** Of package.json. */
  readonly version: string;
}
export type Packaged =
  | {
      readonly ok: true;
      readonly base: string;
      readonly folder: string;
      readonly zip: string;
      readonly files: readonly string[];
    }
  | { readonly ok: false; readonly problems: readonly string[] };

type Files = ReadonlyMap<string, Buffer>;

/** What pages ask for by name, so that it must stay beside them. */
const STAYS = /\.(html|xml|xlsx|svg|wasm|txt)$|^solver\.js$/;
/** The pane compares the list beside its page with the functions that it knows, to notice an old copy. */
const ALSO_BESIDE = 'functions.json';
const ICONS = /^assets\//;

const filesBelow = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => statSync(join(folder, name)).isFile())
    .map((name) => name.split(sep).join('/'))
    .filter((name) => !name.startsWith('.'))
    .sort();

const sha256 = (content: Uint8Array | string): string => createHash('sha256').update(content).digest('hex');

/** The folder of this version's bundles: another content has another name, so that it may be kept for ever. */
const versionFolder = (version: string, bundles: Files): string => {
  const hash = createHash('sha256');
  for (const [name, content] of bundles) hash.update(`${name}\n${content.length}\n`).update(content);
  return `v${version}-${hash.digest('hex').slice(0, 8)}`;
};

/** Pages name their scripts and style sheets relatively; those have moved. */
const movedPage = (page: string, moved: ReadonlyMap<string, string>): string =>
  page.replace(/(\s(?:src|href)=")([\w./-]+)"/g, (whole, start: string, path: string) => {
    const place = moved.get(path);
    return place === undefined ? whole : `${start}${place}"`;
  });

const pngSize = (content: Buffer | undefined) =>
  content && content.toString('latin1', 1, 4) === 'PNG'
    ? { width: content.readUInt32BE(16), height: content.readUInt32BE(20) }
    : undefined;

/** What would not work once it is served, in words. */
const problemsOf = (files: Files, base: string): string[] => {
  const manifest = files.get('manifest.xml')?.toString('utf8') ?? '';
  const path = new URL(base).pathname;
  const inside = (url: string) => (url.startsWith(base) ? url.slice(base.length) : undefined);
  return [
    ...manifestProblems(manifest, { pngSize: (asked) => pngSize(files.get(`/${asked}`.slice(path.length))) }),
    ...addressesIn(manifest)
      .filter((url) => !files.has(inside(url) ?? ''))
      .map((url) => `manifest.xml names ${url}, which the package does not hold`),
    ...[...files]
      .filter(([, content]) => content.includes('localhost:3000'))
      .map(([name]) => `${name} still names the development address`),
  ];
};

const assemble = (dist: string, base: string, version: string): Map<string, Buffer> => {
  const built = new Map(filesBelow(dist).map((name) => [name, readFileSync(join(dist, name))]));
  const bundles = new Map([...built].filter(([name]) => !STAYS.test(name) && !ICONS.test(name)));
  const folder = versionFolder(version, bundles);
  const moved = new Map([...bundles.keys()].map((name) => [name, `${folder}/${name}`]));
  const files = new Map<string, Buffer>();
  for (const [name, content] of built) {
    const place = moved.get(name) ?? name;
    if (name === 'manifest.xml')
      files.set(name, Buffer.from(packagedManifest(content.toString('utf8'), base, version, moved)));
    else if (name.endsWith('.html')) files.set(name, Buffer.from(movedPage(content.toString('utf8'), moved)));
    else if (/^functions(\.\w+)?\.json$/.test(name)) {
      const list = Buffer.from(content.toString('utf8').replaceAll('https://localhost:3000/', base));
      files.set(place, list);
      if (name === ALSO_BESIDE) files.set(name, list);
    } else files.set(place, content);
  }
  files.set('HOSTING.txt', Buffer.from(hostingNote(base, folder, version)));
  return files;
};

/** One fixed date for all parts: equal content gives an equal archive. */
const archive = (files: Files): Uint8Array => {
  const parts: Zippable = {};
  for (const [name, content] of [...files].sort(([a], [b]) => (a < b ? -1 : 1)))
    parts[name] = [content, { level: 9, mtime: new Date(2026, 0, 1) }];
  return zipSync(parts);
};

const isOurs = (out: string): boolean => {
  const inside = readdirSync(out);
  return inside.length === 0 || inside.includes('HOSTING.txt');
};

/**
 * Makes the folder that a static host serves, and an archive of it beside it. Nothing is written unless the manifest
 * breaks no rule and all that it names is there. A folder that holds something else is left alone.
 */
export const packageAddIn = ({ dist, out, baseUrl, version }: PackageRequest): Packaged => {
  const base = readBaseUrl(baseUrl);
  if (!base.ok) return { ok: false, problems: [base.reason] };
  if (existsSync(out) && (!statSync(out).isDirectory() || !isOurs(out)))
    return { ok: false, problems: [`${out} holds something that is no package. Name a new folder with --out.`] };
  const files = assemble(dist, base.url, version);
  const problems = problemsOf(files, base.url);
  if (problems.length > 0) return { ok: false, problems };
  const names = [...files.keys()].sort();
  files.set('SHA256SUMS', Buffer.from(names.map((name) => `${sha256(files.get(name)!)}  ${name}\n`).join('')));
  rmSync(out, { recursive: true, force: true });
  for (const [name, content] of files) {
    mkdirSync(dirname(join(out, name)), { recursive: true });
    writeFileSync(join(out, name), content);
  }
  const zip = `${out}.zip`;
  writeFileSync(zip, archive(files));
  return { ok: true, base: base.url, folder: relative('.', out) || out, zip, files: [...files.keys()].sort() };
};
