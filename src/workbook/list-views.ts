import type { Language } from '../core/language';
import { channelCountOf, channelLists } from './channel-lists';
import { LIST_WORDS } from './list-words';
import type { ListView } from './plan-view';
import type { Mapping, RecognisedTable } from './tables';

type WithChannels = { readonly channels?: RecognisedTable };

/** Every sheet with a channel list: those of the plan first, then those that somebody has to decide about. */
export const listViews = (tables: WithChannels, language: Language): readonly ListView[] => {
  const words = LIST_WORDS[language];
  const own = channelLists(tables);
  const further = tables.channels?.further ?? [];
  if (own.length < 2 && further.length === 0) return [];
  return [
    ...own.map((list): ListView => ({
      sheet: list.sheet,
      belongs: true,
      isAsked: false,
      note: words.channels(channelCountOf(list)),
      canChange: own.length > 1,
      at: { sheet: list.sheet, row: list.headerRow, column: list.firstColumn },
    })),
    ...further.map(({ sheet, headerRow, column, because }): ListView => ({
      sheet,
      belongs: false,
      isAsked: because === 'other columns' || because === 'same channels',
      note: because ? words.because[because] : '',
      canChange: because !== 'same sheet',
      at: { sheet, row: headerRow, column },
    })),
  ];
};

/** What was said of the lists so far, and of this one. What was taken for a part by itself is then said as well. */
export const withList = (mapping: Mapping, tables: WithChannels, sheet: string, belongs: boolean): Mapping => {
  const parts = Object.fromEntries(channelLists(tables).map((list) => [list.sheet, true]));
  const lists = { ...mapping.channels?.lists, ...parts, [sheet]: belongs };
  return { ...mapping, channels: { ...mapping.channels, lists } };
};
