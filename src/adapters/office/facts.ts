import type { HostFacts } from '../../workbook/port';
import { SETS, type OfficeHost } from './host';

/** Where functions.ts leaves how many functions it has tied to Excel; the pane runs from another script file. */
export const TIED = 'channelwrightFunctionsTied';

const tied = (): number | undefined => {
  const count: unknown = Reflect.get(globalThis, TIED);
  return typeof count === 'number' ? count : undefined;
};

export const readFacts = async (host: OfficeHost, context: Excel.RequestContext): Promise<HostFacts> => {
  const { application } = context;
  const hasSeparators = host.supports(SETS.separators);
  application.load(`calculationMode${hasSeparators ? ',decimalSeparator' : ''}`);
  await context.sync();
  return {
    program: host.program?.() ?? 'Excel',
    abilities: Object.fromEntries(Object.entries(SETS).map(([name, version]) => [name, host.supports(version)])),
    functionsKnown: tied(),
    runtime: host.sharesRuntime?.() ? 'shared' : 'separate',
    calculation: String(application.calculationMode),
    ...(hasSeparators && { separators: { decimal: application.decimalSeparator } }),
  };
};
