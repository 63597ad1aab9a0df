/** Whether a number format shows a date or a time of day. */
export const showsDate = (code: string): boolean => {
  const bare = code
    .slice(0, 1000)
    .replace(/"[^"]*("|$)/g, '')
    .replace(/\\./g, '')
    .replace(/_./g, '')
    .replace(/\*./g, '')
    .replace(/\[(?!h+\]|m+\]|s+\])[^\]]*\]/gi, '');
  return /[ymdhs]/i.test((bare.split(';')[0] ?? '').replace(/general|standard/gi, ''));
};
