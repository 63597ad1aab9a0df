import { FUNCTIONS, functionByName, NAMESPACE } from '../../functions/index';

/** How sure it is that a name in a formula means a function of ours. */
export type NameKind = 'ours' | 'ours, spelt otherwise' | 'perhaps ours' | 'unknown to this version';

export interface NamedCall {
  /** Place in the formula, with whatever stands before the name and belongs to it: "@", "[2]!". */
  readonly start: number;
  readonly end: number;
  readonly kind: NameKind;
  /** Without the namespace; for a name that this version does not know, as written. */
  readonly name: string;
}

/** Programs keep functions that they did not know under names such as _xlfn.CHAN.X, _xldudf_CHAN_X or _xll.CHAN.X. */
const ADDED = /^(?:_xl(?:fn|ws|udf|l)\.|_xldudf_|com\.sun\.star\.sheet\.addin\.)+/i;
const OWN = new RegExp(`^${NAMESPACE}[._]`, 'i');
/** A text, a quoted sheet or workbook with its "!", another workbook's number with its "!", or a called name. */
const PART = /"(?:[^"]|"")*"|@?(?:(?:'(?:[^']|'')*'|\[\d+\])!)?([A-Za-z_][A-Za-z0-9_.]*)(?=\s*\()|'(?:[^']|'')*'/g;

const flat = (name: string): string => name.toUpperCase().replaceAll('.', '_');
const byFlatName = new Map(FUNCTIONS.map(({ name }) => [flat(name), name]));

/** Names of several words only: one word such as READ may be anybody's. */
const afterAnyPrefix = (bare: string): string | undefined => {
  const words = flat(bare).split('_');
  for (let from = 0; from <= 1 && words.length - from >= 2; from++) {
    const name = byFlatName.get(words.slice(from).join('_'));
    if (name?.includes('.')) return name;
  }
  return undefined;
};

const callOf = (written: string): { kind: NameKind; name: string } | undefined => {
  const bare = written.replace(ADDED, '');
  if (!OWN.test(bare)) {
    const name = afterAnyPrefix(bare);
    return name === undefined ? undefined : { kind: 'perhaps ours', name };
  }
  const rest = bare.replace(OWN, '');
  const name = byFlatName.get(flat(rest));
  if (name === undefined) return { kind: 'unknown to this version', name: rest };
  return { kind: written === `${NAMESPACE}.${name}` ? 'ours' : 'ours, spelt otherwise', name };
};

/** Every call in a formula that names a function of ours, however a program may have spelt it. */
export const namedCalls = (formula: string): readonly NamedCall[] => {
  const calls: NamedCall[] = [];
  for (const match of formula.matchAll(PART)) {
    const [text, written] = match;
    if (written === undefined) continue;
    const call = callOf(written);
    if (call) calls.push({ ...call, start: match.index, end: match.index + text.length });
  }
  return calls;
};

/** The formula with every name of ours as this version spells it. Names that it does not know stay as they are. */
export const respelt = (formula: string): string => {
  let out = '';
  let at = 0;
  for (const { start, end, kind, name } of namedCalls(formula)) {
    if (kind === 'unknown to this version') continue;
    out += `${formula.slice(at, start)}${NAMESPACE}.${name}`;
    at = end;
  }
  return out + formula.slice(at);
};

export const usesOwnFunctions = (formula: string): boolean =>
  namedCalls(formula).some(({ kind }) => kind === 'ours' || kind === 'ours, spelt otherwise');

/** Whether one of the calls is to a function whose result fills several cells. */
export const mayFillCells = (formula: string): boolean =>
  namedCalls(formula).some(({ name }) => {
    const kind = functionByName(name)?.result.kind;
    return kind === 'row' || kind === 'block';
  });
