/** The demo rigs; every number in them is invented, and they say so. */

import type { WrittenRig } from "@secondline/workbench";
import looseBackup from "../../../../demo-data/loose-backup.json?raw";
import oldRig from "../../../../demo-data/old-rig.json?raw";
import { DEMO_TITLES, FIRST_RIG } from "./firstRig.ts";

const DOCUMENTS = [FIRST_RIG, JSON.parse(looseBackup) as WrittenRig, JSON.parse(oldRig) as WrittenRig] as const;

export const DEMO_RIGS = DEMO_TITLES.map((titles, i) => ({ ...titles, document: DOCUMENTS[i]! }));
