import { readFileSync } from "node:fs";
import { readRig } from "@secondline/rig";
import { expect, it } from "vitest";
import { englishWords as words } from "../src/index.ts";

function demoRig(name: string) {
  const read = readRig(readFileSync(new URL(`../../../demo-data/${name}.json`, import.meta.url), "utf8"));
  if (!read.ok) throw new Error(JSON.stringify(read.issues[0]));
  return read.rig;
}

it("what happens is named once, with its load or speed", () => {
  expect(words.moment([{ time: 0, kind: "cut", part: "main", at: 0 }])).toBe("main line fails");
  expect(words.momentText([{ time: 0, kind: "break", part: "leash", value: 12_300 }])).toBe(
    "Leash gives way at 12.3 kN",
  );
  expect(words.momentText([{ time: 0, kind: "ground", part: "walker", value: 7.21 }])).toBe("Ground at 7.3 m/s");
});

it("like moments are counted, and the hardest of them is told", () => {
  const tape = (value: number) => ({ time: 0, kind: "break", part: "tape", value }) as const;
  expect(words.momentText([tape(300), tape(310)])).toBe("2 tapes give way, up to 0.31 kN");
  const slip = { time: 0, kind: "slip", part: "weblockB", value: 9000 } as const;
  expect(words.momentText([slip, slip])).toBe("Weblock at B slips, 2 times, up to 9.00 kN");
  const line = { time: 0, kind: "break", part: "main" } as const;
  expect(words.moment([line, line])).toBe("main line gives way in 2 places");
});

it("the end of a run is no lowest point while the walker still falls", () => {
  const lowest = [{ time: 4, kind: "lowest", part: "walker" }] as const;
  expect([words.moment(lowest), words.moment(lowest, true)]).toEqual(["lowest point", "still falling"]);
});

it("a break has the name that the run's outcome gives it, and only where that names it", () => {
  const rig = demoRig("sound-rig");
  const broke = { time: 1.61, kind: "break", part: "backup", at: 0, value: 5810 } as const;
  const told = { rig, gaveWay: [{ part: "backup.endA", time: 1.61, at: 0 }] } as const;
  const end = words.partName(rig, "backup.endA");
  expect(words.momentText([broke], false, told)).toBe(`${end} gives way at 5.81 kN`);
  expect(words.placedMoment(rig, broke, told.gaveWay)).toBe(`${end} gives way at 5.81 kN`);
  expect(words.moment([{ ...broke, time: 2 }], false, told)).toBe("backup gives way");
});
