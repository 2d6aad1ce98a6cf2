/** The length of the loaded span over its middle, as on a plan; an end out of sight is named at the nearer edge. */
import type { WebbingState } from "@secondline/strength";
import { formatLength } from "@secondline/words/formats";
import { sayWear } from "@secondline/words/page/wear";
import type { Scale } from "../scale.ts";

type Placement = NonNullable<WebbingState["placement"]>;

export interface SpanText {
  readonly x: number;
  readonly anchor: "start" | "middle" | "end";
  readonly words: string;
}

export interface SpanDimension {
  /** The line with its tips; undefined where the span is out of sight altogether. */
  readonly path: string | undefined;
  readonly texts: readonly SpanText[];
}

/** `y`: height of the line [px]. */
export function spanDimension({ from, to, markedEnd }: Placement, x: Scale, y: number): SpanDimension {
  const names = markedEnd === "A" ? (["A", "B"] as const) : (["B", "A"] as const);
  const [left, right] = [x.px(x.from), x.px(x.to)];
  if (to < x.from || from > x.to) {
    const before = to < x.from;
    const words = sayWear("alongPaper.loadedFrom", {
      before: before ? "◂ " : "",
      from: formatLength(from),
      to: formatLength(to),
      after: before ? "" : " ▸",
    });
    return { path: undefined, texts: [{ x: before ? left : right, anchor: before ? "start" : "end", words }] };
  }
  const beyond = {
    left: from < x.from ? sayWear("alongPaper.endBefore", { anchor: names[0], place: formatLength(from) }) : "",
    right: to > x.to ? sayWear("alongPaper.endBeyond", { anchor: names[1], place: formatLength(to) }) : "",
  };
  const room = (words: string) => (words === "" ? 0 : words.length * 7 + 6);
  const [a, b] = [Math.max(left + room(beyond.left), x.px(from)), Math.min(right - room(beyond.right), x.px(to))];
  const length = sayWear("alongPaper.loaded", { length: formatLength(to - from) });
  const words =
    beyond.left === "" && beyond.right === ""
      ? sayWear("alongPaper.between", { length, left: names[0], right: names[1] })
      : length;
  const [middle, half] = [(a + b) / 2, words.length * 3.6 + 8];
  const fits = 2 * half < b - a;
  const line = fits ? `M${a} ${y}H${middle - half}M${middle + half} ${y}H${b}` : `M${a} ${y}H${b}`;
  const tip = (at: number, way: 1 | -1) => `M${at + way * 6} ${y - 3}l${-way * 6} 3 ${way * 6} 3M${at} ${y - 5}v10`;
  const texts: readonly SpanText[] = [
    { x: middle, anchor: "middle", words: fits ? words : "" },
    { x: left, anchor: "start", words: beyond.left },
    { x: right, anchor: "end", words: beyond.right },
  ];
  return {
    path: `${line}${beyond.left ? "" : tip(a, 1)}${beyond.right ? "" : tip(b, -1)}`,
    texts: texts.filter((one) => one.words !== ""),
  };
}
