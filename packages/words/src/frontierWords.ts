/** The layouts that no other beats, in words. */
import type { FrontierLayout, FrontierPoint, FrontierStanding } from "@secondline/scenarios";
import { FRONTIER_ENGLISH, type FrontierKey } from "./frontierEnglish.ts";
import { filled, type Values } from "./language.ts";
import { listed } from "./lists.ts";
import { drop, load, rounded } from "./quantity.ts";

export const sayFrontier = (key: FrontierKey, values: Values = {}): string => filled(FRONTIER_ENGLISH[key], values);

const weight = (kilogram: number): string => `${rounded(kilogram, 1, "up")} kg`;

/** The layouts that are not beaten, then a sentence on every other one; `letters`: names of the layouts. */
export function frontierSentences(layouts: readonly FrontierLayout[], letters: readonly string[]): readonly string[] {
  const best = letters.slice(0, layouts.length).filter((_, i) => layouts[i]!.standing.kind === "unbeaten");
  return [
    ...(best.length > 0 ? [sayFrontier("frontier.best", { layouts: listed(best, "and"), count: best.length })] : []),
    ...layouts.flatMap(({ standing }, i) => saidOf(standing, letters[i]!, letters)),
  ];
}

function saidOf(standing: FrontierStanding, layout: string, letters: readonly string[]): readonly string[] {
  switch (standing.kind) {
    case "unbeaten":
      return [];
    case "beaten": {
      const what = listed(
        standing.inWhat.map((one) => sayFrontier(`frontier.what.${one}`)),
        "and",
      );
      return [sayFrontier("frontier.beaten", { layout, by: letters[standing.by]!, what })];
    }
    case "fails":
    case "unknown":
      return [sayFrontier(`frontier.${standing.kind}`, { layout })];
  }
}

/** "A: 6.2 kN, 4.5 m down, 12.3 kg." */
export const frontierNumbers = (layout: string, { load: newton, drop: metres, weight: mass }: FrontierPoint): string =>
  sayFrontier("frontier.numbers", { layout, load: load(newton), drop: drop(metres), weight: weight(mass) });

/** Beside a point of the plot. */
export const frontierPoint = (layout: string, { weight: mass }: FrontierPoint): string =>
  sayFrontier("frontier.point", { layout, weight: weight(mass) });
