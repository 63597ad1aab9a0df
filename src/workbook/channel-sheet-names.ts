/** Remembers the sheets that were made for channels, so that one of the user's is never taken for ours. */
export const CHANNEL_SHEETS_SETTING = 'channelwright.channel-sheets';
const LONGEST_NAME = 31;

export const ownChannelSheets = (json: string | undefined): readonly string[] => {
  try {
    const kept: unknown = JSON.parse(json ?? '[]');
    return Array.isArray(kept) ? kept.filter((name) => typeof name === 'string') : [];
  } catch {
    return [];
  }
};

/** "Channel W001", or with a number behind where a sheet of the user's has that name. */
export const channelSheetName = (sheets: readonly string[], ours: readonly string[], id: string): string => {
  const taken = new Set(sheets.map((name) => name.toLowerCase()));
  const own = new Set(ours);
  const stem = `Channel ${id.replace(/[[\]:*?/\\']/g, '-')}`;
  for (let n = 1; ; n++) {
    const end = n === 1 ? '' : ` ${n}`;
    const name = stem.slice(0, LONGEST_NAME - end.length) + end;
    if (own.has(name) || !taken.has(name.toLowerCase())) return name;
  }
};
