import type { PlanNotes } from '../../../workbook/report/plan-notes';
import { REPORT_WORDS } from '../../../workbook/report/words';
import { SHARE_PAPERS, type ShareChoices, type SharePaper } from '../../../workbook/share/choices';
import { COPY_WORDS } from '../../../workbook/share/told-words';
import type { RangeAddress } from '../../../workbook/port';
import type { Package } from '../package';
import { columnSpans, placeFor, sectionsNamed } from '../sheet-sections';
import { Splice } from '../splice';
import { escapeXml } from '../xml-text';
import { child, onOff } from '../xml-tree';
import { layoutOf } from './layout-of';

/** Numbers of paper sizes (ECMA-376 part 1, 18.3.1.63 pageSetup). */
export const PAPER_NUMBER: Readonly<Record<SharePaper, number>> = { Letter: 1, A3: 8, A4: 9 };

/** A format allows 255 characters for all three parts of a foot. */
const MOST_FOOT = 150;

/** Which plan and revision, sheet and page: a page that lies alone can still be told. */
export const footOf = ({ properties, language }: ShareChoices, { facts }: PlanNotes): string => {
  const revision = properties.revision ?? facts.revision;
  const plan = [
    properties.title ?? facts.object,
    revision && `${REPORT_WORDS[language].facts.revision} ${revision}`,
    properties.date,
  ].filter(Boolean);
  return `&L${plan.join(' · ').slice(0, MOST_FOOT).replaceAll('&', '&&')}&C&A&R${COPY_WORDS[language].page}`;
};

const USUAL_SCALE = 100;
const BY_HAND = ['rowBreaks', 'colBreaks'] as const;

/** Whether somebody has said how the sheet is printed. Some programs write a set-up with every sheet; one that says nothing but what is usual is none. */
export const hasPrintSetup = (pkg: Package, part: string): boolean => {
  const layout = layoutOf(pkg.read(part), part);
  const [setup] = sectionsNamed(layout, 'pageSetup');
  if (!setup) return false;
  const { attributes } = setup;
  const fit = child(sectionsNamed(layout, 'sheetPr')[0], 'pageSetUpPr')?.attributes.get('fitToPage');
  return (
    onOff(fit) ||
    attributes.get('orientation') === 'landscape' ||
    Number(attributes.get('scale') ?? USUAL_SCALE) !== USUAL_SCALE ||
    BY_HAND.some((local) => sectionsNamed(layout, local).length > 0)
  );
};

/** Landscape, so many pages wide, page numbers; margins, header and footer of the sheet's user stay. */
export const setUpPrint = (pkg: Package, part: string, paper: SharePaper, foot: string, pagesWide = 1): void => {
  const layout = layoutOf(pkg.read(part), part);
  const splice = new Splice(layout.bytes);
  const p = layout.prefix;
  const has = (local: string): boolean => sectionsNamed(layout, local).length > 0;
  if (!has('pageMargins'))
    splice.insert(placeFor(layout, 'pageMargins'), `<${p}pageMargins left="0.4" right="0.4" top="0.5" bottom="0.6" header="0.3" footer="0.3"/>`); // prettier-ignore
  const [usual] = sectionsNamed(layout, 'pageSetup');
  const setup = `<${p}pageSetup paperSize="${PAPER_NUMBER[paper]}" orientation="landscape" fitToWidth="${pagesWide}" fitToHeight="0"/>`;
  if (usual) splice.replace(usual.start, usual.end, setup);
  else splice.insert(placeFor(layout, 'pageSetup'), setup);
  if (!has('headerFooter'))
    splice.insert(placeFor(layout, 'headerFooter'), `<${p}headerFooter><${p}oddFooter>${escapeXml(foot)}</${p}oddFooter></${p}headerFooter>`); // prettier-ignore
  const [properties] = sectionsNamed(layout, 'sheetPr');
  const fit = `<${p}pageSetUpPr fitToPage="1"/>`;
  const old = child(properties, 'pageSetUpPr');
  if (old) splice.setAttribute(old, 'fitToPage', '1');
  else if (properties) splice.append(properties, fit);
  else splice.insert(placeFor(layout, 'sheetPr'), `<${p}sheetPr>${fit}</${p}sheetPr>`);
  pkg.write(part, splice.apply());
};

/** Characters that fit across a page at a size that can be read; by eye, from printed pages. */
const READABLE: Readonly<Record<SharePaper, number>> = { A4: 260, Letter: 250, A3: 370 };
const USUAL_WIDTH = 9.14;

/** How many pages side by side a list needs with our columns behind it. */
export const pagesWideFor = (pkg: Package, part: string, block: RangeAddress, paper: SharePaper): number => {
  const spans = columnSpans(layoutOf(pkg.read(part), part));
  let characters = 0;
  for (let column = 0; column < block.column + block.columns; column++) {
    const at = spans.find(({ first, last }) => first <= column && column <= last)?.attributes;
    if (!onOff(at?.get('hidden'))) characters += Number(at?.get('width') ?? USUAL_WIDTH);
  }
  return Math.max(1, Math.ceil(characters / READABLE[paper]));
};

/** A user's set-up that squeezes all columns onto one page gets more pages side by side, for ours came to it. */
export const widenPrint = (pkg: Package, part: string, block: RangeAddress): void => {
  const layout = layoutOf(pkg.read(part), part);
  const [setup] = sectionsNamed(layout, 'pageSetup');
  const fit = child(sectionsNamed(layout, 'sheetPr')[0], 'pageSetUpPr')?.attributes.get('fitToPage');
  if (!setup || !onOff(fit) || Number(setup.attributes.get('fitToWidth') ?? 1) !== 1) return;
  const paper = SHARE_PAPERS.find((name) => String(PAPER_NUMBER[name]) === setup.attributes.get('paperSize')) ?? 'A4';
  const pages = pagesWideFor(pkg, part, block, paper);
  if (pages === 1) return;
  const splice = new Splice(layout.bytes);
  splice.setAttribute(setup, 'fitToWidth', String(pages));
  pkg.write(part, splice.apply());
};

/** A lock against accidents on every sheet that has none; no password, so it keeps nobody out. */
export const lockSheet = (pkg: Package, part: string): boolean => {
  const layout = layoutOf(pkg.read(part), part);
  if (sectionsNamed(layout, 'sheetProtection').length > 0) return false;
  const splice = new Splice(layout.bytes);
  splice.insert(
    placeFor(layout, 'sheetProtection'),
    `<${layout.prefix}sheetProtection sheet="1" objects="1" scenarios="1" formatColumns="0" formatRows="0" sort="0" autoFilter="0"/>`,
  );
  pkg.write(part, splice.apply());
  return true;
};
