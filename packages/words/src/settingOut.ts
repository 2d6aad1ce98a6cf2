/** What to measure off before a rig is put up: webbing from anchor to anchor, and where the lines are tied together. */
import { backupNaturalLength, mainNaturalLength, type Rig } from "@secondline/rig";
import type { LaterSay } from "./laterLanguage.ts";
import { cutAt } from "./quantity.ts";

/** Lengths are natural ones: of webbing that lies flat and carries nothing. */
export function webbingToLayOut(say: LaterSay, rig: Rig): string {
  const main = cutAt(mainNaturalLength(rig));
  return rig.backup
    ? say("rig.layOutBoth", { main, backup: cutAt(backupNaturalLength(rig)) })
    : say("rig.layOutMain", { main });
}

/** Undefined where nothing joins the lines. Tapes are not told: the lines keep together by them wherever they sit. */
export function tiedAt(say: LaterSay, rig: Rig): string | undefined {
  const [main, backup] = [mainNaturalLength(rig), backupNaturalLength(rig)];
  const places = (rig.backup?.connections ?? [])
    .filter(({ kind }) => kind === "connection")
    .map(({ at }) => say("rig.tiedPlace", { main: cutAt(at * main), backup: cutAt(at * backup) }));
  return places.length === 0 ? undefined : say("rig.tiedAt", { places: places.join(say("rig.tiedNext")) });
}
