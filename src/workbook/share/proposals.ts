import { foldWords } from '../../plan/heading-text';
import { TABLES } from '../../plan/fields';
import { listsOf } from '../channel-lists';
import type { SheetInfo } from '../port';
import type { RecognisedTables } from '../recognise';
import type { ColumnPlace } from './choices';

/** Why a column or sheet is proposed: common practice, the person decides. */
export type Privacy = 'price' | 'serial' | 'remark' | 'supplier' | 'internal';

/** Beginnings of folded words in English, German, French, Spanish and Italian. */
const WORDS: Readonly<Record<Privacy, RegExp>> = {
  price: /^(price|cost|rental|preis|kosten|einkauf|miete|tarif|prix|cout|precio|coste|costo|prezz)/,
  serial: /^(serial|sn$|s\.?n\.?$|inventory|asset|seriennummer|seriennr|serien|inventar|serie$|inventaire|inventari)/,
  remark:
    /^(remark|comment|note|notes|memo|bemerkung|anmerkung|kommentar|notiz|remarque|commentaire|observacion|nota|notas|comentario|osservazion|commento|note$)/,
  supplier: /^(supplier|vendor|lieferant|hersteller|fournisseur|proveedor|fornitor)/,
  internal:
    /^(internal|private|confidential|intern$|interne|internes|privat|vertraulich|prive|confidentiel|interno|interna|privado|riservat|confidencial)/,
};

export const privacyOf = (heading: string): Privacy | undefined => {
  const words = foldWords(heading);
  return (Object.keys(WORDS) as Privacy[]).find((kind) => words.some((word) => WORDS[kind].test(word)));
};

export interface ColumnProposal extends ColumnPlace {
  readonly heading: string;
  readonly why: Privacy;
}
export interface ShareProposals {
  readonly columns: readonly ColumnProposal[];
  readonly sheets: readonly { readonly sheet: string; readonly why: Privacy | 'hidden' }[];
}

/** Every column with a heading, of every list that was recognised. */
export const headedColumns = (tables: RecognisedTables): readonly (ColumnPlace & { readonly heading: string })[] =>
  TABLES.flatMap((name) => listsOf(tables, name)).flatMap(({ sheet, headings }) =>
    [...headings].filter(([, text]) => text.trim() !== '').map(([column, heading]) => ({ sheet, column, heading })),
  );

/** What is usually not meant for a customer. Never left out by itself: a person ticks it. */
export const shareProposals = (
  tables: RecognisedTables,
  sheets: readonly Pick<SheetInfo, 'name' | 'visible'>[],
): ShareProposals => ({
  columns: headedColumns(tables).flatMap((place) => {
    const why = privacyOf(place.heading);
    return why ? [{ ...place, why }] : [];
  }),
  sheets: sheets.flatMap<ShareProposals['sheets'][number]>(({ name: sheet, visible }) => {
    const why = privacyOf(sheet);
    if (why === 'price' || why === 'internal' || why === 'supplier') return [{ sheet, why }];
    return visible ? [] : [{ sheet, why: 'hidden' }];
  }),
});
