import type { Language } from '../../core/language';
import { readFile } from 'node:fs/promises';
import { checkChannels } from '../../plan/check';
import { readJsonPlan } from '../../plan/json-plan';
import { describeMisread } from '../../plan/misread';
import { reportOf, type PlanReport } from './judged';
import { CommandProblem } from './status';
import { reasonOf } from './write-file';

const MOST_BYTES = 256 * 1024 * 1024;

export const parseJson = async (path: string, expected: string): Promise<unknown> => {
  const bytes = await readFile(path).catch((error: unknown) => {
    throw new CommandProblem(`${path} cannot be read: ${reasonOf(error)}`);
  });
  if (bytes.length > MOST_BYTES) throw new CommandProblem(`${path} has more than 256 MB.`);
  const text = bytes.toString('utf8').replace(/^\ufeff/, '');
  try {
    return JSON.parse(text);
  } catch (error) {
    const at = Number(/position (\d+)/.exec(reasonOf(error))?.[1] ?? NaN);
    const before = text.slice(0, at).split('\n');
    const place = Number.isNaN(at) ? '' : ` line ${before.length}, column ${before.at(-1)!.length + 1}:`;
    const read = Number.isNaN(at) ? 'a text that is not JSON' : `"${text.slice(at, at + 20).split('\n')[0]}"`;
    throw new CommandProblem(`${path}:${place} read ${text === '' ? 'nothing' : read}, expected ${expected}.`);
  }
};

/** Checks a JSON plan. What cannot be read is listed and counts as not known. */
export const checkJsonFile = async (path: string, language: Language): Promise<PlanReport> => {
  const { plan, misreads } = readJsonPlan(await parseJson(path, 'a plan as JSON'));
  const unread = misreads.map((misread) => describeMisread(misread));
  if (plan.channels.length === 0)
    throw new CommandProblem(
      [
        `${path}: the plan has no channels; expected a list "channels" or "cases" with one object per channel.`,
        ...unread,
      ].join('\n'),
    );
  const checks = checkChannels(plan.channels, plan.limits);
  return reportOf(path, 'channels', checks, plan.limits, {
    unread,
    notices: unread.map((text) => ({ text })),
    done: [],
    report: { language },
  });
};
