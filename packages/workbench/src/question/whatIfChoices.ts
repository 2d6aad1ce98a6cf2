/** What-ifs as choices: kinds, what the walker does, legs. */
import type { Rig } from "@secondline/rig";
import type { WhatIf } from "@secondline/scenarios";
import { lowered, englishWords as words } from "@secondline/words";
import { sayPage } from "@secondline/words/page/page";

const KINDS = [
  { value: "leashFall", label: sayPage("question.leashFall") },
  { value: "mainFails", label: sayPage("question.mainLineFails") },
  { value: "legFails", label: sayPage("question.legFails") },
] as const;
const RESCUE = { value: "rescue", label: sayPage("question.rescue") } as const;
export const WALKERS = [
  { value: "hanging", label: sayPage("question.hangsLeash") },
  { value: "standing", label: sayPage("question.stands") },
  { value: "caught", label: sayPage("question.beingCaught") },
] as const;

/** A leg that fails either while nothing happens or at the worst of a catch. */
export const WALKERS_AT_A_LEG = WALKERS.filter((one) => one.value !== "standing");

/** The kinds to choose from; what follows when a part gives way is found by the search, and stands here while it is looked at. */
export function kindsFor(
  whatIf: WhatIf,
  rig: Rig,
): readonly { readonly value: WhatIf["kind"]; readonly label: string }[] {
  const all = legChoices(rig).length > 0 || whatIf.kind === "legFails" ? KINDS : KINDS.slice(0, 2);
  const kinds = rig.walker.rescuer !== undefined || whatIf.kind === "rescue" ? [...all, RESCUE] : all;
  if (whatIf.kind !== "givesWay") return kinds;
  return [
    ...kinds,
    { value: "givesWay", label: sayPage("question.givesWay", { partName: lowered(words.partName(rig, whatIf.part)) }) },
  ];
}

/** The same place, in another kind of event. */
export function ofKind(kind: WhatIf["kind"], now: WhatIf, rig: Rig): WhatIf {
  if (kind === now.kind) return now;
  switch (kind) {
    case "leashFall":
      return { kind, at: now.at };
    case "mainFails":
      return { kind, at: now.at, cutAt: 0, walker: "hanging" };
    case "legFails":
      return { kind, at: now.at, ...readLeg(legChoices(rig)[0]?.value ?? "A0"), walker: "caught" };
    case "rescue":
      return { kind, at: now.at };
    case "givesWay":
      return now;
  }
}

/** Legs that can fail: those of anchors with several points, as choices. */
export function legChoices(rig: Rig): readonly { readonly value: string; readonly label: string }[] {
  return (["A", "B"] as const).flatMap((name) => {
    const { points } = name === "A" ? rig.anchorA : rig.anchorB;
    if (points.length < 2) return [];
    return points.map((point, leg) => ({
      value: `${name}${leg}`,
      label: sayPage("question.legAt", { name: point.name, anchor: name }),
    }));
  });
}

/** A leg as a choice has it. */
export function readLeg(value: string): { readonly anchor: "A" | "B"; readonly leg: number } {
  return { anchor: value.startsWith("B") ? "B" : "A", leg: Number(value.slice(1)) };
}
