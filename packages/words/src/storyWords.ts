/** The story of one run in words. The part that holds the walker is read off the run, never off the question. */

import type { PartId, Rig } from "@secondline/rig";
import type { Trouble, WhatIfOutcome } from "@secondline/scenarios";
import { type Language, sayIn } from "./language.ts";
import { listed } from "./lists.ts";
import { capital, lowered, partName } from "./partNames.ts";
import { phraseText } from "./phrases.ts";
import { drop, load, seconds, speed } from "./quantity.ts";

/** For somebody on the line: "The backup caught you 5.5 m down. Hardest pull on your harness: 3.31 kN." */
export function storySentences(language: Language, rig: Rig, run: WhatIfOutcome): readonly string[] {
  const say = sayIn(language);
  if (!run.ok || !run.peaks) return [troubleText(language, rig, run.trouble)];
  const parts = partsThatGaveWay(run);
  const said = parts.slice(0, MOST_TOLD).map(({ part, time, places }) => {
    const values = { part: capital(partName(say, rig, part)), time: seconds(time) };
    return places > 1 ? say("story.gaveWayOften", { ...values, count: places - 1 }) : say("story.gaveWay", values);
  });
  const more = parts.length - said.length;
  const others = more > 0 ? [say("story.moreGaveWay", { count: more })] : [];
  return [fateSentence(language, run), ...said, ...others, say("story.pull", { pull: load(run.peaks.leash) })];
}

/** Parts that are told by name, the first to go first [-]. */
const MOST_TOLD = 4;

/** Each part once, with the time at which it first gave way and in how many places it did: a line that holds nothing goes to pieces. */
function partsThatGaveWay(run: WhatIfOutcome) {
  const places = new Map<PartId, { readonly part: PartId; readonly time: number; places: number }>();
  for (const { part, time } of run.gaveWay.filter(isToldApart(run))) {
    const known = places.get(part);
    if (known) known.places += 1;
    else places.set(part, { part, time, places: 1 });
  }
  return [...places.values()];
}

/** The parting of the leash is told as the fate of the walker. */
const isToldApart =
  ({ lostBecause }: WhatIfOutcome) =>
  ({ part }: WhatIfOutcome["gaveWay"][number]): boolean =>
    !(lostBecause === "leash" && part === "leash");

function fateSentence(language: Language, run: WhatIfOutcome): string {
  const say = sayIn(language);
  const { lostBecause } = run;
  if (lostBecause === undefined) {
    if (run.caughtBy === "nothing") return say("story.notCaught");
    return capital(say("story.caught", { catcher: say(`catcher.${run.caughtBy}`), drop: drop(run.drop!) }));
  }
  switch (lostBecause) {
    case "ground": {
      const how = run.groundSpeed === undefined ? "" : say("story.speed", { speed: speed(run.groundSpeed) });
      return say("story.ground", { speed: how });
    }
    case "leash":
    case "ring":
      return say(`story.${lostBecause}`);
    case "freeFall":
      return say("story.notCaught");
  }
}

/** For a table: "caught by the backup", "reaches the ground"; other parts that gave way stand behind. */
export function fateText(language: Language, rig: Rig, run: WhatIfOutcome): string {
  const say = sayIn(language);
  if (!run.ok) return say("fate.notRun");
  const parts = partsThatGaveWay(run).map(({ part }) => lowered(partName(say, rig, part)));
  const also = parts.length === 0 ? [] : [say("fate.gaveWay", { parts: listed(parts), count: parts.length })];
  return listed([shortFate(language, run), ...also], "semicolon");
}

function shortFate(language: Language, run: WhatIfOutcome): string {
  const say = sayIn(language);
  if (run.lostBecause === "ground") return say("fate.ground");
  if (run.lostBecause === "leash" || run.lostBecause === "ring") return say(`fate.${run.lostBecause}`);
  if (run.caughtBy === "nothing") return say("fate.nothing");
  if (run.feetClearance !== undefined && run.feetClearance <= 0) return say("fate.feet");
  const key = run.tooMuch ? "fate.tooMuch" : "fate.caught";
  return say(key, { catcher: say(`catcher.${run.caughtBy}`) });
}

/** The reason why a run gave no numbers. */
export function troubleText(language: Language, rig: Rig, trouble: Trouble | undefined): string {
  const say = sayIn(language);
  if (!trouble) return say("fate.notRun");
  if (trouble.reason === "missing") {
    return say("trouble.missing", { what: trouble.phrase ? phraseText(language, rig, trouble.phrase) : "" });
  }
  return say(`trouble.${trouble.reason}`, { detail: trouble.detail ?? "" });
}
