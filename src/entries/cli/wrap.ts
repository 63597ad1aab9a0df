import { wrap } from '../../core/wrap';

/** A text with the lines after the first moved right. */
export const hanging = (first: string, text: string, width: number): string => {
  const indent = ' '.repeat(first.length);
  return wrap(text, Math.max(20, width - first.length))
    .map((line, i) => (i === 0 ? first : indent) + line)
    .join('\n');
};
