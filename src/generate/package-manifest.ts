const DEVELOPMENT = 'https://localhost:3000';

/**
 * "0.1.0" becomes "1.1.0.0": manifests below 1.0 are refused, so the first group is one more than the program's. Later
 * versions of the program have later versions of the manifest.
 */
export const manifestVersion = (version: string): string => {
  const [, major, minor, patch] = /^(\d+)\.(\d+)\.(\d+)$/.exec(version) ?? [];
  if (major === undefined) throw new Error(`package.json: version ${version} is not three numbers.`);
  return `${Number(major) + 1}.${minor}.${patch}.0`;
};

/**
 * The manifest for another address. Files that moved, by their path in the development build, get their new place. A
 * domain is named without the folder.
 */
export const packagedManifest = (
  manifest: string,
  base: string,
  version: string,
  moved: ReadonlyMap<string, string>,
): string =>
  manifest
    .replace(/<Version>[^<]*</, `<Version>${manifestVersion(version)}<`)
    .replaceAll(`<AppDomain>${DEVELOPMENT}</AppDomain>`, `<AppDomain>${new URL(base).origin}</AppDomain>`)
    .replace(new RegExp(`${DEVELOPMENT}/([^"<\\s]*)`, 'g'), (_, path: string) => `${base}${moved.get(path) ?? path}`);

/** Every address in a manifest that is to be asked for: no namespaces of XML, no domains. */
export const addressesIn = (manifest: string): readonly string[] =>
  [...manifest.matchAll(/DefaultValue="(https:[^"]*)"|\sValue="(https:[^"]*)"/g)].map(([, a, b]) => a ?? b ?? '');
