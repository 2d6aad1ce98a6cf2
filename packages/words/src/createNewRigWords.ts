/**
 * Words for beginning a rig and for confirming template values, in a file of their own because the first load does not need
 * them.
 */
import { type LineStock, type Rig, type RigFact, type RigIssue, strainAt } from "@secondline/rig";
import { tellFault } from "./faultWords.ts";
import { formatForce, formatPercent } from "./formats.ts";
import { english, filled, type Language, sayIn, type Values } from "./language.ts";
import { NEW_RIG_ENGLISH, type NewRigKey } from "./newRigEnglish.ts";
import { length, number, rounded, strength } from "./quantity.ts";
import { valueNames } from "./valueNames.ts";

export type { NewRigKey } from "./newRigEnglish.ts";

export const sayNewRig = (key: NewRigKey, values: Values = {}): string => filled(NEW_RIG_ENGLISH[key], values);

type KindOf<Group extends string> = NewRigKey extends infer Key
  ? Key extends `${Group}.${infer Kind}`
    ? Kind
    : never
  : never;

/** A fault of an answer, in the words of the rig's own check, or of a kind that has words here. */
export type AnswerFault =
  | { readonly kind: "issue"; readonly issue: RigIssue }
  | { readonly kind: KindOf<"fault">; readonly values: Values };

/** A fault of a measured value, in the words of the reader of quantities, or of a kind that has words here. */
export type MeasuredFaultFact =
  | { readonly kind: "unread"; readonly message: RigFact }
  | { readonly kind: KindOf<"measured.fault">; readonly values: Values };

/** Faults of a table from a file. Rows count from 1; forces [N], a height [m]. */
export type FileFault =
  | { readonly kind: "empty" | "nothing" | "columnNames" }
  | { readonly kind: "tooLong"; readonly most: number; readonly of: "characters" | "rows" }
  | { readonly kind: "columns"; readonly row: number; readonly count: number }
  | { readonly kind: "number"; readonly row: number; readonly got: string }
  | { readonly kind: "unitsDiffer" | "severalColumns"; readonly first: string; readonly second: string }
  | { readonly kind: "unitUnknown"; readonly got: string }
  | { readonly kind: "unitSaid"; readonly said: "m" | "ft"; readonly asked: "m" | "ft" }
  | { readonly kind: "datum"; readonly first: number }
  | { readonly kind: "backwards"; readonly row: number }
  | { readonly kind: "backwards"; readonly from: number; readonly to: number };

export type NewRigWords = ReturnType<typeof createNewRigWords>;

export function createNewRigWords(language: Language) {
  return {
    say: sayNewRig,
    /** Names of the values at these paths, grouped by part. */
    values: (rig: Rig, paths: readonly string[]) => valueNames(sayIn(language), rig, paths),
    fault: answerFault,
    fileFault,
    measuredFault,
    reachDoubt,
    /** Fibre, strength, weight and stretch of a webbing or rope, in a line. */
    stock: stockText,
    /** Words by which a search finds it, besides its name. */
    tradeWords: ({ fibre }: Pick<LineStock, "fibre">) => sayNewRig(`trade.${fibre}`),
  };
}

const answerFault = (fault: AnswerFault): string =>
  fault.kind === "issue" ? tellFault(fault.issue.message) : sayNewRig(`fault.${fault.kind}`, fault.values);

/** Lengths [m]. */
function reachDoubt(doubt: { readonly reach: number; readonly span: number; readonly unit: "m" | "ft" | undefined }) {
  const values = { reach: length(doubt.reach), span: length(doubt.span) };
  return doubt.unit === undefined
    ? sayNewRig("ground.far", values)
    : sayNewRig("ground.farUnit", { ...values, unit: sayNewRig(`ground.${doubt.unit}`) });
}

const measuredFault = (fault: MeasuredFaultFact): string =>
  fault.kind === "unread" ? tellFault(fault.message) : sayNewRig(`measured.fault.${fault.kind}`, fault.values);

function fileFault(fault: FileFault): string {
  switch (fault.kind) {
    case "empty":
    case "nothing":
    case "columnNames":
      return sayNewRig(`file.${fault.kind}`);
    case "tooLong":
      return fault.of === "characters"
        ? sayNewRig("file.tooLong", { most: `${number(fault.most / 1e6)} MB` })
        : sayNewRig("file.tooManyRows", { most: fault.most });
    case "columns":
      return sayNewRig("file.columns", { row: fault.row, count: fault.count });
    case "number":
      return sayNewRig("file.number", { row: fault.row, got: fault.got });
    case "unitsDiffer":
      return sayNewRig("ground.unitsDiffer", { first: fault.first, second: fault.second });
    case "severalColumns":
      return sayNewRig("file.severalColumns", { first: fault.first, second: fault.second });
    case "unitUnknown":
      return sayNewRig("ground.unitUnknown", { got: fault.got });
    case "unitSaid":
      return sayNewRig("ground.unitSaid", {
        said: sayNewRig(`ground.${fault.said}`),
        asked: sayNewRig(`ground.${fault.asked}`),
      });
    case "datum":
      return sayNewRig("ground.datum", { first: Math.round(fault.first) });
    case "backwards":
      return "row" in fault
        ? sayNewRig("ground.backwards", { row: fault.row })
        : sayNewRig("file.backwards", { from: formatForce(fault.from), to: formatForce(fault.to) });
  }
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
