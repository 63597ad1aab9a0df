import type { RangeAddress } from '../../../workbook/port';
import { parseRange } from '../cell-reference';
import type { Package } from '../package';
import { relationsOf, removeRelation } from '../relations';
import { columnSpans, placeFor, sectionsNamed, type SheetLayout } from '../sheet-sections';
import { Splice } from '../splice';
import { child, childrenOf, descendants, prefixed, textOf, type XmlElement } from '../xml-tree';
import { layoutOf } from './layout-of';
import type { LeftOut } from './left-out';

export interface SheetPass {
  /** Rules for cells (formats, inputs) that went because they read what is left out. */
  readonly rules: number;
}

const rangesOf = (text: string): RangeAddress[] =>
  text.split(/\s+/).flatMap((piece) => {
    const range = parseRange(piece);
    return range ? [range] : [];
  });

/** Takes everything that is bound to left-out columns out of a sheet, and rules that read them or that call us. */
export const passSections = (
  pkg: Package,
  sheet: { readonly name: string; readonly part: string },
  leftOut: LeftOut,
  hidden: readonly number[] = leftOut.columnsOf(sheet.name),
): SheetPass => {
  const layout = layoutOf(pkg.read(sheet.part), sheet.part);
  const splice = new Splice(layout.bytes);
  const pass = new SectionPass(layout, splice, sheet.name, leftOut);
  let rules = pass.rulesIn('conditionalFormatting', 'cfRule') + pass.rulesIn('dataValidations', 'dataValidation');
  for (const id of pass.links()) dropRelation(pkg, sheet.part, id);
  if (leftOut.columnsOf(sheet.name).length > 0) pass.boundToColumns();
  rules += passExtensions(layout.bytes, splice, sectionsNamed(layout, 'extLst'), leftOut, sheet.name);
  if (hidden.length > 0) hideColumns(layout, splice, hidden);
  if (!splice.isEmpty) pkg.write(sheet.part, splice.apply());
  return { rules };
};

/**
 * The sections of one sheet. A rule over columns of which only some are left out keeps its whole range: what its formula
 * reads counts from the first cell of it.
 */
class SectionPass {
  constructor(
    private readonly layout: SheetLayout,
    private readonly splice: Splice,
    private readonly sheet: string,
    private readonly leftOut: LeftOut,
  ) {}

  private isGone(element: XmlElement | undefined, attribute: string): boolean {
    const ranges = rangesOf(element?.attributes.get(attribute) ?? '');
    return ranges.length > 0 && this.leftOut.without(this.sheet, ranges).length === 0;
  }

  private isBroken(element: XmlElement): boolean {
    return [...descendants(element)].some(
      (e) => /^(?:f|formula|formula1|formula2)$/.test(e.local) && this.leftOut.breaks(textOf(this.layout.bytes, e), this.sheet), // prettier-ignore
    );
  }

  /** Removes some items of a list, and the list with its last one. */
  private removeFrom(list: XmlElement, items: readonly XmlElement[], gone: readonly XmlElement[]): void {
    if (gone.length === 0) return;
    if (gone.length === items.length) return this.splice.remove(list);
    for (const item of gone) this.splice.remove(item);
    if (list.attributes.has('count')) this.splice.setAttribute(list, 'count', String(items.length - gone.length));
  }

  /** Formats and permitted entries; returns how many went because they read what is left out. */
  rulesIn(section: string, item: string): number {
    let broken = 0;
    for (const list of sectionsNamed(this.layout, section)) {
      const items = childrenOf(list, item);
      const gone = items.filter((rule) => {
        const reads = this.isBroken(rule);
        const inside = this.isGone(rule.attributes.has('sqref') ? rule : list, 'sqref');
        if (reads && !inside) broken++;
        return reads || inside;
      });
      this.removeFrom(list, items, gone);
    }
    return broken;
  }

  /** Ids of the relations that links needed which went. */
  links(): readonly (string | undefined)[] {
    return sectionsNamed(this.layout, 'hyperlinks').flatMap((list) => {
      const items = childrenOf(list, 'hyperlink');
      const gone = items.filter((item) => {
        const place = item.attributes.get('location');
        return this.isGone(item, 'ref') || (place !== undefined && this.leftOut.breaks(place.replace(/^#/, ''), this.sheet)); // prettier-ignore
      });
      this.removeFrom(list, items, gone);
      return gone.map((item) => prefixed(item, 'id'));
    });
  }

  /** What tells of columns by their place: filters, orders, scenarios, other views. */
  boundToColumns(): void {
    const { layout, splice, sheet, leftOut } = this;
    for (const local of ['protectedRanges', 'ignoredErrors'])
      for (const list of sectionsNamed(layout, local)) {
        const gone = list.children.filter((item) => this.isGone(item, 'sqref'));
        this.removeFrom(list, list.children, gone);
      }
    for (const local of ['scenarios', 'customSheetViews', 'sortState', 'dataConsolidate'])
      for (const section of sectionsNamed(layout, local)) splice.remove(section);
    for (const filter of sectionsNamed(layout, 'autoFilter')) {
      const ref = parseRange(filter.attributes.get('ref') ?? '');
      for (const item of childrenOf(filter, 'filterColumn'))
        if (ref && leftOut.hasColumn(sheet, ref.column + Number(item.attributes.get('colId')))) splice.remove(item);
      const sort = child(filter, 'sortState');
      if (sort) splice.remove(sort);
    }
  }
}

const dropRelation = (pkg: Package, part: string, id: string | undefined): void => {
  if (id !== undefined && relationsOf(pkg, part).some((relation) => relation.id === id)) removeRelation(pkg, part, id);
};

/** Newer rules and small charts in cells stand in an extension, with their formulas and ranges as elements. */
const passExtensions = (
  bytes: Uint8Array,
  splice: Splice,
  lists: readonly XmlElement[],
  leftOut: LeftOut,
  sheet: string,
): number => {
  let rules = 0;
  for (const list of lists)
    for (const extension of list.children) {
      const items = [...descendants(extension)].filter(({ local }) =>
        ['conditionalFormatting', 'dataValidation', 'sparkline'].includes(local),
      );
      const gone = items.filter((item) => {
        const texts = [...descendants(item)];
        const ranges = texts.filter(({ local }) => local === 'sqref').flatMap((e) => rangesOf(textOf(bytes, e)));
        const broken = texts
          .filter(({ local }) => local === 'f')
          .some((formula) => leftOut.breaks(textOf(bytes, formula), sheet));
        return broken || (ranges.length > 0 && leftOut.without(sheet, ranges).length === 0);
      });
      rules += gone.length;
      if (gone.length > 0 && gone.length === items.length) splice.remove(extension);
      else for (const item of gone) splice.remove(item);
    }
  return rules;
};

const hideColumns = (layout: ReturnType<typeof layoutOf>, splice: Splice, columns: readonly number[]): void => {
  let spans = columnSpans(layout);
  for (const column of columns) {
    const at = spans.find(({ first, last }) => first <= column && column <= last);
    const attributes = new Map(at?.attributes ?? [['width', '9.140625']]).set('hidden', '1');
    spans = [
      ...spans.flatMap((span) =>
        span !== at
          ? [span]
          : [
              { ...span, last: column - 1 },
              { ...span, first: column + 1 },
            ].filter(({ first, last }) => first <= last),
      ),
      { first: column, last: column, attributes },
    ];
  }
  spans = spans.sort((a, b) => a.first - b.first);
  const { prefix } = layout;
  const xml = spans.map(({ first, last, attributes }) => {
    const rest = [...attributes].filter(([name]) => name !== 'min' && name !== 'max');
    return `<${prefix}col min="${first + 1}" max="${last + 1}"${rest.map(([name, value]) => ` ${name}="${value}"`).join('')}/>`;
  });
  const cols = `<${prefix}cols>${xml.join('')}</${prefix}cols>`;
  const [old] = sectionsNamed(layout, 'cols');
  if (old) splice.replace(old.start, old.end, cols);
  else splice.insert(placeFor(layout, 'cols'), cols);
};
