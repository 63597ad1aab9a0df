/** Steps of typing between two texts: a letter more, less or other, or two neighbours changed about. */
const stepsBetween = (a: string, b: string, most: number): number => {
  if (Math.abs(a.length - b.length) > most) return most + 1;
  let before: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const isSame = a[i - 1] === b[j - 1];
      let steps = Math.min(last[j]! + 1, row[j - 1]! + 1, last[j - 1]! + (isSame ? 0 : 1));
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) steps = Math.min(steps, before[j - 2]! + 1);
      row.push(steps);
    }
    before = last;
    last = row;
  }
  return last[b.length]!;
};

const folded = (text: string): string => text.toLowerCase().replace(/[\s_/–—-]+/g, '');

/** The one name that a typing error away from `typed` could be meant; undefined when none is, or two are as near. */
export const nearestName = (typed: string, names: Iterable<string>): string | undefined => {
  const wanted = folded(typed);
  const most = Math.max(1, Math.floor(wanted.length / 5));
  let best: { name: string; steps: number; isAlone: boolean } | undefined;
  for (const name of names) {
    const steps = stepsBetween(wanted, folded(name), most);
    if (steps > most) continue;
    if (!best || steps < best.steps) best = { name, steps, isAlone: true };
    else if (steps === best.steps) best.isAlone = false;
  }
  return best?.isAlone ? best.name : undefined;
};
