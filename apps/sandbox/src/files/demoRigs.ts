/** The demo rigs; every number in them is invented, and they say so. */

import type { Rig } from "@secondline/rig";
import looseBackup from "../../../../demo-data/loose-backup.json?raw";
import oldRig from "../../../../demo-data/old-rig.json?raw";
import soundRig from "../../../../demo-data/sound-rig.json?raw";
import type { WrittenRig } from "../state/types.ts";

const demo = (title: string, detail: string, text: string) => ({
  title,
  detail,
  document: JSON.parse(text) as WrittenRig,
});

export const DEMO_RIGS = [
  demo("Demo: a sound rig", "New webbing, backup connected in three places", soundRig),
  demo("Demo: a loose backup", "Too much slack, no connections", looseBackup),
  demo("Demo: an old rig", "Much sun, and a clamp mark inside the span", oldRig),
] as const;
/** The rig that the example of a wear record speaks of. */
const EXAMPLE_WEAR_OF: { readonly id?: unknown; readonly name?: unknown } = DEMO_RIGS[2].document;

export const hasExampleWear = ({ id, name, invented }: Pick<Rig, "id" | "name" | "invented">): boolean =>
  invented && (id === EXAMPLE_WEAR_OF.id || name === EXAMPLE_WEAR_OF.name);

export const FIRST_RIG: WrittenRig = DEMO_RIGS[0].document;
