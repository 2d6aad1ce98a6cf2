/** Puts what its owner thinks of a part into a rig, by the id that results know the part by. */
import type { AnchorSide, OwnJudgement, Rig, WebbingSection } from "./rig.ts";

type Line = Rig["main"] | NonNullable<Rig["backup"]>;

/** The rig with the judgement on that part, in place of one it may have; undefined when there is no such part. */
export function judgePart(rig: Rig, id: string, own: OwnJudgement): Rig | undefined {
  const [group, list, index] = id.split(".");
  switch (group) {
    case "harness":
    case "leash":
      return list === undefined ? { ...rig, [group]: { ...rig[group], own } } : undefined;
    case "ring":
      return judgeRing(rig, list, own);
    case "connection":
      return judgeConnection(rig, list, own);
    case "anchorA":
    case "anchorB":
      return judgeAnchorPart(rig, group, list, index, own);
    case "backup": {
      const backup = rig.backup && judgeLine(rig.backup, list ?? "", own);
      return backup && index === undefined ? { ...rig, backup } : undefined;
    }
    default: {
      const what = group === "main" ? "" : group || "nothing";
      const main = list === undefined ? judgeLine(rig.main, what, own) : undefined;
      return main && { ...rig, main };
    }
  }
}

/** `what`: "" for the webbing, "endA" or "endB". */
function judgeLine<T extends Line>(line: T, what: string, own: OwnJudgement): T | undefined {
  if (what === "endA" || what === "endB") return { ...line, [what]: { ...line[what], own } };
  if (what !== "") return undefined;
  return { ...line, sections: line.sections.map((section): WebbingSection => ({ ...section, own })) };
}

function judgeRing(rig: Rig, index: string | undefined, own: OwnJudgement): Rig | undefined {
  // As in results: a number only where there are several.
  if ((index === undefined) !== (rig.rings.length === 1)) return undefined;
  const rings = judged(rig.rings, index ?? "0", own);
  return rings && { ...rig, rings };
}

function judgeConnection(rig: Rig, index: string | undefined, own: OwnJudgement): Rig | undefined {
  const connections = rig.backup && judged(rig.backup.connections, index, own);
  return connections && { ...rig, backup: { ...rig.backup!, connections } };
}

function judgeAnchorPart(
  rig: Rig,
  anchor: "anchorA" | "anchorB",
  list: string | undefined,
  index: string | undefined,
  own: OwnJudgement,
): Rig | undefined {
  if (list !== "points" && list !== "hardware") return undefined;
  const parts = judged(rig[anchor][list], index, own);
  return parts && { ...rig, [anchor]: { ...rig[anchor], [list]: parts } satisfies AnchorSide };
}

function judged<T extends object>(parts: readonly T[], index: string | undefined, own: OwnJudgement): T[] | undefined {
  const at = /^\d+$/.test(index ?? "") ? Number(index) : -1;
  return parts[at] === undefined ? undefined : parts.map((part, i) => (i === at ? { ...part, own } : part));
}
