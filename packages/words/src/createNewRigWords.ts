/** Words of beginning a rig and of confirming what was taken over: apart from the rest, for the first load needs none of them. */
import { formatPercent, type LineStock, type Rig, strainAt } from "@secondline/rig";
import { english, filled, type Language, sayIn, type Values } from "./language.ts";
import { NEW_RIG_ENGLISH, type NewRigKey } from "./newRigEnglish.ts";
import { rounded, strength } from "./quantity.ts";
import { valueNames } from "./valueNames.ts";

export type { NewRigKey } from "./newRigEnglish.ts";

export const sayNewRig = (key: NewRigKey, values: Values = {}): string => filled(NEW_RIG_ENGLISH[key], values);

export type NewRigWords = ReturnType<typeof createNewRigWords>;

export function createNewRigWords(language: Language) {
  return {
    say: sayNewRig,
    /** Names of values at these paths, those of one part together. */
    values: (rig: Rig, paths: readonly string[]) => valueNames(sayIn(language), rig, paths),
    /** Fibre, strength, weight and stretch of a webbing or rope, in a line. */
    stock: stockText,
    /** Words by which it is found besides its name. */
    tradeWords: ({ fibre }: Pick<LineStock, "fibre">) => sayNewRig(`trade.${fibre}`),
  };
}

/** Load at which stretches are compared [N]. */
const LIST_LOAD = 6000;

function stockText({ fibre, rated, mass, curve }: LineStock): string {
  const stretch = strainAt(curve, LIST_LOAD);
  return sayNewRig("stock.detail", {
    fibre: sayNewRig(`fibre.${fibre}`),
    strength: strength(rated.strength),
    mass: `${rounded(mass * 1000, 0, "up")} g/m`,
    stretch: stretch === undefined ? sayNewRig("stock.noStretch") : formatPercent(stretch),
  });
}

export const newRigWords = createNewRigWords(english);
