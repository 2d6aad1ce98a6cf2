import { readFileSync } from "node:fs";
import { readRig } from "@secondline/rig";
import type { ReadRig, WrittenRig } from "../src/index.ts";

/** A demo rig, as its file holds it. */
export const demoDocument = (file = "sound-rig.json"): WrittenRig =>
  JSON.parse(readFileSync(new URL(`../../../demo-data/${file}`, import.meta.url), "utf8"));

export const read: ReadRig = (source) => readRig(source) as ReturnType<ReadRig>;
