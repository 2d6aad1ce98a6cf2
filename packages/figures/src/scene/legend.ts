/** What the legend of the scene says: how the lines are told apart, and the tension scale with the strength on it. */
import { quantity } from "@secondline/words";
import { sayScene } from "@secondline/words/page/scene";
import { scaleEnd } from "./shape/tensionColour.ts";

export interface LegendFacts {
  /** Largest tension of the run [N]. */
  readonly largest: number;
  /** What 95 % of such webbing reach [kN]. */
  readonly strengthKN?: number | undefined;
  readonly hasBackup: boolean;
  /** The run before is drawn too. */
  readonly hasPrevious: boolean;
}

/** One stroke of a line's sample, over those before it. */
export interface LegendStroke {
  /** [px] */
  readonly width: number;
  readonly dash: readonly number[];
  /** In the colour of the run before; the others are in that of the text. */
  readonly isPrevious: boolean;
}

export interface Legend {
  readonly lines: readonly { readonly name: string; readonly strokes: readonly LegendStroke[] }[];
  /** Marks of the scale: its middle and its end [kN], which are round. */
  readonly marks: readonly [middle: string, end: string];
  /** `share`: where on the scale; undefined: beyond its end. */
  readonly strength: { readonly share: number | undefined; readonly text: string } | undefined;
}

/** Length of a line's sample [px]. */
export const LEGEND_SAMPLE_LENGTH = 34;

export function legendOf({ largest, strengthKN, hasBackup, hasPrevious }: LegendFacts): Legend {
  const end = scaleEnd(largest) / 1000;
  const share = strengthKN === undefined || strengthKN > end ? undefined : strengthKN / end;
  return {
    lines: [
      { name: sayScene("legend.mainLine"), strokes: [stroke(4)] },
      ...(hasBackup ? [{ name: sayScene("legend.backup"), strokes: [stroke(1), stroke(4, [8, 5])] }] : []),
      ...(hasPrevious ? [{ name: sayScene("legend.runBefore"), strokes: [{ ...stroke(1.4), isPrevious: true }] }] : []),
    ],
    marks: [mark(end / 2), mark(end)],
    strength:
      strengthKN === undefined
        ? undefined
        : { share, text: sayScene("legend.strength5", { strength: quantity.strength(1000 * strengthKN) }) },
  };
}

const stroke = (width: number, dash: readonly number[] = []): LegendStroke => ({ width, dash, isPrevious: false });
const mark = (kN: number): string => String(Number(kN.toPrecision(3)));
