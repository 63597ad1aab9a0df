import { allLists, type ListResult } from '../workbook/list-statistics';
import { unseenTallies } from '../workbook/unseen-lists';

const GROUPS: readonly (readonly [name: string, sign: RegExp])[] = [
  ['English', /^\d+-en-/],
  ['German', /^\d+-de-/],
  ['French', /^\d+-fr-/],
  ['Spanish', /^\d+-es-/],
  ['Italian', /^\d+-it-/],
  ['with traps', /^trap-/],
];
const sum = (results: readonly ListResult[], count: (result: ListResult) => number): number =>
  results.reduce((total, result) => total + count(result), 0);

const ROUNDS = [
  ['first round', 'u'],
  ['second round', 'v'],
  ['third round', 'w'],
] as const;
const unseenRows = async (): Promise<string[]> => {
  const all = await unseenTallies();
  return ROUNDS.map(([name, sign]) => {
    const own = all.filter((tally) => tally.name.startsWith(sign));
    const total = (count: (tally: (typeof own)[number]) => number) => own.reduce((n, tally) => n + count(tally), 0);
    const [right, asked] = [total(({ fields }) => fields.right), total(({ fields }) => fields.asked.length)];
    const [missing, wrong] = [total(({ fields }) => fields.missing.length), total(({ fields }) => fields.wrong.length)];
    const fields = right + asked + missing + wrong;
    return `| ${[name, own.length, fields, right, asked, missing, wrong].join(' | ')} |`;
  });
};

/** How the fields of the family of channel lists are read: right, asked, not found, and wrong without a question. */
export const run = async (): Promise<void> => {
  const all = await allLists();
  const rows = [...GROUPS, ['all', /./] as const].map(([name, sign]) => {
    const own = all.filter((result) => sign.test(result.name));
    const counts = [
      own.length,
      sum(own, ({ fields }) => fields),
      sum(own, ({ right }) => right),
      sum(own, ({ asked }) => asked.length),
      sum(own, ({ missing }) => missing.length),
      sum(own, ({ wrong }) => wrong.length),
    ];
    return `| ${[name, ...counts].join(' | ')} |`;
  });
  rows.push(...(await unseenRows()));
  const head = ['', 'lists', 'fields', 'right', 'asked', 'not found', 'wrong without a question'];
  process.stdout.write(`| ${head.join(' | ')} |\n|${head.map(() => '---|').join('')}\n${rows.join('\n')}\n`);
};
