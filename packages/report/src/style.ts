/**
 * How the report looks: paper and ink on A4, readable in black and white. No font or picture is fetched from anywhere. A loose
 * page still names its rig: `foot` stands at the foot of every page, beside its number `pageOf`, with {page} and {pages}.
 */
export const styleOf = (foot: string, pageOf: string): string => `
@page { size: A4; margin: 16mm 15mm 18mm;
  @bottom-left { content: ${cssString(foot)}; font: 7.5pt Arial, sans-serif; color: #59636b; width: 88%; }
  @bottom-right { content: ${pageCounter(pageOf)}; font: 7.5pt Arial, sans-serif; color: #59636b; } }
:root { --ink: #1d2226; --soft: #59636b; --rule: #d9d3c6; --accent: #0b5d6b; --holds: #0072b2; --thin: #8a5a00; --fails: #b23c00; }
* { box-sizing: border-box; }
html { background: #faf8f3; }
body { margin: 0 auto; max-width: 180mm; padding: 10mm 4mm; color: var(--ink); background: #faf8f3;
  font: 10pt/1.45 "IBM Plex Sans", "Segoe UI", "Helvetica Neue", Arial, sans-serif; }
@media print { html, body { background: #fff; } body { padding: 0; max-width: none; } }
h1, h2, .sentence { font-family: "Source Serif 4", Georgia, "Times New Roman", serif; font-weight: 600; }
h1 { font-size: 21pt; line-height: 1.15; margin: 0 0 1mm; }
h2 { font-size: 13pt; margin: 8mm 0 2mm; padding-top: 2mm; border-top: 0.3mm solid var(--rule); break-after: avoid; }
p { margin: 0 0 2mm; max-width: 160mm; }
.soft { color: var(--soft); max-width: none; }
.sentence { margin: 3mm 0; padding-left: 4mm; border-left: 1.2mm solid; }
.sentence p { margin: 0; max-width: none; font-size: 13pt; line-height: 1.3; }
.sentence .rest { padding-top: 1mm; font-size: 10pt; line-height: 1.35; font-weight: 400; }
.sentence.open { border-color: var(--soft); }
.taken { color: var(--soft); font-size: 9pt; margin: 0 0 1mm; }
table.facts th { width: 76mm; border-bottom: 0.2mm solid var(--rule); font-weight: 600; }
table.facts { font-size: 8.5pt; margin-bottom: 2mm; } table.facts th, table.facts td { padding-block: 0.6mm; }
table.signed td, table.signed th { height: 9mm; vertical-align: bottom; } table.signed td:nth-child(n + 2) { border-bottom: 0.25mm solid var(--ink); } table.signed td:first-child { width: 64mm; } table.signed td:nth-child(2) { width: 42mm; } table.signed td:nth-child(3) { width: 26mm; }
.signed { break-inside: avoid; } h3 { font-size: 10.5pt; margin: 4mm 0 1mm; break-after: avoid; } table.middle { font-size: 7.5pt; color: var(--soft); }
th[scope="row"] { vertical-align: top; border-bottom: 0.2mm solid var(--rule); }
.verdict.open, .verdict.notLoaded { color: var(--soft); }
.sentence.holds { border-color: var(--holds); } .sentence.thin { border-color: var(--thin); } .sentence.fails { border-color: var(--fails); }
.cautions { border: 0.4mm solid var(--ink); padding: 1.5mm 3mm; font-size: 8.5pt; line-height: 1.3; break-inside: avoid; }
.cautions p { margin: 0 0 1mm; } .cautions.all { font-size: 10pt; }
.cautions h2 { border: 0; margin: 0 0 1mm; padding: 0; font-size: 11pt; }
.cautions ul { margin: 0; padding-left: 5mm; }
table { width: 100%; border-collapse: collapse; font-size: 8.5pt; line-height: 1.3; margin: 0 0 4mm; font-variant-numeric: tabular-nums; }
caption { text-align: left; color: var(--soft); padding-bottom: 1mm; }
th { text-align: left; font-weight: 600; border-bottom: 0.35mm solid var(--ink); padding: 1mm 3mm 1mm 0; vertical-align: bottom; }
td { border-bottom: 0.2mm solid var(--rule); padding: 1mm 3mm 1mm 0; vertical-align: top; }
th.number, td.number { text-align: right; white-space: nowrap; }
tr { break-inside: avoid; } thead { display: table-header-group; break-after: avoid; }
caption { break-inside: avoid; break-after: avoid; } tbody tr:first-child, tbody tr:nth-child(2) { break-before: avoid; } tbody tr:last-child { break-before: avoid; }
p:has(+ table), p:has(+ ul), p:has(+ .plots) { break-inside: avoid; break-after: avoid; }
.verdict { white-space: nowrap; font-weight: 600; }
.verdict.holds { color: var(--holds); } .verdict.thin { color: var(--thin); } .verdict.fails { color: var(--fails); }
figure { margin: 0 0 4mm; break-inside: avoid; } figcaption { font-size: 8.5pt; color: var(--soft); }
.plots { display: grid; gap: 2mm; }
figure.sketch { margin-bottom: 2mm; }
svg { display: block; width: 100%; height: auto; }
svg[role] text { font: 9px "IBM Plex Sans", Arial, sans-serif; fill: var(--ink); } figure.sweep svg text { font: inherit; }
td:last-child, th:last-child { padding-right: 0; }
ul.bases, ol.bases { padding-left: 5mm; margin: 0 0 3mm; font-size: 8.5pt; }
code { font: 8pt "IBM Plex Mono", Consolas, monospace; overflow-wrap: anywhere; }
footer { break-inside: avoid; break-before: avoid; margin-top: 8mm; border-top: 0.3mm solid var(--rule); padding-top: 2mm; font-size: 8pt; color: var(--soft); }
`;

/** "3 of 7", counted by the printing program. */
const pageCounter = (pageOf: string): string =>
  pageOf
    .split(/(\{pages?\})/)
    .map((piece) => (piece === "{page}" ? "counter(page)" : piece === "{pages}" ? "counter(pages)" : cssString(piece)))
    .join(" ");

/** A text as CSS writes it, with everything that could end it or the page's style escaped. */
function cssString(text: string): string {
  const escaped = text.replace(/[^ -~]|["\\<>]/gu, (sign) => `\\${sign.codePointAt(0)!.toString(16)} `);
  return `"${escaped}"`;
}
