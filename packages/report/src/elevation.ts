/** A side view of the rig at rest with its ground, to scale, heights as they are. */
import { chordHeight, type Rig } from "@secondline/rig";
import { quantity } from "@secondline/words";
import { escapeHtml, type Html, raw } from "./html.ts";
import type { Page } from "./page.ts";

const WIDTH = 640;
const MARGIN = 40;
const DEEPEST = 230;

/** What the drawing is made from. */
export interface Pictured extends Pick<Page, "rig" | "outcome"> {
  readonly words: Pick<Page["words"], "say">;
}

export function elevation({ words, rig, outcome }: Pictured): Html {
  const scale = (WIDTH - 2 * MARGIN) / rig.span;
  const low = Math.min(0, rig.rise, -outcome.statics.standingSag - deepestBay(rig), ...rig.ground.map(([, z]) => z));
  const high = Math.max(0, rig.rise) + Math.max(2, 0.04 * rig.span);
  const depth = Math.min(DEEPEST / scale, high - low);
  const height = Math.round(depth * scale) + 44;
  const x = (metres: number) => (MARGIN + metres * scale).toFixed(1);
  const y = (z: number) => (14 + (high - z) * scale).toFixed(1);
  const sag = outcome.statics.standingSag;
  const middle = chordHeight(rig, rig.span / 2);
  const main = `M${x(0)} ${y(0)}L${x(rig.span / 2)} ${y(middle - sag)}L${x(rig.span)} ${y(rig.rise)}`;
  const bays = backupBays(rig, sag, x, y);
  const ground = rig.ground.map(([gx, z], i) => `${i === 0 ? "M" : "L"}${x(gx)} ${y(z)}`).join("");
  const below = height - 4;
  return raw(
    `<svg viewBox="0 0 ${WIDTH} ${height}" role="img" aria-label="${escapeHtml(words.say("report.figureLabel"))}">` +
      `<defs><clipPath id="view"><rect x="0" y="0" width="${WIDTH}" height="${height - 22}"/></clipPath></defs><g clip-path="url(#view)">` +
      (ground ? `<path d="${ground}" fill="none" stroke="#59636b" stroke-width="1.2"/>` : "") +
      `<path d="${bays}" fill="none" stroke="#0b5d6b" stroke-width="1" stroke-dasharray="4 2.5"/>` +
      `<path d="${main}" fill="none" stroke="#1d2226" stroke-width="1.6"/>` +
      `<circle cx="${x(rig.span / 2)}" cy="${y(middle - sag + rig.walker.tieIn)}" r="3" fill="#1d2226"/></g>` +
      `<text x="${x(0)}" y="${Number(y(0)) - 6}" text-anchor="middle">A</text><text x="${x(rig.span)}" y="${Number(y(rig.rise)) - 6}" text-anchor="middle">B</text>` +
      `<path d="M${x(0)} ${below - 8}H${x(rig.span)}M${x(0)} ${below - 11}v6M${x(rig.span)} ${below - 11}v6" stroke="#1d2226" stroke-width="0.6" fill="none"/>` +
      `<text x="${x(rig.span / 2)}" y="${below - 12}" text-anchor="middle">${quantity.length(rig.span)}</text></svg>`,
  );
}

/** Places where the backup is held to the main line or an anchor, as fractions, rising. */
const heldAt = (rig: Rig) => [0, ...(rig.backup?.connections ?? []).map((one) => one.at).sort((a, b) => a - b), 1];

/** Depth of a shallow slack line below the chord of its bay: √(3·slack/8) times the bay [m]. */
const bayDepth = (rig: Rig, bay: number) => Math.sqrt((3 * (rig.backup?.slack ?? 0)) / 8) * bay * rig.span;

function deepestBay(rig: Rig): number {
  const held = heldAt(rig);
  return Math.max(...held.slice(1).map((to, i) => bayDepth(rig, to - held[i]!)));
}

/** The backup as one loop per bay. */
function backupBays(rig: Rig, sag: number, x: (m: number) => string, y: (z: number) => string): string {
  if (!rig.backup) return "";
  const held = heldAt(rig);
  const lineZ = (at: number) => chordHeight(rig, at * rig.span) - sag * (1 - Math.abs(2 * at - 1));
  return held
    .slice(1)
    .map((to, i) => {
      const from = held[i]!;
      // The control point of the curve lies twice as deep as the loop.
      const control = (lineZ(from) + lineZ(to)) / 2 - 2 * bayDepth(rig, to - from);
      const middle = ((from + to) / 2) * rig.span;
      return `M${x(from * rig.span)} ${y(lineZ(from))}Q${x(middle)} ${y(control)} ${x(to * rig.span)} ${y(lineZ(to))}`;
    })
    .join("");
}
