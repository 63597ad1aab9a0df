export const PAPERS = ['A4', 'A3', 'letter'] as const;
export type Paper = (typeof PAPERS)[number];

/** Light on paper, readable in grey: verdicts have words and marks, colours only help. */
export const htmlStyle = (paper: Paper): string => `
:root { color-scheme: light; }
* { box-sizing: border-box; }
body { margin: 0 auto; max-width: 1060px; padding: 32px 24px 64px; background: #fffefb; color: #1d2423;
  font: 13px/20px system-ui, 'Segoe UI', sans-serif; font-variant-numeric: tabular-nums; }
h1 { font-size: 22px; line-height: 28px; margin: 0 0 4px; color: #0f4c4a; }
h2 { font-size: 15px; line-height: 24px; margin: 32px 0 8px; color: #0f4c4a; }
h3 { font-size: 13px; line-height: 20px; margin: 20px 0 4px; }
p { margin: 4px 0 8px; max-width: 80ch; }
.quiet { color: #55605d; }
nav ul { columns: 3; padding: 0; margin: 8px 0 0; list-style: none; }
a { color: #0f5c59; }
dl { display: grid; grid-template-columns: max-content 1fr; gap: 2px 16px; margin: 12px 0; }
dt { color: #55605d; } dd { margin: 0; }
.scroll { overflow-x: auto; }
table { border-collapse: collapse; width: 100%; }
th, td { text-align: left; vertical-align: top; padding: 3px 8px; border-bottom: 1px solid #d9d6cc; }
th { font-weight: 600; background: #e6efee; border-bottom-color: #0f5c59; }
tbody th { background: none; border-bottom-color: #d9d6cc; min-width: 96px; overflow-wrap: anywhere; }
td { overflow-wrap: anywhere; }
.number { text-align: right; white-space: nowrap; width: 1%; }
tr.total > * { font-weight: 600; border-top: 1px solid #1d2423; }
.verdict { font-weight: 600; white-space: nowrap; text-align: center; width: 1%; }
.PASS { color: #0b4c7c; } .WARN { color: #6f4700; } .FAIL { color: #9b2d12; } .INCOMPLETE { color: #4a4a48; }
.bars { display: block; margin: 8px 0 4px; max-width: 100%; height: auto; }
article { break-inside: avoid; border-top: 1px solid #d9d6cc; margin-top: 20px; padding-top: 4px; }
.plots { display: grid; grid-template-columns: repeat(auto-fit, minmax(300px, 1fr)); gap: 8px 24px; align-items: start; }
figure { margin: 8px 0; } figcaption { font-weight: 600; }
figure svg { max-width: 100%; height: auto; display: block; }
footer { margin-top: 40px; padding-top: 8px; border-top: 1px solid #d9d6cc; color: #55605d; }
@page { size: ${paper} landscape; margin: 12mm 12mm 14mm; @bottom-right { content: counter(page) ' / ' counter(pages); font: 9px system-ui; } }
@media print {
  body { max-width: none; padding: 0; background: none; font-size: 10px; line-height: 14px; }
  nav { display: none; }
  h2 { break-after: avoid; } thead { display: table-header-group; } tr { break-inside: avoid; }
  a { color: inherit; text-decoration: none; }
  article { margin-top: 8px; } figure { margin: 2px 0; }
}
`;
