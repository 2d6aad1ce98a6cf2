/** A rig and a what-if as seen from the other side of the gap: A and B change places. */
import {
  backupSectionLengths,
  type LineEnd,
  mainSectionLengths,
  type Rig,
  type Wear,
  type WebbingSection,
} from "@secondline/rig";
import type { WhatIf } from "@secondline/scenarios";

export function mirrorWhatIf(whatIf: WhatIf): WhatIf {
  const at = 1 - whatIf.at;
  switch (whatIf.kind) {
    case "leashFall":
      return { ...whatIf, at };
    case "mainFails":
      return { ...whatIf, at, cutAt: 1 - whatIf.cutAt };
    case "legFails":
      return { ...whatIf, at, anchor: whatIf.anchor === "A" ? "B" : "A" };
    case "rescue": {
      const during = whatIf.during && (mirrorWhatIf(whatIf.during) as typeof whatIf.during);
      return { ...whatIf, at, ...(during ? { during } : {}) };
    }
    case "givesWay":
      throw new Error("not mirrored here: a part's id would have to be mirrored with its rig");
  }
}

export function mirrorRig(rig: Rig): Rig {
  return {
    ...rig,
    rise: -rig.rise,
    // Heights count from anchor A, which now is the other one.
    ground: rig.ground.map(([x, z]) => [rig.span - x, z - rig.rise] as const).reverse(),
    anchorA: rig.anchorB,
    anchorB: rig.anchorA,
    main: { ...rig.main, ...mirrorLine(rig.main, mainSectionLengths(rig)) },
    ...(rig.backup
      ? {
          backup: {
            ...rig.backup,
            ...mirrorLine(rig.backup, backupSectionLengths(rig)),
            connections: rig.backup.connections.map((one) => ({ ...one, at: 1 - one.at })).reverse(),
          },
        }
      : {}),
  };
}

interface LineOfRig {
  readonly sections: readonly WebbingSection[];
  readonly endA: LineEnd;
  readonly endB: LineEnd;
}

function mirrorLine({ sections, endA, endB }: LineOfRig, lengths: readonly number[]): LineOfRig {
  return {
    sections: sections
      .map((section, i) => ({ ...section, wear: section.wear.map((wear) => mirrorWear(wear, lengths[i]!)) }))
      .reverse(),
    endA: endB,
    endB: endA,
  };
}

function mirrorWear(wear: Wear, length: number): Wear {
  return "at" in wear ? { ...wear, at: length - wear.at } : { ...wear, from: length - wear.to, to: length - wear.from };
}
