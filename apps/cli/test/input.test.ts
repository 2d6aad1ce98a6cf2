import { readFileSync, truncateSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { command, demo, type Finished, fixture, repository, scratch } from "./support/command.ts";

let secondline: (...args: string[]) => Promise<Finished>;
beforeAll(async () => {
  secondline = await command();
}, 60_000);

const refused = async (...args: string[]) => {
  const { status, out, err } = await secondline(...args);
  expect(status).toBe(2);
  expect(out).toBe("");
  expect(err).not.toContain("    at ");
  return err;
};

describe("the command line itself", () => {
  it("shows examples before it explains", async () => {
    const { status, out } = await secondline("--help");
    expect(status).toBe(0);
    expect(out.indexOf("secondline check rig.json")).toBeLessThan(out.indexOf("Usage:"));
    expect(out).toContain("Exit status: 0 done; 1 with --require");
    expect(out).toContain("It does not replace inspection");
  });

  it("prints the version of the repository", async () => {
    const { version } = JSON.parse(readFileSync(join(repository, "package.json"), "utf8"));
    expect((await secondline("--version")).out.trim()).toBe(version);
  });

  it("says what is wrong with a command it does not know, and with a missing argument", async () => {
    expect(await refused("chekc", "rig.json")).toContain("unknown command 'chekc'");
    expect(await refused("check")).toContain("missing required argument 'rig'");
    expect(await refused("check", "x.json", "--accuracy", "perfect")).toContain("quick, standard, fine");
  });
});

describe("a file that cannot be used", () => {
  it("is named when it is not there, or is a folder", async () => {
    expect(await refused("check", "nowhere.json")).toContain("nowhere.json: there is no such file");
    expect(await refused("check", scratch())).toContain("this is a folder");
  });

  it("is refused for its size without being read", async () => {
    const file = join(scratch(), "huge.json");
    writeFileSync(file, "{}");
    // All hole, no data: more than can be read into memory at once.
    truncateSync(file, 3 * 2 ** 30);
    expect(await refused("check", file)).toContain("huge.json: 3072 MB is too large");
    expect(await refused("validate", file)).toContain("huge.json: 3072 MB is too large");
  });

  it("is named when it is not JSON, or somebody else's JSON", async () => {
    const dir = scratch();
    writeFileSync(join(dir, "text.json"), "{ not json");
    writeFileSync(join(dir, "other.json"), '{"hello": "world"}');
    expect(await refused("check", join(dir, "text.json"))).toMatch(/text\.json.*\n.*not JSON/);
    expect(await refused("check", join(dir, "other.json"))).toContain("other.json");
    expect(await refused("validate", join(dir, "other.json"))).toContain("none of ours");
  });

  it("is told every fault at once, each with its path, what was got and what was expected", async () => {
    const rig = JSON.parse(readFileSync(demo("sound-rig.json"), "utf8"));
    rig.span = "-60 m";
    rig.main.pretension = "2.5 bananas";
    rig.colour = "red";
    delete rig.leash;
    const file = join(scratch(), "bad.json");
    writeFileSync(file, JSON.stringify(rig));
    for (const name of ["check", "validate"]) {
      const err = await refused(name, file);
      for (const path of ["span", "main.pretension", "colour", "leash"])
        expect(err).toMatch(new RegExp(`^  ${path.replace(".", "\\.")}: \\S`, "m"));
      expect(err).toContain("4 faults");
      expect(err).toContain("2.5 bananas");
    }
  });

  it("is told when a problem's numbers make no sense", async () => {
    const problem = JSON.parse(readFileSync(fixture("short-fall.json"), "utf8"));
    problem.main.material.mass = 0;
    problem.walker.at = 2;
    const file = join(scratch(), "bad-problem.json");
    writeFileSync(file, JSON.stringify(problem));
    const err = await refused("solve", file, "--json");
    expect(err).toContain("main.material.mass");
    expect(err).toContain("walker.at");
  });

  it("is told line and column of every fault in a break log", async () => {
    const file = join(scratch(), "bad.csv");
    writeFileSync(
      file,
      "part,material,state,wet,outcome,result,unit\nwebbing,pes,new,no,broke,-3,kN\nwebbing,pes,new,maybe,broke,20,kN\n",
    );
    const err = await refused("strength", file);
    expect(err).toContain("line 2, result");
    expect(err).toContain("line 3, wet");
    expect(err).toContain("nothing was read");
  });
});

describe("options that make no sense", () => {
  it("are explained with an example", async () => {
    expect(await refused("check", demo("sound-rig.json"), "--what-if", "fall@2")).toContain("fails@0,hanging@0.5");
    expect(await refused("check", demo("sound-rig.json"), "--on", "1 July")).toContain("a date such as 2026-07-01");
    const wear = ["--wear", demo("old-rig-wear.json")];
    expect(await refused("check", demo("old-rig.json"), ...wear)).toContain("--wear needs --on");
    expect(await refused("wear", demo("old-rig.json"), ...wear, "--on", "2026-02-30")).toContain('got "2026-02-30"');
    expect(await refused("compare", demo("sound-rig.json"))).toContain("two to four rigs, got 1");
  });
});

describe("validate", () => {
  it("tells a rig, a problem, a wear record and a break log apart, and finds no fault in sound ones", async () => {
    for (const [file, word] of [
      [demo("sound-rig.json"), "a rig"],
      [fixture("short-fall.json"), "a problem"],
      [fixture("breaks.csv"), "a break log of 7 tests"],
      [demo("old-rig-wear.json"), "a wear record"],
    ] as const) {
      const { status, out } = await secondline("validate", file);
      expect(status).toBe(0);
      expect(out).toContain(word);
    }
  });
});
