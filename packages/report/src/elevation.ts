/** A side view of the rig at rest with its ground and its connections: to scale, all of it in sight. */
import { chordHeight, type Rig } from "@secondline/rig";
import { quantity } from "@secondline/words";
import { escapeHtml, type Html, raw } from "./html.ts";
import type { ReportPage } from "./page.ts";

const WIDTH = 640;
const MARGIN = 34;
/** Room above the anchors and under the ground, for words [px]. */
const [HEAD, FOOT] = [20, 26];
/** No higher than this: with the rest it must fit on the first page [px]. */
const GREATEST_HEIGHT = 150;

/** The inputs of the drawing. */
export interface Pictured extends Pick<ReportPage, "rig" | "outcome"> {
  readonly words: Pick<ReportPage["words"], "say">;
}

interface Frame {
  readonly x: (metres: number) => number;
  readonly y: (z: number) => number;
  readonly low: number;
  readonly height: number;
}

export function elevation(page: Pictured): Html {
  const { rig } = page;
  const frame = frameOf(page);
  const { height } = frame;
  return raw(
    `<svg viewBox="0 0 ${WIDTH} ${height.toFixed(0)}" role="img" aria-label="${escapeHtml(labelOf(page))}">` +
      ground(rig, frame) +
      lines(page, frame) +
      connections(rig, frame, page.outcome.statics.standingSag) +
      names(rig, frame) +
      measures(page, frame) +
      "</svg>",
  );
}

/** Span and depth in one scale, whichever of the two is the tighter. */
function frameOf({ rig, outcome }: Pictured): Frame {
  const low = Math.min(0, rig.rise, lowestLine(rig, outcome.statics.standingSag), ...rig.ground.map(([, z]) => z));
  const high = Math.max(0, rig.rise, ...rig.ground.map(([, z]) => z)) + 1;
  const scale = Math.min((WIDTH - 2 * MARGIN) / rig.span, GREATEST_HEIGHT / (high - low));
  const left = (WIDTH - scale * rig.span) / 2;
  return {
    x: (metres) => left + metres * scale,
    y: (z) => HEAD + (high - z) * scale,
    low,
    height: HEAD + (high - low) * scale + FOOT,
  };
}

const num = (value: number) => value.toFixed(1);

/** The drawing in words, for readers who do not see it. */
function labelOf({ words, rig, outcome }: Pictured): string {
  const lowest = Math.min(...rig.ground.map(([, z]) => z));
  return words.say("report.figureAlt", {
    span: quantity.length(rig.span),
    sag: quantity.drop(outcome.statics.standingSag),
    connections: rig.backup
      ? words.say("report.connections", { count: rig.backup.connections.length })
      : words.say("report.noBackup"),
    ground:
      rig.ground.length === 0
        ? words.say("report.noGround")
        : words.say("report.ground", { depth: quantity.height(-lowest) }),
  });
}

/** The ground as a surface with hatching under it; it goes on to the paper's edge as it ends. */
function ground({ ground: profile }: Rig, { x, y, height }: Frame): string {
  const [first, last] = [profile[0], profile.at(-1)];
  if (!first || !last) return "";
  const line = profile.map(([gx, z]) => `L${num(x(gx))} ${num(y(z))}`).join("");
  const [from, to] = [Math.min(0, x(first[0])), Math.max(WIDTH, x(last[0]))];
  const edge = `M${num(from)} ${num(y(first[1]))}${line}L${num(to)} ${num(y(last[1]))}`;
  return (
    `<path d="${edge}L${num(to)} ${num(height - FOOT + 8)}L${num(from)} ${num(height - FOOT + 8)}Z" fill="#ece7db"/>` +
    `<path d="${edge}" fill="none" stroke="#59636b" stroke-width="1.2"/>`
  );
}

function lines({ rig, outcome }: Pictured, { x, y }: Frame): string {
  const sag = outcome.statics.standingSag;
  const middle = chordHeight(rig, rig.span / 2);
  const main = `M${num(x(0))} ${num(y(0))}L${num(x(rig.span / 2))} ${num(y(middle - sag))}L${num(x(rig.span))} ${num(y(rig.rise))}`;
  return (
    `<path d="${backupBays(rig, sag, x, y)}" fill="none" stroke="#0b5d6b" stroke-width="1.1" stroke-dasharray="4 2.5"/>` +
    `<path d="${main}" fill="none" stroke="#1d2226" stroke-width="1.7"/>` +
    `<circle cx="${num(x(rig.span / 2))}" cy="${num(y(middle - sag + rig.walker.tieIn))}" r="3" fill="#1d2226"/>`
  );
}

/** Places that hold the backup: a bar for a connection, an open dot for a tape, which parts. */
function connections(rig: Rig, { x, y }: Frame, sag: number): string {
  return (rig.backup?.connections ?? [])
    .map(({ at, kind }) => {
      const [cx, cy] = [x(at * rig.span), y(lineHeight(rig, sag, at))];
      return kind === "tape"
        ? `<circle cx="${num(cx)}" cy="${num(cy)}" r="2" fill="#fff" stroke="#1d2226" stroke-width="0.8"/>`
        : `<rect x="${num(cx - 1.6)}" y="${num(cy - 4)}" width="3.2" height="8" fill="#1d2226"/>`;
    })
    .join("");
}

/** Width of a letter on the site card, where the letters are largest [px]. */
const LETTER_WIDTH = 10.5;
/** Of words from the line that they stand beside [px]. */
const BESIDE = 10;

// By attributes: a page that is printed out of the application may hold no style in line.
const text = (x: number, y: number, words: string, anchor = "middle"): string =>
  `<text x="${num(x)}" y="${num(y)}" text-anchor="${anchor}" paint-order="stroke" stroke="#fff" stroke-width="3">${escapeHtml(words)}</text>`;

const names = (rig: Rig, { x, y }: Frame): string =>
  text(x(0), y(0) - 7, "A") + text(x(rig.span), y(rig.rise) - 7, "B");

/** Span below, and how far the lowest ground lies under anchor A. */
function measures({ words, rig }: Pictured, { x, y, height }: Frame): string {
  const below = height - 6;
  const [a, b] = [x(0), x(rig.span)];
  const span =
    `<path d="M${num(a)} ${num(below - 4)}H${num(b)}M${num(a)} ${num(below - 7)}v6M${num(b)} ${num(below - 7)}v6" stroke="#1d2226" stroke-width="0.6" fill="none"/>` +
    `<rect x="${num((a + b) / 2 - 22)}" y="${num(below - 10)}" width="44" height="11" fill="#fff"/>` +
    text((a + b) / 2, below - 1, quantity.length(rig.span));
  const lowest = rig.ground.reduce<readonly [number, number] | undefined>(
    (least, one) => (least && least[1] <= one[1] ? least : one),
    undefined,
  );
  if (!lowest) return span + text((a + b) / 2, y(0) + 60, words.say("report.noGround"));
  const [gx, z] = lowest;
  const [px, top, foot] = [x(gx), y(chordHeight(rig, Math.min(rig.span, Math.max(0, gx)))), y(z)];
  const depth = words.say("report.ground", { depth: quantity.height(-z) });
  const wide = depth.length * LETTER_WIDTH;
  // Words wider than a deep, narrow gap would lie across its walls: they stand on the rock beside it.
  const isBeside = wide > b - a && b + BESIDE + wide < WIDTH;
  return (
    span +
    `<path d="M${num(px)} ${num(top + 12)}V${num(foot)}M${num(px - 3)} ${num(foot)}h6" stroke="#59636b" stroke-width="0.6" stroke-dasharray="1.5 2" fill="none"/>` +
    text(isBeside ? b + BESIDE : (a + b) / 2, top + 0.4 * (foot - top), depth, isBeside ? "start" : "middle")
  );
}

/** Places where the backup is held to the main line or an anchor, as fractions, rising. */
const heldAt = (rig: Rig) => [0, ...(rig.backup?.connections ?? []).map((one) => one.at).sort((a, b) => a - b), 1];

/** Depth of a shallow slack line below the chord of its bay: √(3·slack/8) times the bay [m]. */
const bayDepth = (rig: Rig, bay: number) => Math.sqrt((3 * (rig.backup?.slack ?? 0)) / 8) * bay * rig.span;

/** Height of the main line with the walker in the middle [m]. */
const lineHeight = (rig: Rig, sag: number, at: number) =>
  chordHeight(rig, at * rig.span) - sag * (1 - Math.abs(2 * at - 1));

function lowestLine(rig: Rig, sag: number): number {
  const held = heldAt(rig);
  const deepest = Math.max(...held.slice(1).map((to, i) => bayDepth(rig, to - held[i]!)));
  return -sag - deepest;
}

/** The backup as one loop per bay. */
function backupBays(rig: Rig, sag: number, x: (m: number) => number, y: (z: number) => number): string {
  if (!rig.backup) return "";
  const held = heldAt(rig);
  return held
    .slice(1)
    .map((to, i) => {
      const from = held[i]!;
      const [a, b] = [lineHeight(rig, sag, from), lineHeight(rig, sag, to)];
      // The control point of the curve lies twice as deep as the loop.
      const control = (a + b) / 2 - 2 * bayDepth(rig, to - from);
      const middle = ((from + to) / 2) * rig.span;
      return `M${num(x(from * rig.span))} ${num(y(a))}Q${num(x(middle))} ${num(y(control))} ${num(x(to * rig.span))} ${num(y(b))}`;
    })
    .join("");
}
