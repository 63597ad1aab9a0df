import { STRICT, TRANSITIONAL } from '../relations';
import { sectionOf, type Section, type SheetLayout } from '../sheet-sections';
import { walkSheet } from '../sheet-walk';

/** Where everything but the cells lies in a worksheet part as it is now. */
export const layoutOf = (bytes: Uint8Array, part: string): SheetLayout => {
  const sections: Section[] = [];
  let prefix = '';
  let relationPrefix: string | undefined;
  let relationSpace = TRANSITIONAL;
  let rootEnd = bytes.length;
  walkSheet(bytes, part, {
    root(scanner) {
      const own = scanner.prefix();
      prefix = own === '' ? '' : `${own}:`;
      for (const [name, value] of scanner.attributes.all())
        if (value === TRANSITIONAL || value === STRICT) {
          relationPrefix = name.replace(/^xmlns:/, '');
          relationSpace = value;
        }
    },
    data: (start, openEnd) => void sections.push({ local: 'sheetData', start, end: openEnd }),
    section: (local, start, end) => void sections.push(sectionOf(bytes, part, local, start, end)),
    rootEnd: (closeStart) => void (rootEnd = closeStart),
  });
  return { bytes, part, prefix, relationSpace, relationPrefix, sections, rootEnd };
};
