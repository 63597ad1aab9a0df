/** Name and arguments of a formula that is one call, as "SUM(1,2)"; undefined for anything else. */
export const outermostCall = (
  formula: string,
): { readonly name: string; readonly args: readonly string[] } | undefined => {
  const text = formula.replace(/^=/, '').trim();
  const name = /^[A-Za-z_][A-Za-z0-9_.]*(?=\()/.exec(text)?.[0];
  if (!name) return undefined;
  const args: string[] = [];
  let [depth, start, quote] = [0, name.length + 1, ''];
  for (let i = name.length; i < text.length; i++) {
    const character = text[i]!;
    if (quote !== '') {
      if (character === quote) quote = '';
    } else if (character === '"' || character === "'") quote = character;
    else if (character === '(' || character === '{') depth += 1;
    else if (character === ')' || character === '}') {
      depth -= 1;
      if (depth > 0) continue;
      if (i < text.length - 1) return undefined;
      const last = text.slice(start, i);
      return { name, args: args.length === 0 && last.trim() === '' ? [] : [...args, last] };
    } else if (character === ',' && depth === 1) {
      args.push(text.slice(start, i));
      start = i + 1;
    }
  }
  return undefined;
};
