/** What the README shows of the terminal is what the program says: the whole search of the old demo rig, minutes. */
import { readFileSync } from "node:fs";
import { beforeAll, describe, expect, it } from "vitest";
import { command, demo, type Finished } from "../../apps/cli/test/support/command.ts";

const readme = readFileSync(new URL("../../README.md", import.meta.url), "utf8").replaceAll("\r\n", "\n");
const shown = /check demo-data\/old-rig\.json\n```\n\n```\n(.*?)```/s.exec(readme)?.[1] ?? "";
/** Between two dots of leaving out. */
const stretches = shown.split(/^\u2026\n/m).map((one) => one.trimEnd());

describe("the README", () => {
  let said: Finished;
  beforeAll(async () => {
    const secondline = await command();
    said = await secondline("check", demo("old-rig.json"));
  }, 1_800_000);

  it("shows a piece of what the program says", () => {
    expect(said.status).toBe(0);
    expect(stretches.length).toBeGreaterThan(2);
  });

  it.each(stretches.map((stretch, i) => [i + 1, stretch] as const))(
    "shows stretch %i of it as it is, in its place",
    (i, stretch) => {
      const lines = (text: string) =>
        text
          .split("\n")
          .map((line) => line.trimEnd())
          .join("\n")
          .trim();
      expect(lines(said.out)).toContain(lines(stretch));
      const places = stretches.slice(0, i).map((one) => lines(said.out).indexOf(lines(one)));
      expect([...places].sort((a, b) => a - b)).toEqual(places);
    },
  );
});
