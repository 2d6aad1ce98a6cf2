/** What a report says to measure off before a rig is put up. */
import { readFileSync } from "node:fs";
import { type Rig, readRig } from "@secondline/rig";
import { expect, it } from "vitest";
import { english } from "../src/index.ts";
import { rigRows } from "../src/rigWords.ts";

const demo = JSON.parse(readFileSync(new URL("../../../demo-data/sound-rig.json", import.meta.url), "utf8"));

function rig(changes: object): Rig {
  const reading = readRig({
    ...demo,
    ground: [
      ["0 m", "-60 m"],
      ["60 m", "-60 m"],
    ],
    ...changes,
  });
  if (!reading.ok) throw new Error(JSON.stringify(reading.issues));
  return reading.rig;
}
const row = (of: Rig, name: string) => rigRows(english, of).find((one) => one.name === name)?.value;

/** 1 % longer at 3 kN: a level line of 50.5 m is 50 m of it. */
const LEVEL = {
  span: "50.5 m",
  rise: "0 m",
  stocks: [
    {
      id: "straight",
      like: "polyester-webbing-25",
      basis: "assumed: of a test",
      curve: [
        ["0 %", "0 kN"],
        ["10 %", "30 kN"],
      ],
    },
  ],
  main: { ...demo.main, pretension: "3 kN", sections: [{ stock: "straight" }] },
};

it("tells lengths of webbing that lies flat, and the marks at which the lines are tied together", () => {
  const level = rig({
    ...LEVEL,
    backup: {
      ...demo.backup,
      slack: "4 %",
      connections: [
        { at: 0.25, strength: "22 kN" },
        { at: 0.5, strength: "22 kN" },
      ],
    },
  });
  expect(row(level, "Webbing, anchor to anchor")).toMatch(/^main line 50 m, backup 52\.52 m, /);
  expect(row(level, "Tied together")).toBe(
    "from A, lying flat: main line 12.5 m to backup 13.13 m; main line 25 m to backup 26.26 m",
  );
});

it("says of a rig without a backup how long its one line is, and nothing of ties", () => {
  const alone = rig({ ...LEVEL, backup: undefined });
  expect(row(alone, "Webbing, anchor to anchor")).toMatch(/^main line 50 m, measured/);
  expect(row(alone, "Tied together")).toBeUndefined();
});
