import { cellAddress } from '../../workbook/address';
import { sectionOf, SECTION_ORDER } from './sheet-sections';
import { walkSheet } from './sheet-walk';
import { descendants, parseTree, prefixed } from './xml-tree';

/** What a worksheet must find in the parts around it. */
export interface AroundSheet {
  readonly relations: ReadonlySet<string>;
  readonly cellStyles: number;
  readonly looks: number;
}

/** Looks for the first thing in a worksheet that would make a program complain; the sheet may come in pieces. */
export class SheetCheck {
  private fault: string | undefined;
  private readonly masters = new Set<string>();
  private readonly drawings: { readonly local: string; readonly id: string }[] = [];
  private row = -1;
  private column = -1;
  private rank = -1;
  private style = { largest: 0, at: '' };
  private look = -1;

  constructor(private readonly part: string) {}

  /** A whole sheet. */
  whole(bytes: Uint8Array): this {
    this.walk(bytes, true);
    return this;
  }

  /** Some rows, between the tags of the sheet. */
  rows(framed: Uint8Array): void {
    this.walk(framed, false);
  }

  /** The sheet without its rows. */
  frame(bytes: Uint8Array): void {
    this.walk(bytes, true);
  }

  faultIn({ relations, cellStyles, looks }: AroundSheet): string | undefined {
    if (this.fault !== undefined) return this.fault;
    if (this.style.largest > 0 && this.style.largest >= cellStyles) return `cell ${this.style.at} has no format`;
    const lost = this.drawings.find(({ id }) => !relations.has(id));
    if (lost) return `${lost.local} leads nowhere`;
    return this.look >= looks ? 'a rule has no look' : undefined;
  }

  private note(what: string): void {
    this.fault ??= what;
  }

  private inOrder(local: string): void {
    const own = SECTION_ORDER.indexOf(local);
    if (own >= 0 && own < this.rank) this.note(`${local} is out of place`);
    this.rank = Math.max(this.rank, own);
  }

  private walk(bytes: Uint8Array, withSections: boolean): void {
    walkSheet(bytes, this.part, {
      data: () => withSections && this.inOrder('sheetData'),
      row: (record) => {
        if (record.row <= this.row) this.note(`row ${record.row + 1} is out of order`);
        this.row = record.row;
        this.column = -1;
      },
      cell: (cell) => {
        if (cell.column <= this.column) this.note(`cell ${cellAddress(cell.row, cell.column)} is out of order`);
        this.column = cell.column;
        if (cell.style > this.style.largest)
          this.style = { largest: cell.style, at: cellAddress(cell.row, cell.column) };
        if (cell.formula?.type !== 'shared') return;
        if (cell.formula.text !== '') this.masters.add(cell.formula.shared ?? '');
        else if (!this.masters.has(cell.formula.shared ?? ''))
          this.note(`cell ${cellAddress(cell.row, cell.column)} lost its formula`);
      },
      section: (local, start, end) => {
        this.inOrder(sectionOf(bytes, this.part, local, start, end).local);
        if (!/^(conditionalFormatting|legacyDrawing|drawing|tableParts)$/.test(local)) return;
        const element = parseTree(bytes, this.part, start, end);
        for (const e of [element, ...descendants(element)]) {
          const id = prefixed(e, 'id');
          if (id !== undefined && /rawing$|tablePart$/.test(e.local)) this.drawings.push({ local: e.local, id });
          if (e.local === 'cfRule') this.look = Math.max(this.look, Number(e.attributes.get('dxfId') ?? -1));
        }
      },
    });
  }
}
