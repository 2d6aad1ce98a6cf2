/**
 * Forces of one what-if over time, readable in black and white: each line differs by dash and by a letter on it, and is named
 * at its end. Behind a line lies a band from the least to the largest force of every moment: over the draws of the what-if,
 * else over the run.
 */
import { labelHeights, roundTicks } from "@secondline/figures";
import type { Trace, TraceBand } from "@secondline/scenarios";
import { quantity } from "@secondline/words";
import { escapeHtml, type Html, raw } from "./html.ts";
import type { PageWords } from "./page.ts";

const WIDTH = 640;
const HEIGHT = 168;
const FRAME = { left: 30, right: 122, top: 16, bottom: 24 };
const INNER_SIZE = { width: WIDTH - FRAME.left - FRAME.right, height: HEIGHT - FRAME.top - FRAME.bottom };
const LABEL_GAP = 11;
/** Number of letters on a line, and the share of the line at which they begin [-]. */
const LETTERS_ON_A_LINE = 5;

const CURVE_STYLES = [
  { key: "leash", label: "plot.walker", letter: "", colour: "#0b5d6b", width: 1.7, dash: "", from: 0 },
  { key: "anchorA", label: "plot.anchorA", letter: "A", colour: "#1d2226", width: 1, dash: "", from: 0.06 },
  { key: "anchorB", label: "plot.anchorB", letter: "B", colour: "#8a4a7d", width: 1.2, dash: "5 3", from: 0.16 },
] as const;
type Line = (typeof CURVE_STYLES)[number];

interface Frame {
  readonly trace: Trace;
  readonly draws: TraceBand | undefined;
  readonly x: (time: number) => number;
  readonly y: (force: number) => number;
}

/** `title` is read out by a screen reader, with every peak; forces in kN, time in s. `draws`: the band behind the lines. */
export function forcePlot(trace: Trace, draws: TraceBand | undefined, words: PageWords, title: string): Html {
  const { say } = words;
  const most = Math.max(1000, ...CURVE_STYLES.flatMap(({ key }) => [...trace[key], ...(draws?.[key] ?? [])]));
  const [, tick = 1] = roundTicks(0, most / 1000, 4);
  const top = Math.ceil(most / 1000 / tick) * tick * 1000;
  const frame: Frame = {
    trace,
    draws,
    x: (time) => FRAME.left + (INNER_SIZE.width * time) / trace.duration,
    y: (force) => FRAME.top + INNER_SIZE.height * (1 - force / top),
  };
  const peaks = CURVE_STYLES.map(({ key, label }) => `${say(label)} ${quantity.load(Math.max(...trace[key]))}`).join(
    ", ",
  );
  const alt = [
    say("report.plotAlt", { title, peaks }),
    ...(draws ? [say("report.plotDraws", { count: draws.draws, most: quantity.load(Math.max(...draws.leash)) })] : []),
  ].join(" ");
  return raw(
    `<svg viewBox="0 0 ${WIDTH} ${HEIGHT}" role="img" aria-label="${escapeHtml(alt)}">${grid(frame, top, tick)}` +
      CURVE_STYLES.map((line) => band(frame, line)).join("") +
      CURVE_STYLES.map((line) => curve(frame, line)).join("") +
      CURVE_STYLES.map((line) => letters(frame, line)).join("") +
      labels(frame, words) +
      "</svg>",
  );
}

const num = (value: number) => value.toFixed(1);

function grid({ trace, x, y }: Frame, top: number, tick: number): string {
  const forces = roundTicks(0, top / 1000, Math.round(top / 1000 / tick)).map(
    (kn) =>
      `<line x1="${FRAME.left}" x2="${WIDTH - FRAME.right}" y1="${num(y(kn * 1000))}" y2="${num(y(kn * 1000))}" stroke="#d9d3c6" stroke-width="0.5"/>` +
      `<text x="${FRAME.left - 4}" y="${num(y(kn * 1000) + 3)}" text-anchor="end">${kn}</text>`,
  );
  const seconds = roundTicks(0, trace.duration, 8).map(
    (s) => `<text x="${num(x(s))}" y="${HEIGHT - 12}" text-anchor="middle">${s}</text>`,
  );
  return `${forces.join("")}${seconds.join("")}<text x="4" y="9">kN</text><text x="${WIDTH - FRAME.right}" y="${HEIGHT - 2}" text-anchor="end">s</text>`;
}

/** Least and largest force of every bin, with the bin's middle [N, s]. */
function bins(
  { trace }: Pick<Frame, "trace">,
  { key }: Line,
): readonly { readonly at: number; readonly low: number; readonly high: number }[] {
  const values = trace[key];
  const count = values.length / 2;
  return Array.from({ length: count }, (_, i) => {
    const [a, b] = [values[2 * i]!, values[2 * i + 1]!];
    return { at: ((i + 0.5) * trace.duration) / count, low: Math.min(a, b), high: Math.max(a, b) };
  });
}

/** The band ends with the run that is drawn over it. */
function band(frame: Frame, line: Line): string {
  const { x, y, draws, trace } = frame;
  const all = bins({ trace: draws ?? trace }, line).filter(({ at }) => at <= trace.duration);
  const there = all.map(({ at, high }) => `${num(x(at))} ${num(y(high))}`);
  const back = [...all].reverse().map(({ at, low }) => `${num(x(at))} ${num(y(low))}`);
  return `<path d="M${there.join("L")}L${back.join("L")}Z" fill="${line.colour}" fill-opacity="0.14"/>`;
}

/** The largest force of every moment: no peak is lost. */
function curve(frame: Frame, line: Line): string {
  const path = bins(frame, line)
    .map(({ at, high }) => `${num(frame.x(at))} ${num(frame.y(high))}`)
    .join("L");
  const dash = line.dash === "" ? "" : ` stroke-dasharray="${line.dash}"`;
  return `<path d="M${path}" fill="none" stroke="${line.colour}" stroke-width="${line.width}" stroke-linejoin="round"${dash}/>`;
}

/** Letters on a line, at places where the other anchor's letters are not. */
function letters(frame: Frame, line: Line): string {
  if (line.letter === "") return "";
  const all = bins(frame, line);
  return Array.from({ length: LETTERS_ON_A_LINE }, (_, i) => {
    const { at, high } = all[Math.min(all.length - 1, Math.floor((line.from + i / LETTERS_ON_A_LINE) * all.length))]!;
    const [x, y] = [frame.x(at), frame.y(high)];
    return (
      `<circle cx="${num(x)}" cy="${num(y)}" r="4.6" fill="#fff" stroke="${line.colour}" stroke-width="0.7"/>` +
      `<text x="${num(x)}" y="${num(y + 2.6)}" text-anchor="middle" style="font-size:7px;fill:${line.colour}">${line.letter}</text>`
    );
  }).join("");
}

/** At the lines' ends with their peaks, moved apart so that none covers another, and led to their line. */
function labels(frame: Frame, { say }: PageWords): string {
  const ends = CURVE_STYLES.map((line) => frame.y(bins(frame, line).at(-1)?.high ?? 0));
  const heights = labelHeights(ends, LABEL_GAP);
  const over = Math.max(0, Math.max(...heights) - (HEIGHT - FRAME.bottom));
  const right = WIDTH - FRAME.right;
  return CURVE_STYLES.map(({ key, label, colour, dash }, i) => {
    const at = heights[i]! - over;
    const peak = quantity.load(Math.max(...frame.trace[key]));
    return (
      `<path d="M${num(right)} ${num(ends[i]!)}L${num(right + 8)} ${num(at)}h6" fill="none" stroke="${colour}" stroke-width="0.8"${dash === "" ? "" : ` stroke-dasharray="${dash}"`}/>` +
      `<text x="${num(right + 17)}" y="${num(at + 3)}" style="fill:${colour}">${escapeHtml(`${say(label)}, ${peak}`)}</text>`
    );
  }).join("");
}
