/** What every part of a rig holds, in the order of the load's way from harness to rock. */
import {
  backupNaturalLength,
  type Condition,
  type LineEnd,
  mainNaturalLength,
  type OwnJudgement,
  type Rated,
  type Rig,
  type WebbingSection,
} from "@secondline/rig";
import type { StrengthFactor } from "../derating/factor.ts";
import { textileMake, usedMetal } from "../derating/make.ts";
import { ownFactors } from "../derating/own.ts";
import { type FactorsOf, publishedFactors } from "../retention/testedStock.ts";
import { anchorStrengths } from "./anchorParts.ts";
import { leashStrength } from "./leash.ts";
import { lineEndStrength } from "./lineEnd.ts";
import { makePartStrength, type PartStrength } from "./partStrength.ts";
import { conditionFactors } from "./textileCondition.ts";
import { weakestZone, webbingStrength } from "./webbingStrength.ts";

/**
 * Strength of every part. For a state at a date, give `wearToRig(rig, record, date)` as the rig. `factorsOf`: own break
 * tests in place of published factors, from `factorsFromLog`.
 */
export function partStrengths(rig: Rig, factorsOf: FactorsOf = publishedFactors): PartStrength[] {
  return [
    simplePart("harness", "Harness tie-in", rig.harness, unknownFibre("harness", rig.harness.condition)),
    leashStrength(rig.leash, factorsOf),
    ...rig.rings.map((ring, i) =>
      simplePart(rig.rings.length === 1 ? "ring" : `ring.${i}`, ring.name, ring, [usedMetal()]),
    ),
    linePart("main", "Main line", rig.main.sections, mainNaturalLength(rig), factorsOf),
    ...backupParts(rig, factorsOf),
    ...endParts("", "main line", rig.main, factorsOf),
    ...(rig.backup ? endParts("backup.", "backup", rig.backup, factorsOf) : []),
    ...anchorStrengths("anchorA", rig.anchorA),
    ...anchorStrengths("anchorB", rig.anchorB),
  ];
}

interface Written {
  readonly rated: Rated;
  readonly own?: OwnJudgement;
}

function simplePart(id: string, name: string, { rated, own }: Written, factors: readonly StrengthFactor[]) {
  const all = [...factors, ...ownFactors(own)];
  return makePartStrength({ id, name, rated: rated.strength, ratedBasis: rated.basis, factors: all });
}

/** The document does not say what a harness or a connection is made of: polyamide loses most in the sun and in the wet. */
function unknownFibre(what: string, condition: Condition = {}): StrengthFactor[] {
  return [textileMake(what), ...conditionFactors(condition, "polyamide", `the ${what}`)];
}

function linePart(
  id: string,
  name: string,
  sections: readonly WebbingSection[],
  length: number,
  factorsOf: FactorsOf,
): PartStrength {
  const zones = webbingStrength(sections, length, factorsOf);
  const weakest = weakestZone(zones);
  const { rated, ratedBasis, factors, reason } = weakest;
  const at = (weakest.from + weakest.to) / 2;
  return makePartStrength({ id, name, rated, ratedBasis, factors, zones, weakest: { at, reason } });
}

function backupParts(rig: Rig, factorsOf: FactorsOf): PartStrength[] {
  if (rig.backup === undefined) return [];
  const length = backupNaturalLength(rig);
  const connections = rig.backup.connections.map((c, i) => {
    const name = `${c.kind === "tape" ? "Tape" : "Connection"} ${i + 1}`;
    return simplePart(`connection.${i}`, name, c, unknownFibre(c.kind, c.condition));
  });
  return [...connections, linePart("backup", "Backup", rig.backup.sections, length, factorsOf)];
}

interface Ends {
  readonly sections: readonly WebbingSection[];
  readonly endA: LineEnd;
  readonly endB: LineEnd;
}

const END_NAME = { weblock: "Weblock", sewnLoop: "Sewn loop", knot: "Knotted end" } as const;

function endParts(prefix: string, line: string, ends: Ends, factorsOf: FactorsOf): PartStrength[] {
  const part = (side: "A" | "B", end: LineEnd, section: WebbingSection) =>
    lineEndStrength(`${prefix}end${side}`, `${END_NAME[end.kind]} of the ${line}, ${side}`, end, section, factorsOf);
  return [part("A", ends.endA, ends.sections[0]!), part("B", ends.endB, ends.sections.at(-1)!)];
}
