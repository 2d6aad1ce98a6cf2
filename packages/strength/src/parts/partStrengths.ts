/** Strength of every part of a rig, in the order of the load's way from harness to rock. */
import {
  backupSectionLengths,
  type Condition,
  type LineEnd,
  mainSectionLengths,
  type OwnJudgement,
  type Rated,
  type Rig,
  type WebbingSection,
} from "@secondline/rig";
import { textileMake, usedMetal } from "../derating/make.ts";
import { ownFactors } from "../derating/own.ts";
import { possibleMonths } from "../derating/unknown.ts";
import { type NoteFact, noteFact } from "../noteFacts.ts";
import { builtInFactors, type FactorsOf } from "../retention/testedStock.ts";
import { anchorStrengths } from "./anchorParts.ts";
import { END_KINDS } from "./ends/endKinds.ts";
import { leashStrength } from "./leash.ts";
import { makePartStrength, type PartStrength } from "./partStrength.ts";
import { conditionFactors } from "./textileCondition.ts";
import { unusedOnMetal } from "./unusedCondition.ts";
import { weakestZone, webbingStrength } from "./webbingStrength.ts";

/**
 * Strength of every part. For a state at a date, give `wearToRig(rig, record, date)` as the rig. `factorsOf`: own break
 * tests in place of the built-in curves, from `factorsFromLog`.
 */
export function partStrengths(rig: Rig, factorsOf: FactorsOf = builtInFactors): PartStrength[] {
  const main = mainSectionLengths(rig);
  return [
    textilePart("harness", "Harness tie-in", rig.harness, "harness"),
    leashStrength(rig.leash, factorsOf),
    ...rig.rings.map((ring, i) => metalPart(rig.rings.length === 1 ? "ring" : `ring.${i}`, ring.name, ring)),
    linePart({ id: "main", name: "Main line", line: rig.main, lengths: main, factorsOf }),
    ...backupParts(rig, factorsOf),
    ...endParts({ prefix: "", name: "main line", line: rig.main, lengths: main, factorsOf }, rig.main.pretension),
    ...(rig.backup
      ? endParts({ prefix: "backup.", name: "backup", line: rig.backup, lengths: backupSectionLengths(rig), factorsOf })
      : []),
    ...anchorStrengths("anchorA", rig.anchorA),
    ...anchorStrengths("anchorB", rig.anchorB),
  ];
}

interface Written {
  readonly rated: Rated;
  readonly condition?: Condition;
  readonly own?: OwnJudgement;
}

function metalPart(id: string, name: string, { rated, own, condition }: Written): PartStrength {
  return makePartStrength({
    id,
    name,
    rated: rated.strength,
    ratedBasis: rated.basis,
    factors: [usedMetal(), ...ownFactors(own)],
    needsInspection: condition?.needsInspection,
    notes: unusedOnMetal(condition),
  });
}

/**
 * The document does not say what a harness or a connection is made of: of the usual fibres polyamide loses most in the sun and
 * in the wet. `at`: path in the rig document.
 */
function textilePart(id: string, name: string, { rated, condition = {}, own }: Written, at: string): PartStrength {
  const kind = name.split(" ")[0]!.toLowerCase();
  const factors = [
    textileMake(kind),
    ...conditionFactors({ condition, fibre: "polyamide", what: `the ${kind}`, at: `${at}.condition` }),
    ...ownFactors(own),
  ];
  const { needsInspection } = condition;
  return makePartStrength({ id, name, rated: rated.strength, ratedBasis: rated.basis, factors, needsInspection });
}

interface Line {
  readonly sections: readonly WebbingSection[];
  readonly endA: LineEnd;
  readonly endB: LineEnd;
}

interface LinePlace {
  readonly name: string;
  readonly line: Line;
  /** Natural lengths of its sections [m]. */
  readonly lengths: readonly number[];
  readonly factorsOf: FactorsOf;
}

function linePart({ id, name, line, lengths, factorsOf }: LinePlace & { readonly id: "main" | "backup" }) {
  const { sections } = line;
  const length = lengths.reduce((sum, one) => sum + one, 0);
  const zones = webbingStrength(sections, length, factorsOf, `${id}.sections`);
  const { rated, ratedBasis, factors, reason, from, to } = weakestZone(zones);
  const weakest = { at: (from + to) / 2, reason };
  const open = [
    ...sections.flatMap(({ condition }) => condition.needsInspection ?? []),
    ...(id === "main" ? unwrittenFalls(sections) : []),
  ];
  const needsInspection = open.length > 0 ? open : undefined;
  return makePartStrength({ id, name, rated, ratedBasis, factors, zones, weakest, needsInspection });
}

/** A main line that has hung has been fallen on, unless a fall zone with 0 falls says that it has not. */
function unwrittenFalls(sections: readonly WebbingSection[]): readonly NoteFact[] {
  const hung = sections.some(({ condition }) => possibleMonths(condition) > 0);
  if (!hung || sections.some(({ wear }) => wear.some(({ kind }) => kind === "fallZone"))) return [];
  return [noteFact("falls.unwritten", {})];
}

function backupParts(rig: Rig, factorsOf: FactorsOf): PartStrength[] {
  const { backup } = rig;
  if (backup === undefined) return [];
  const seen = { connection: 0, tape: 0 };
  const connections = backup.connections.map((c, i) => {
    const name = `${c.kind === "tape" ? "Tape" : "Connection"} ${i + 1}`;
    // In the document tapes have a list of their own.
    const at = `backup.${c.kind}s[${seen[c.kind]++}]`;
    return textilePart(`connection.${i}`, name, c, at);
  });
  const lengths = backupSectionLengths(rig);
  return [...connections, linePart({ id: "backup", name: "Backup", line: backup, lengths, factorsOf })];
}

/** `standing`: tension that the line has held all along [N]; a backup has none. */
function endParts(place: LinePlace & { readonly prefix: "" | "backup." }, standing?: number): PartStrength[] {
  const { prefix, name, line, lengths, factorsOf } = place;
  const path = prefix === "" ? "main" : "backup";
  const part = (side: "A" | "B", end: LineEnd, i: number) => {
    const { title, strength } = END_KINDS[end.kind];
    return strength({
      id: `${prefix}end${side}`,
      name: `${title} of the ${name}, ${side}`,
      end,
      side,
      section: line.sections[i]!,
      length: lengths[i]!,
      factorsOf,
      at: `${path}.end${side}`,
      sectionAt: `${path}.sections[${i}]`,
      ...(standing === undefined ? {} : { standing }),
    });
  };
  return [part("A", line.endA, 0), part("B", line.endB, line.sections.length - 1)];
}
