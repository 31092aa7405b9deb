/** How a printed sheet looks: dark ink on white, boxes to tick with a pencil, nothing cut by the end of a page. */

export const pageStyle = `
:root { color-scheme: light dark; --ink: #1b1e22; --soft: #59616b; --rule: #b9c0c8; --shade: #f1f3f5; --paper: #ffffff; --care: #8a3b00; }
@media (prefers-color-scheme: dark) { :root { --ink: #e7eaee; --soft: #a5adb7; --rule: #4a525c; --shade: #262b31; --paper: #1a1d21; --care: #ffb27a; } }
* { box-sizing: border-box; }
body { margin: 0; background: var(--paper); color: var(--ink); font: 11pt/1.4 Helvetica, Arial, "Liberation Sans", sans-serif; }
main { max-width: 190mm; margin: 0 auto; padding: 10mm 6mm; }
h1 { font-size: 18pt; margin: 0; }
.subtitle { color: var(--soft); margin: 0 0 5mm; }
h2 { font-size: 13pt; margin: 7mm 0 2mm; padding-bottom: 1mm; border-bottom: 0.3mm solid var(--rule); }
h3 { font-size: 11pt; margin: 4mm 0 1.5mm; }
h4, h5, h6 { font-size: 11pt; margin: 3mm 0 1mm; }
p, ul, ol, dl, table, figure { margin: 0 0 3mm; }
.cautions { list-style: none; padding: 2mm 3mm; border: 0.4mm solid var(--care); border-left-width: 2mm; font-size: 9.5pt; }
.cautions li + li { margin-top: 1mm; }
table { border-collapse: collapse; width: 100%; font-variant-numeric: tabular-nums; }
th, td { text-align: left; vertical-align: top; padding: 1mm 2mm; border-bottom: 0.2mm solid var(--rule); }
th { font-size: 9pt; color: var(--soft); font-weight: 600; }
.right { text-align: right; white-space: nowrap; }
.tick { width: 7mm; }
tbody tr:nth-child(even) { background: var(--shade); }
dl { display: grid; grid-template-columns: repeat(auto-fill, minmax(80mm, 1fr)); gap: 0.5mm 6mm; }
dl > div { display: flex; gap: 3mm; border-bottom: 0.2mm dotted var(--rule); padding: 0.6mm 0; }
dt { color: var(--soft); flex: 0 0 30mm; }
dd { margin: 0; }
ul.ticks { list-style: none; padding: 0; }
li { margin: 0.8mm 0; }
.box { display: inline-block; width: 4mm; height: 4mm; margin-right: 2mm; border: 0.35mm solid currentColor; vertical-align: -0.6mm; font-size: 9pt; line-height: 3.4mm; text-align: center; }
.detail { display: block; margin-left: 6mm; color: var(--soft); font-size: 9.5pt; }
figure svg { display: block; max-width: 100%; height: auto; }
.hidden { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
@page { margin: 12mm; }
@media print {
  :root { color-scheme: light; --ink: #000; --soft: #444; --rule: #999; --shade: #f3f3f3; --paper: #fff; --care: #000; }
  body { font-size: 10pt; }
  main { max-width: none; padding: 0; }
  h2, h3, h4 { break-after: avoid; }
  section section, tr, li, figure, .cautions { break-inside: avoid; }
  .sheet + .sheet { break-before: page; }
}
`;
