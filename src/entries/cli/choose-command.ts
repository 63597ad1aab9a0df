import { worstVerdict, type Verdict } from '../../core/verdict';
import { PARTS, stockOf } from '../../plan/choosing/candidate';
import { rankCandidates } from '../../plan/choosing/rank';
import { demandsOf } from '../../plan/choosing/rank-demands';
import { withoutType } from '../../plan/choosing/rank-several';
import { CANDIDATE_ORDERS, type CandidateOrder } from '../../plan/choosing/rank-order';
import { waysOut } from '../../plan/choosing/relax';
import { joinName } from '../../plan/join-name';
import type { Limits } from '../../plan/limits';
import type { Channel, Plan } from '../../plan/model';
import { chooseJson, chooseReport, type Choice, type ChooseReport } from './choose-report';
import { LIST_OPTIONS, openTyped } from './lists-option';
import { readMappingFile } from './mapping-file';
import { planOnDisk } from './plan-file';
import { CommandProblem, statusOfVerdict, usageProblem } from './status';
import { Pen, Progress, type Io } from './terminal';
import { languageTyped } from './typed-options';

/** Options of the command as they are typed. */
export const CHOOSE_OPTIONS = {
  channel: { type: 'string', multiple: true },
  group: { type: 'string' },
  top: { type: 'string' },
  order: { type: 'string' },
  free: { type: 'boolean', default: false },
  together: { type: 'boolean', default: false },
  language: { type: 'string' },
  json: { type: 'boolean', default: false },
  mapping: { type: 'string' },
  ...LIST_OPTIONS,
} as const;
export type ChooseValues = Readonly<Record<string, string | boolean | readonly (string | boolean)[] | undefined>>;

const USUAL_TOP = 5;

const topOf = (typed: string | undefined): number => {
  if (typed === undefined) return USUAL_TOP;
  const top = Number(typed);
  if (!Number.isInteger(top) || top < 1) throw usageProblem(`--top ${typed}: expected a whole number from 1.`);
  return top;
};
const orderOf = (typed: string | undefined): CandidateOrder => {
  const order = CANDIDATE_ORDERS.find((known) => known === (typed ?? 'margin').toLowerCase());
  if (!order) throw usageProblem(`--order ${typed}: expected ${CANDIDATE_ORDERS.join(', ')}.`);
  return order;
};

/** The channels that are asked for; a name that the plan does not have is told instead of being left out. */
const selected = (
  { channels }: Plan,
  path: string,
  names: readonly string[] | undefined,
  group: string | undefined,
): readonly Channel[] => {
  if (channels.length === 0) throw new CommandProblem(`${path}: the plan has no channels.`);
  const isOneOf = (typed: string) => channels.some(({ id }) => joinName(id) === joinName(typed));
  const unknown = names?.find((name) => !isOneOf(name));
  if (unknown !== undefined) throw usageProblem(`--channel ${unknown}: ${path} has no channel of this name.`);
  const wanted = names?.map(joinName);
  const found = channels.filter(
    (channel) =>
      (!wanted || wanted.includes(joinName(channel.id))) &&
      (group === undefined || joinName(channel.group ?? '') === joinName(group)),
  );
  if (found.length === 0) throw usageProblem(`--group ${group}: ${path} has no such channel in this structure part.`);
  return found;
};

const askingTheSame = (channels: readonly Channel[], limits: Limits): readonly (readonly Channel[])[] =>
  demandsOf(channels, limits).map(({ channels: places }) => places.map((place) => channels[place]!));

export const chooseCommand = async (paths: readonly string[], values: ChooseValues, io: Io): Promise<number> => {
  const [path] = paths;
  if (path === undefined || paths.length > 1) throw usageProblem('choose: name one plan: a workbook or a JSON plan.');
  const text = (key: string) => values[key] as string | undefined;
  const language = languageTyped(text('language'));
  const top = topOf(text('top'));
  const order = orderOf(text('order'));
  const free = values['free'] === true ? PARTS : [];
  const mapping = text('mapping') === undefined ? undefined : await readMappingFile(text('mapping')!);
  const { plan, unread, stocked } = await planOnDisk(path, mapping, openTyped(values));
  const channels = selected(plan, path, values['channel'] as readonly string[] | undefined, text('group'));
  const stock = stockOf(plan);
  if (stock.sensors.length === 0) throw new CommandProblem(`${path}: no sensor list was found, or it has no rows.`);
  const { limits } = plan;
  const isTogether = values['together'] === true && channels.length > 1;
  const asked = isTogether ? [channels] : askingTheSame(channels, limits);
  const progress = new Progress(io);
  const choices = asked.map((own, i): Choice => {
    progress.say(`Choosing for ${own[0]!.id} (${i + 1} of ${asked.length}) …`);
    const { candidates } = rankCandidates(own, stock, limits, { order, free });
    const [open] = withoutType(candidates);
    return { channels: own, candidates, isTogether, ways: open === undefined ? undefined : waysOut(own[open]!, stock, limits, { free }) }; // prettier-ignore
  });
  progress.done();
  for (const line of stocked) io.error(`${line}\n`);
  const report: ChooseReport = { path, choices, limits, unread, top, language };
  if (values['json'] === true) {
    io.out(`${JSON.stringify(chooseJson(report), null, 1)}\n`);
    for (const line of unread) io.error(`${line}\n`);
  } else io.out(chooseReport(report, io.columns, new Pen(io.colour)));
  const best = choices.map(({ candidates }): Verdict => candidates[0]?.verdict ?? 'INCOMPLETE');
  return statusOfVerdict(worstVerdict(best));
};
