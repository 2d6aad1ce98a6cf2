/** A small plot of the forces of one what-if over time, readable in black and white: lines differ by dash and by label. */

import { labelHeights, roundTicks } from "@secondline/figures";
import type { Trace } from "@secondline/scenarios";
import { escapeHtml, type Html, raw } from "./html.ts";
import type { PageWords } from "./page.ts";

const WIDTH = 320;
const HEIGHT = 130;
const FRAME = { left: 30, right: 52, top: 8, bottom: 22 };
const INNER = { width: WIDTH - FRAME.left - FRAME.right, height: HEIGHT - FRAME.top - FRAME.bottom };
const LABEL_GAP = 9;

const LINES = [
  { key: "leash", label: "plot.walker", style: 'stroke="#0b5d6b" stroke-width="1.3"' },
  { key: "anchorA", label: "plot.anchorA", style: 'stroke="#1d2226" stroke-width="0.9"' },
  { key: "anchorB", label: "plot.anchorB", style: 'stroke="#1d2226" stroke-width="0.9" stroke-dasharray="3 2"' },
] as const;

/** `title` is read out by a screen reader; forces in kN, time in s. */
export function forcePlot(trace: Trace, { say }: PageWords, title: string): Html {
  const most = Math.max(1000, ...LINES.flatMap(({ key }) => trace[key]));
  const [, tick = 1] = roundTicks(0, most / 1000, 4);
  const top = Math.ceil(most / 1000 / tick) * tick * 1000;
  const x = (time: number) => FRAME.left + (INNER.width * time) / trace.duration;
  const y = (force: number) => FRAME.top + INNER.height * (1 - force / top);
  const grid = roundTicks(0, top / 1000, Math.round(top / 1000 / tick)).map(
    (kn) =>
      `<line x1="${FRAME.left}" x2="${WIDTH - FRAME.right}" y1="${num(y(kn * 1000))}" y2="${num(y(kn * 1000))}" stroke="#d9d3c6" stroke-width="0.5"/>` +
      `<text x="${FRAME.left - 4}" y="${num(y(kn * 1000) + 3)}" text-anchor="end">${kn}</text>`,
  );
  const seconds = roundTicks(0, trace.duration, 5).map(
    (s) => `<text x="${num(x(s))}" y="${HEIGHT - 10}" text-anchor="middle">${s}</text>`,
  );
  const labels = spread(LINES.map(({ key, label }) => ({ label: say(label), at: y(trace[key].at(-1) ?? 0) })));
  return raw(
    `<svg viewBox="0 0 ${WIDTH} ${HEIGHT}" role="img" aria-label="${escapeHtml(say("report.plotLabel", { title }))}">${grid.join("")}${seconds.join("")}` +
      `<text x="2" y="${FRAME.top + 2}">kN</text><text x="${WIDTH - FRAME.right}" y="${HEIGHT - 1}" text-anchor="end">s</text>` +
      LINES.map(({ key, style }) => `<path d="${path(trace[key], trace, x, y)}" fill="none" ${style}/>`).join("") +
      labels
        .map(({ label, at }) => `<text x="${WIDTH - FRAME.right + 4}" y="${num(at + 3)}">${escapeHtml(label)}</text>`)
        .join("") +
      "</svg>",
  );
}

const num = (value: number) => value.toFixed(1);

/** Up and down through every bin's least and largest value. */
function path(values: readonly number[], trace: Trace, x: (t: number) => number, y: (f: number) => number): string {
  const bins = values.length / 2;
  return values
    .map((force, i) => {
      const time = ((Math.floor(i / 2) + (i % 2 === 0 ? 0.25 : 0.75)) * trace.duration) / bins;
      return `${i === 0 ? "M" : "L"}${num(x(time))} ${num(y(force))}`;
    })
    .join("");
}

/** Moves labels apart so that none covers another. */
function spread(labels: readonly { label: string; at: number }[]): { label: string; at: number }[] {
  const heights = labelHeights(
    labels.map(({ at }) => at),
    LABEL_GAP,
  );
  const over = Math.max(0, Math.max(...heights) - (HEIGHT - FRAME.bottom));
  return labels.map(({ label }, i) => ({ label, at: heights[i]! - over }));
}
