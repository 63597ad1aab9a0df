import type { Spreadsheet } from '../port';

/** The newest version that wrote into the workbook; kept in the workbook, so that an older one notices. */
export const WRITER_SETTING = 'channelwright.writtenBy';

const numbers = (version: string): number[] => version.split(/[.+-]/).slice(0, 3).map(Number);

/** Below 0 when `a` is older than `b`; 0 when one of them is no version. */
export const compareVersions = (a: string, b: string): number => {
  const [left, right] = [numbers(a), numbers(b)];
  if ([...left, ...right].some((n) => !Number.isInteger(n))) return 0;
  const at = [0, 1, 2].find((i) => (left[i] ?? 0) !== (right[i] ?? 0));
  return at === undefined ? 0 : (left[at] ?? 0) - (right[at] ?? 0);
};

export const writerOf = async (spreadsheet: Spreadsheet): Promise<string | undefined> => {
  const json = await spreadsheet.getSetting(WRITER_SETTING);
  try {
    const version: unknown = json === undefined ? undefined : JSON.parse(json);
    return typeof version === 'string' ? version : undefined;
  } catch {
    return undefined;
  }
};

/** The same spreadsheet; what is written through it leaves this version's number in the workbook, never a lower one. */
export const rememberingWriter = (spreadsheet: Spreadsheet, version: string): Spreadsheet => {
  const apply: Spreadsheet['apply'] = async (changes, options) => {
    await spreadsheet.apply(changes, options);
    const known = await writerOf(spreadsheet);
    if (known === undefined || compareVersions(version, known) > 0)
      await spreadsheet.setSetting(WRITER_SETTING, JSON.stringify(version));
  };
  return new Proxy(spreadsheet, {
    get(target, key) {
      if (key === 'apply') return apply;
      const member: unknown = Reflect.get(target, key, target);
      return typeof member === 'function' ? (member.bind(target) as unknown) : member;
    },
  });
};
