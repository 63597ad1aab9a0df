import { parseArgs } from 'node:util';
import { version } from '../../package.json';
import { nearestName } from '../core/text/nearest';
import { assignCommand, assignTyped } from './cli/assign-command';
import { checkCommand, type CheckOptions } from './cli/check-command';
import { CHOOSE_OPTIONS, chooseCommand, type ChooseValues } from './cli/choose-command';
import { COMPARE_OPTIONS, compareCommand, type CompareValues } from './cli/compare-command';
import { evalCommand } from './cli/eval-command';
import { EXPORT_OPTIONS, exportCommand, type ExportValues } from './cli/export-command';
import { functionsCommand } from './cli/functions-command';
import { LIST_OPTIONS, openTyped } from './cli/lists-option';
import { SHARE_OPTIONS, shareCommand, type ShareValues } from './cli/share-command';
import { TAKE_BACK_OPTIONS, takeBackCommand, type TakeBackValues } from './cli/take-back-command';
import { CommandProblem, STATUS, usageProblem } from './cli/status';
import { languageTyped, paperTyped } from './cli/typed-options';
import { templateCommand } from './cli/template-command';
import { processIo, type Io } from './cli/terminal';
import { USAGE, usageOf } from './cli/usage';
import type { OpenOptions } from './cli/workbook-plan';

export { processIo };

const FLAG = { type: 'boolean', default: false } as const;
const TEXT = { type: 'string' } as const;

/** Options by command. Plain words, each with one meaning everywhere. */
export const OPTIONS = {
  check: {
    output: { ...TEXT, short: 'o' },
    'in-place': FLAG,
    values: FLAG,
    json: FLAG,
    report: TEXT,
    mapping: TEXT,
    language: TEXT,
    paper: TEXT,
    'all-plots': FLAG,
    sheet: TEXT,
    'plan-notes': FLAG,
    ...LIST_OPTIONS,
  },
  assign: {
    output: { ...TEXT, short: 'o' },
    spare: TEXT,
    pinned: TEXT,
    inputs: TEXT,
    'test-end': TEXT,
    'allow-warn': FLAG,
    'allow-incomplete': FLAG,
    roving: FLAG,
    parts: FLAG,
    time: TEXT,
    ...LIST_OPTIONS,
    language: TEXT,
    json: FLAG,
    mapping: TEXT,
  },
  choose: CHOOSE_OPTIONS,
  compare: COMPARE_OPTIONS,
  export: EXPORT_OPTIONS,
  share: SHARE_OPTIONS,
  'take-back': TAKE_BACK_OPTIONS,
  eval: { json: FLAG },
  functions: { json: FLAG, language: TEXT },
  template: {},
} as const;
type Command = keyof typeof OPTIONS;

const parse = (command: Command, args: readonly string[]) => {
  try {
    return parseArgs({ args: [...args], options: { ...OPTIONS[command] }, allowPositionals: true, strict: true });
  } catch (error) {
    const sentence = ((error as Partial<Error>).message ?? String(error)).split('. ')[0]!;
    const typed = /^Unknown option '--([^']+)'/.exec(sentence)?.[1];
    const nearest = typed === undefined ? undefined : nearestName(typed, Object.keys(OPTIONS[command]));
    const meant = nearest === undefined ? '' : ` Did you mean --${nearest}?`;
    throw usageProblem(`${command}: ${sentence}.${meant} "channelwright ${command} --help" lists the options.`);
  }
};

const meantCommand = (typed: string): string => {
  const nearest = nearestName(typed, Object.keys(OPTIONS));
  return nearest === undefined ? '' : `did you mean ${nearest}? `;
};

const checkTyped = (
  paths: readonly string[],
  text: (key: string) => string | undefined,
  isOn: (key: string) => boolean,
  open: OpenOptions,
): CheckOptions => ({
  paths,
  output: text('output'),
  inPlace: isOn('in-place'),
  asValues: isOn('values'),
  json: isOn('json'),
  report: text('report'),
  mapping: text('mapping'),
  open,
  language: languageTyped(text('language')),
  paper: paperTyped(text('paper')),
  planNotes: isOn('plan-notes'),
  plots: isOn('all-plots') ? 'all' : 'open',
  sheets: (text('sheet') ?? '').split(',').filter((name) => name.trim() !== ''),
});

/** Help and version; undefined for anything else. */
const aboutItself = (command: string | undefined, io: Io): number | undefined => {
  if (command === undefined || command === 'help' || command === '--help' || command === '-h') {
    (command === undefined ? io.error : io.out)(USAGE);
    return command === undefined ? STATUS.usage : STATUS.good;
  }
  if (command === '--version') {
    io.out(`${version}\n`);
    return STATUS.good;
  }
  return undefined;
};

const run = async (argv: readonly string[], io: Io): Promise<number> => {
  const [command, ...rest] = argv;
  const about = aboutItself(command, io);
  if (about !== undefined || command === undefined) return about ?? STATUS.usage;
  if (!Object.hasOwn(OPTIONS, command))
    throw usageProblem(
      `there is no command "${command}"; ${meantCommand(command)}expected ${Object.keys(OPTIONS).join(', ')} or help.`,
    );
  if (rest.includes('--help') || rest.includes('-h')) {
    io.out(`${usageOf(command)}\n"channelwright help" tells of all commands, exit statuses and mappings.\n`);
    return STATUS.good;
  }
  // A formula may begin with a minus sign, which is no option.
  if (command === 'eval')
    return evalCommand(
      rest.filter((arg) => arg !== '--json' && arg !== '--'),
      rest.includes('--json'),
      io,
    );
  const { values, positionals } = parse(command as Command, rest);
  const text = (key: string) => (values as Record<string, unknown>)[key] as string | undefined;
  const isOn = (key: string) => (values as Record<string, unknown>)[key] === true;
  switch (command as Exclude<Command, 'eval'>) {
    case 'check':
      return checkCommand(checkTyped(positionals, text, isOn, openTyped(values)), io);
    case 'assign':
      return assignCommand(assignTyped(positionals, text, isOn, openTyped(values)), io);
    case 'choose':
      return chooseCommand(positionals, values as ChooseValues, io);
    case 'compare':
      return compareCommand(positionals, values as CompareValues, io);
    case 'export':
      return exportCommand(positionals, values as ExportValues, io);
    case 'share':
      return shareCommand(positionals, values as ShareValues, io);
    case 'take-back':
      return takeBackCommand(positionals, values as TakeBackValues, io);
    case 'functions':
      return functionsCommand(isOn('json'), io, text('language'));
    case 'template':
      return templateCommand(positionals, io);
  }
};

/** Runs one command and returns the exit status. Problems become sentences; nothing is thrown. */
export const main = async (argv: readonly string[], io: Io): Promise<number> => {
  try {
    return await run(argv, io);
  } catch (error) {
    const known = error instanceof CommandProblem;
    const sentence = error instanceof Error ? error.message : String(error);
    io.error(`channelwright: ${known ? '' : 'this should not have happened: '}${sentence}\n`);
    return known ? error.status : STATUS.broken;
  }
};
