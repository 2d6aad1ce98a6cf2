/** The rig as it was put in: what weakens it is never told smaller than it is. */
import { expect, it } from "vitest";
import { english } from "../src/index.ts";
import { rigRows } from "../src/rigWords.ts";
import { demoRig } from "./outcomes.ts";

it("rounds depths of wear, slack, and falls that were shared out up", () => {
  const rig = demoRig("old-rig.json");
  const [section, ...rest] = rig.main.sections;
  const wear = [
    { kind: "abrasion", depth: 0.1249, from: 20, to: 21 },
    { kind: "cut", depth: 0.0312, at: 30 },
    { kind: "fallZone", falls: 79.2, from: 20, to: 30 },
  ] as const;
  const worn = {
    ...rig,
    main: { ...rig.main, sections: [{ ...section!, wear }, ...rest] },
    backup: { ...rig.backup!, slack: 0.05512 },
    leash: { ...rig.leash, sheathSlip: 0.0441, glazed: 0.121, falls: 80.5 },
  };
  const said = rigRows(english, worn)
    .map(({ value }) => value)
    .join("\n");
  for (const text of ["13 %", "3.2 %", "80 falls", "5.6 %", "4.5 %", "81 falls"]) expect(said).toContain(text);
});
