/** The drop over a range with its band, and where it meets the limit, as a lesson shows it. */
import { scaleOf } from "../scale.ts";
import { circle, path, type Shape, text } from "../shapes/shape.ts";

export const CURVE_SIZE = { width: 560, height: 230 };
const LEFT = 48;
const RIGHT_MARGIN = 26;
const TOP = 18;
const BOTTOM = CURVE_SIZE.height - 26;

interface CurvePoint {
  readonly at: number;
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

export interface CurveFacts {
  /** Of the drawing; default: that of `CURVE_SIZE` [px]. */
  readonly width?: number;
  /** [%] */
  readonly from: number;
  readonly to: number;
  /** Drops with their bands [m]. */
  readonly points: readonly CurvePoint[];
  /** Value at which the curve meets the limit, with its interval; undefined if it meets none. */
  readonly crossing:
    | {
        readonly limit: number;
        readonly at: number;
        readonly low: number;
        readonly high: number;
        readonly words: string;
      }
    | undefined;
}

export function sweepCurve(facts: CurveFacts): readonly Shape[] {
  const { width = CURVE_SIZE.width, from, to, points, crossing } = facts;
  const right = width - RIGHT_MARGIN;
  const top = 5 * Math.ceil(Math.max(...points.map(({ high }) => high)) / 5);
  const x = scaleOf(from, to, LEFT, right);
  const y = scaleOf(0, top, BOTTOM, TOP);
  const line = (of: "value" | "low" | "high", list = points) =>
    list.map((one, i) => `${i === 0 ? "M" : "L"}${x.px(one.at)} ${y.px(one[of])}`).join("");
  const band = `${line("high")}${line("low", [...points].reverse()).replace("M", "L")}Z`;
  const metres = Array.from({ length: top / 5 + 1 }, (_, i) => 5 * i);
  const across = (metre: number, styled: string) => path(`M${LEFT} ${y.px(metre)}H${right}`, { styled });
  return [
    ...metres.flatMap((metre) => [
      across(metre, "grid"),
      text(`${metre} m`, LEFT - 6, y.px(metre) + 4, { textAnchor: "end" }),
    ]),
    ...points.map(({ at }) => text(`${at} %`, x.px(at), CURVE_SIZE.height - 7, { textAnchor: "middle" })),
    path(band, { styled: "band" }),
    path(line("value"), { styled: "curve" }),
    ...points.map(({ at, value }) => circle(x.px(at), y.px(value), 4, { styled: "dot" })),
    ...(crossing
      ? [
          across(crossing.limit, "limit"),
          text(crossing.words, LEFT + 6, y.px(crossing.limit) - 6),
          path(`M${x.px(crossing.at)} ${y.px(crossing.limit)}V${BOTTOM}`, { styled: "limit" }),
          path(`M${x.px(crossing.low)} ${BOTTOM}H${x.px(crossing.high)}`, { styled: "interval" }),
        ]
      : []),
  ];
}
