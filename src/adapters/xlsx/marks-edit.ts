import { isMarkFormula, markFormula } from '../../workbook/mark-formula';
import type { MarkRule } from '../../workbook/port';
import { rangeAddress } from '../../workbook/address';
import { placeFor, sectionsNamed, type SheetLayout } from './sheet-sections';
import type { Splice } from './splice';
import { escapeXml } from './xml-text';
import { child, childrenOf, descendants, textOf, type XmlElement } from './xml-tree';

const isOwn = (bytes: Uint8Array, rule: XmlElement): boolean => isMarkFormula(textOf(bytes, child(rule, 'formula')));

/** Takes our rules off the sheet and puts the new ones behind all others. */
export function setMarks(
  layout: SheetLayout,
  splice: Splice,
  rules: readonly MarkRule[],
  differential: (rule: MarkRule) => number,
): void {
  const { bytes, prefix: p } = layout;
  let priority = 0;
  const note = (rule: XmlElement): void => {
    priority = Math.max(priority, Number(rule.attributes.get('priority') ?? 0) || 0);
  };
  for (const format of sectionsNamed(layout, 'conditionalFormatting')) {
    const all = childrenOf(format, 'cfRule');
    const own = all.filter((rule) => isOwn(bytes, rule));
    all.filter((rule) => !own.includes(rule)).forEach(note);
    if (own.length > 0 && own.length === all.length && !child(format, 'extLst')) splice.remove(format);
    else own.forEach((rule) => splice.remove(rule));
  }
  for (const extensions of sectionsNamed(layout, 'extLst'))
    for (const element of descendants(extensions)) if (element.local === 'cfRule') note(element);
  const byRange = new Map<string, string>();
  for (const rule of rules) {
    const range = rangeAddress(rule.range);
    const test = markFormula(rule).slice(1);
    const xml =
      `<${p}cfRule type="expression" dxfId="${differential(rule)}" priority="${++priority}">` +
      `<${p}formula>${escapeXml(test)}</${p}formula></${p}cfRule>`;
    byRange.set(range, (byRange.get(range) ?? '') + xml);
  }
  const tag = `${p}conditionalFormatting`;
  const xml = [...byRange].map(([range, inside]) => `<${tag} sqref="${range}">${inside}</${tag}>`).join('');
  if (xml !== '') splice.insert(placeFor(layout, 'conditionalFormatting'), xml);
}
