/**
 * How the site card looks: one A4 page to be read from a metre off, black on white, and the same in one column on a phone. No
 * meaning lies in colour alone, and nothing is fetched.
 */
export const CARD_STYLE = `
@page { size: A4; margin: 10mm 12mm; }
:root { --ink: #000; --soft: #3d464c; --rule: #8d959a; color-scheme: light; }
* { box-sizing: border-box; }
html { background: #fff; }
body { margin: 0 auto; max-width: 186mm; padding: 6mm 5mm; color: var(--ink); background: #fff;
  font: 10pt/1.35 "IBM Plex Sans", "Segoe UI", "Helvetica Neue", Arial, sans-serif; overflow-wrap: anywhere; }
h1, h2, .word, .value { font-family: "Source Serif 4", Georgia, "Times New Roman", serif; font-weight: 600; }
h1 { font-size: 15pt; line-height: 1.2; margin: 0 0 2mm; }
h2 { font-size: 11.5pt; margin: 0 0 1mm; break-after: avoid; }
p { margin: 0; }
.status { border: 1.2mm solid var(--ink); border-radius: 1.5mm; padding: 2.5mm 5mm 3mm; margin: 0 0 3mm; break-inside: avoid; }
.status.given { border-width: 0.8mm; }
.status.none, .status.lapsed { border-style: double; border-width: 1.8mm; }
.word { font-size: 32pt; line-height: 1.1; }
.says { font-size: 13.5pt; line-height: 1.3; margin-top: 1mm; }
.must { border-left: 1.2mm solid var(--ink); padding-left: 4mm; margin: 0 0 4mm; }
ul { margin: 0; padding-left: 5mm; } li { margin: 0 0 0.8mm; }
dl { display: grid; grid-template-columns: repeat(6, 1fr); gap: 2mm 5mm; margin: 0 0 3mm; }
dl > div { grid-column: span 2; border-top: 0.35mm solid var(--ink); padding-top: 1mm; break-inside: avoid; }
dl > .wide { grid-column: span 6; } dl > .half { grid-column: span 3; }
dt { font-size: 9pt; color: var(--soft); }
dd { margin: 0; }
.value { font-size: 20pt; line-height: 1.15; font-variant-numeric: tabular-nums; }
.wide .value { font-size: 12.5pt; line-height: 1.3; }
.small .value { font-size: 9.5pt; font-family: inherit; font-weight: 400; }
.note { font-size: 8.5pt; line-height: 1.3; color: var(--soft); }
.below { columns: 2; column-gap: 7mm; font-size: 8.5pt; line-height: 1.28; } .below li { break-inside: avoid; }
.below section + section { margin-top: 2mm; }
figure { margin: 0 0 2mm; } svg { display: block; width: 100%; height: auto; max-height: 23mm; }
svg path { vector-effect: non-scaling-stroke; }
svg text { font: 20px "IBM Plex Sans", Arial, sans-serif; fill: var(--ink); }
footer { border-top: 0.3mm solid var(--rule); margin-top: 2mm; padding-top: 1mm; font-size: 8pt; color: var(--soft); }
code { font: 8pt "IBM Plex Mono", Consolas, monospace; }
.over, .isOver .inTime, .isOver .third, .isOver .half { display: none; } .isOver .over { display: block; }
@media print { body { padding: 0; max-width: none; } .must, footer { break-inside: avoid; } }
@media screen and (max-width: 600px) {
  body { font-size: 16px; padding: 16px; }
  h1 { font-size: 20px; } h2 { font-size: 18px; }
  .word { font-size: 40px; } .says { font-size: 19px; }
  dl { grid-template-columns: 1fr 1fr; gap: 14px 16px; }
  dl > div { grid-column: span 1; } dl > .wide, dl > .half { grid-column: span 2; }
  dt { font-size: 14px; } .value { font-size: 26px; } .wide .value { font-size: 18px; } .small .value { font-size: 16px; } .note { font-size: 14px; }
  .below { columns: auto; font-size: 16px; } .below section { margin-bottom: 16px; }
  svg { max-height: none; } footer { font-size: 14px; } code { font-size: 13px; }
}
`;
