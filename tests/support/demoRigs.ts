/** The demo rigs, read as a user's files are. */
import { readdirSync, readFileSync } from "node:fs";
import { type Rig, readRig } from "@secondline/rig";

const folder = new URL("../../demo-data/", import.meta.url);

/** Every rig document in demo-data, by file name. */
export const demoRigs: readonly (readonly [name: string, rig: Rig])[] = readdirSync(folder)
  .filter((name) => name.endsWith("-rig.json") || name === "loose-backup.json")
  .sort()
  .map((name) => {
    const reading = readRig(readFileSync(new URL(name, folder), "utf8"));
    if (!reading.ok) throw new Error(`${name}: ${reading.issues.map((issue) => issue.message).join(" ")}`);
    return [name, reading.rig];
  });

export function demoRig(name: string): Rig {
  const found = demoRigs.find(([file]) => file === name);
  if (!found) throw new Error(`There is no demo rig ${name}.`);
  return found[1];
}
