/** Rigs and loads by chance, with a seed: for what must hold of every rig, not of the few that somebody thought of. */
import type { PartId } from "@secondline/rig";
import { type Rig, type RunOrder, whatIfKey } from "../src/index.ts";

import type { MadeUp } from "./madeUpRuns.ts";
import { testRig } from "./testRig.ts";

/** A number from 0 to 1 that depends on the text alone (FNV-1a) [-]. */
export function chanceOf(text: string): number {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  hash = Math.imul(hash ^ (hash >>> 15), 0x2c1b3c6d);
  return ((hash ^ (hash >>> 13)) >>> 0) / 2 ** 32;
}

/** Points, hardware, connections, span and backup by chance. */
export function randomRig(seed: number): Rig {
  const pick = (what: string, most: number) => Math.floor(chanceOf(`${seed} ${what}`) * most);
  const side = (name: "anchorA" | "anchorB"): Rig["anchorA"] => ({
    ...testRig[name],
    points: Array.from({ length: 1 + pick(`${name} points`, 3) }, () => testRig[name].points[0]!),
    hardware: Array.from({ length: pick(`${name} hardware`, 3) }, (_, i) => ({
      ...testRig[name].hardware[0]!,
      ...(i === 1 ? { carries: "backup" as const } : {}),
    })),
  });
  const count = pick("connections", 4);
  const connections = Array.from({ length: count }, (_, i) => ({
    ...testRig.backup!.connections[1]!,
    at: (i + 1) / (count + 1),
  }));
  const { backup, ...rest } = testRig;
  const alone = pick("backup", 8) === 0;
  return {
    ...rest,
    ...(alone ? {} : { backup: { ...backup!, connections } }),
    span: 20 + pick("span", 100),
    anchorA: side("anchorA"),
    anchorB: side("anchorB"),
  };
}

/** Loads by chance: most of them small, here and there an event that is too much; now and then a walker whom nothing holds. */
export function randomLoads(seed: number): MadeUp {
  const ofEvent = (order: RunOrder, what: string) => chanceOf(`${seed} ${what} ${whatIfKey(order.event)}`);
  const of = (order: RunOrder, what: string) => ofEvent(order, `${what} ${JSON.stringify(order.draw)}`);
  const wild = chanceOf(`${seed} wild`);
  return {
    share: (part: PartId, order) =>
      0.05 +
      0.1 * of(order, part) +
      (ofEvent(order, `${part}!`) < 0.01 * wild ? 0.2 + 0.6 * ofEvent(order, `${part}?`) : 0),
    run: (order) => (ofEvent(order, "lost") < 0.001 * wild ? { caughtBy: "nothing", lostBecause: "freeFall" } : {}),
  };
}
