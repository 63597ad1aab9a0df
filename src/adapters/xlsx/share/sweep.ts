import { removeContentType } from '../content-types';
import type { Package } from '../package';
import { relationsOf, relationsPart, removeRelation, type Relation } from '../relations';

const TYPES = '[Content_Types].xml';

/** Removes relations of these kinds from a part and tells how many there were. */
export const dropRelations = (
  pkg: Package,
  part: string,
  isGone: (relation: Relation) => boolean,
): readonly Relation[] => {
  const gone = relationsOf(pkg, part).filter(isGone);
  for (const { id } of gone) removeRelation(pkg, part, id);
  return gone;
};

/** Removes every part that nothing leads to any more, with its content type and its relations. */
export const sweep = (pkg: Package): void => {
  const reached = new Set<string>();
  const waiting = [''];
  for (let part = waiting.pop(); part !== undefined; part = waiting.pop())
    for (const { target, external } of relationsOf(pkg, part)) {
      if (external || !pkg.has(target) || reached.has(target.toLowerCase())) continue;
      reached.add(target.toLowerCase());
      waiting.push(target);
    }
  const kept = new Set([TYPES.toLowerCase(), relationsPart('').toLowerCase(), ...reached]);
  for (const part of reached) kept.add(relationsPart(part).toLowerCase());
  for (const name of pkg.names()) {
    if (kept.has(name.toLowerCase())) continue;
    removeContentType(pkg, name);
    pkg.remove(name);
  }
};
