/** Breaks a text at blanks into lines of at most so many characters; a longer word keeps its line. */
export const wrap = (text: string, width: number): string[] => {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    if (line !== '' && line.length + 1 + word.length > width) {
      lines.push(line);
      line = word;
    } else line = line === '' ? word : `${line} ${word}`;
  }
  return [...lines, line];
};

/** A text with the lines after the first moved right. */
export const hanging = (first: string, text: string, width: number): string => {
  const indent = ' '.repeat(first.length);
  return wrap(text, Math.max(20, width - first.length))
    .map((line, i) => (i === 0 ? first : indent) + line)
    .join('\n');
};
