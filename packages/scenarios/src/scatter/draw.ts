/** One draw of everything that is not known exactly when somebody falls, and the rig and the event as it has them. */
import type { LineStock, Rig, WebbingSection } from "@secondline/rig";
import { shifted, type WhatIf } from "../events/registry.ts";
import type { InputId } from "./inputs.ts";

/**
 * Factors on what the rig says [-]; of the place what is added to it, as a fraction of the line [-], and of the moment of a
 * failure what is added to that [s]. What is not in it is as the rig and the event say.
 */
export type Draw = Readonly<Partial<Record<InputId, number>>>;
export const NO_DRAW: Draw = {};

export interface DrawnEvent {
  readonly rig: Rig;
  readonly event: WhatIf;
  /** Factor on the time in which the feet let go [-]. */
  readonly letGo: number;
}

export function drawn(rig: Rig, event: WhatIf, draw: Draw): DrawnEvent {
  const { place = 0, moment = 0, letGo = 1, mass = 1, pretension = 1, slack = 1, leashLength = 1, friction = 1 } = draw;
  const { stiffness = 1, backupStiffness = 1, leashStiffness = 1, damping = 1 } = draw;
  const { backup } = rig;
  return {
    letGo,
    event: place === 0 && moment === 0 ? event : shifted(event, place, moment),
    rig: {
      ...rig,
      walker: {
        ...rig.walker,
        mass: rig.walker.mass * mass,
        ...(rig.walker.rescuer === undefined ? {} : { rescuer: rig.walker.rescuer * mass }),
      },
      main: {
        ...rig.main,
        pretension: rig.main.pretension * pretension,
        sections: rig.main.sections.map((one) => otherStock(one, stiffness, damping)),
      },
      ...(backup
        ? {
            backup: {
              ...backup,
              slack: backup.slack * slack,
              sections: backup.sections.map((one) => otherStock(one, backupStiffness, damping)),
            },
          }
        : {}),
      leash: {
        ...rig.leash,
        length: rig.leash.length * leashLength,
        stock: scaled(rig.leash.stock, leashStiffness, damping),
      },
      rings: rig.rings.map((ring) => ({ ...ring, friction: ring.friction * friction })),
    },
  };
}

const otherStock = (section: WebbingSection, stiffness: number, damping: number): WebbingSection => ({
  ...section,
  stock: scaled(section.stock, stiffness, damping),
});

/** The whole tension law times the stiffness; its fast branches, which take up energy, times the damping too. */
function scaled(stock: LineStock, stiffness: number, damping: number): LineStock {
  if (stiffness === 1 && damping === 1) return stock;
  return {
    ...stock,
    curve: stock.curve.map(([strain, tension]) => [strain, tension * stiffness] as const),
    branches: stock.branches.map(([force, time]) => [force * stiffness * damping, time] as const),
  };
}
