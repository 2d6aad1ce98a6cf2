/** The rig of a first visit, and what the demo rigs are called; the others come when they are asked for. */

import type { Rig } from "@secondline/rig";
import type { WrittenRig } from "@secondline/workbench";
import soundRig from "../../../../demo-data/sound-rig.json?raw";

export const FIRST_RIG = JSON.parse(soundRig) as WrittenRig;

export const DEMO_TITLES = [
  { title: "Demo: a sound rig", detail: "New webbing, backup connected in three places" },
  { title: "Demo: a loose backup", detail: "Too much slack, no connections" },
  { title: "Demo: an old rig", detail: "Much sun, and a clamp mark inside the span" },
] as const;

/** The demo rig that the example of a wear record speaks of: the old one. */
const EXAMPLE_WEAR_OF = { id: "long-gap-old", name: "Example crag, Long Gap: old" };

export const hasExampleWear = ({ id, name, invented }: Pick<Rig, "id" | "name" | "invented">): boolean =>
  invented && (id === EXAMPLE_WEAR_OF.id || name === EXAMPLE_WEAR_OF.name);
