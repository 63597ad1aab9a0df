import type { Language } from '../../core/language';
import { envelopeOf } from '../../plan/choosing/envelope';
import { askedOfSupplier } from '../../plan/choosing/envelope-words';
import { groupedBy, shortList, type Line, type Section } from './section';
import type { Reported } from './verdict-sections';
import { REPORT_WORDS } from './words';

/** More different requests than these nobody sends out. */
const MOST_ASKED = 20;

/** What a sensor must satisfy where the one of the plan does not pass. */
export const askedSection = ({ checks, limits }: Reported, language: Language): Section => {
  const words = REPORT_WORDS[language];
  const open = checks.filter(({ verdict }) => verdict === 'FAIL');
  const groups = groupedBy(open, ({ channel }) =>
    askedOfSupplier(envelopeOf(channel, limits).bounds, language).join('; '),
  );
  const lines = [...groups]
    .filter(([asked]) => asked !== '')
    .map(([asked, of]): Line => [shortList(of.map(({ channel }) => channel.id), words.more), asked]); // prettier-ignore
  const rest = lines.length - MOST_ASKED;
  return {
    key: 'asked',
    ...words.asked,
    columns: [],
    lines: [...lines.slice(0, MOST_ASKED), ...(rest > 0 ? [['', words.asked.more(rest)]] : [])],
  };
};
