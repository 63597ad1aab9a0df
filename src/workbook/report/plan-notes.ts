import type { Cell } from '../../functions/define';
import type { SheetContent } from '../port';
import type { ReportWords } from './words';

export type Fact = keyof ReportWords['facts'];
export interface PlanNotes {
  readonly facts: Readonly<Partial<Record<Fact, string>>>;
  /** Lines under a heading that says assumptions: topic and text. */
  readonly assumptions: readonly (readonly [topic: string, text: string])[];
}
export const NO_NOTES: PlanNotes = { facts: {}, assumptions: [] };

/** First words of a topic, in five languages, folded. */
const TOPICS: Readonly<Record<Fact, RegExp>> = {
  object: /^(object|subject|project|gegenstand|projekt|objet|projet|objeto|proyecto|oggetto|progetto)/,
  revision: /^(revision|version|issue|rev\b|révision|revisión|revisione|ausgabe)/,
  state: /^(state|status|stand|état|estado|stato)/,
  prepared: /^(prepared|written|author|erstellt|bearbeit|établi|rédigé|preparado|elaborado|preparato|redatto)/,
  checked: /^(checked|reviewed|verified|geprüft|vérifié|contrôlé|revisado|verificado|verificato|controllato)/,
  released: /^(released|approved|freigegeben|genehmigt|approuvé|aprobado|approvato)/,
};
const ASSUMPTIONS = /^(assum|annahm|hypoth|suppos|supuest|ipotes)/;
const SHEET = /plan ?notes|notes?\b.*plan|plan-?notizen|notizen|remarks|notes du plan|notas|note/i;

export const isNotesSheet = (name: string): boolean => SHEET.test(name);

const textOf = (cell: Cell | undefined): string =>
  cell === null || cell === undefined || typeof cell === 'object' ? '' : String(cell).trim();

/** Who made the plan, its state and its assumptions, from a sheet of topics and texts beside them. */
export const readPlanNotes = ({ values }: Pick<SheetContent, 'values'>): PlanNotes => {
  const facts: Partial<Record<Fact, string>> = {};
  const assumptions: (readonly [string, string])[] = [];
  let isUnderAssumptions = false;
  for (const line of values) {
    const topic = textOf(line[0]);
    const text = textOf(line[1]);
    const folded = topic.toLowerCase();
    if (topic !== '' && text === '') isUnderAssumptions = ASSUMPTIONS.test(folded);
    else if (topic !== '' && isUnderAssumptions) assumptions.push([topic, text]);
    else if (ASSUMPTIONS.test(folded)) assumptions.push([topic, text]);
    for (const fact of Object.keys(TOPICS) as Fact[])
      if (text !== '' && !isUnderAssumptions && facts[fact] === undefined && TOPICS[fact].test(folded))
        facts[fact] = text;
  }
  return { facts, assumptions };
};

/** Facts that have a line on the sheet, whether or not somebody has filled it. */
export const factsAsked = ({ values }: Pick<SheetContent, 'values'>): ReadonlySet<Fact> => {
  const topics = values.map((line) => textOf(line[0]).toLowerCase());
  return new Set((Object.keys(TOPICS) as Fact[]).filter((fact) => topics.some((topic) => TOPICS[fact].test(topic))));
};
