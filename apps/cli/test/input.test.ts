import { existsSync, readFileSync, truncateSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { shown } from "../src/output.ts";
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
    expect(out).toMatch(/Exit status:\n {2}0 {2}the command is done\n {2}1 {2}--require was given/);
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
    expect(await refused("check", file)).toContain("huge.json: 3221.3 MB is too large");
    expect(await refused("validate", file)).toContain("huge.json: 3221.3 MB is too large");
  });

  it("is named when it is not JSON, or somebody else's JSON", async () => {
    const dir = scratch();
    writeFileSync(join(dir, "text.json"), "{ not json");
    writeFileSync(join(dir, "other.json"), '{"hello": "world"}');
    expect(await refused("check", join(dir, "text.json"))).toMatch(/text\.json.*\n.*not JSON/);
    expect(await refused("check", join(dir, "other.json"))).toContain("other.json");
    expect(await refused("validate", join(dir, "other.json"))).toContain("none of ours");
  });

  it("is told every fault at once, each with its path, the value found and the value expected", async () => {
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

describe("a file that would deceive", () => {
  const written = (name: string, text: string) => {
    const file = join(scratch(), name);
    writeFileSync(file, text);
    return file;
  };
  const rig = readFileSync(demo("sound-rig.json"), "utf8");
  const problem = readFileSync(fixture("short-fall.json"), "utf8");
  const wear = readFileSync(demo("old-rig-wear.json"), "utf8");
  const FORMATS = { rig, problem, wear };

  it.each(Object.entries(FORMATS))("is refused for a name given twice, in a %s", async (_, text) => {
    const err = await refused("validate", written("twice.json", text.replace("{", '{"name": "first",')));
    expect(err).toMatch(/^ {2}name: This is given twice/m);
  });

  it.each(Object.entries(FORMATS))("is refused for what is not seen, and shows it, in a %s", async (_, text) => {
    const hidden = text.replace(/"name": "/, '"name": "\\u001b[2K\u202e');
    const err = await refused("validate", written("hidden.json", hidden));
    expect(err).toMatch(/^ {2}name: There is a control character \(U\+001B\)/m);
    expect(err).toContain("\\u001b[2K\\u202e");
    expect(/[\p{Cc}\u202e]/u.test(err.replaceAll("\n", ""))).toBe(false);
  });

  it.each(Object.entries(FORMATS))("has its first faults listed and the others counted, in a %s", async (_, text) => {
    const keys = Array.from({ length: 80_000 }, (_each, i) => `"k${i}":0`).join(",");
    const err = await refused("validate", written("keys.json", text.replace("{", `{${keys},`)));
    expect(err).toContain("keys.json: 80000 faults");
    expect(err).toContain("… and 79,980 more");
    expect(err.trim().split("\n")).toHaveLength(22);
  });

  it("is refused for nesting without end, and for a name as long as a file", async () => {
    const deep = written("deep.json", "[".repeat(4_000_000));
    for (const command of ["validate", "check", "solve"]) {
      const err = await refused(command, deep);
      expect(err).toMatch(/within one another|too large/);
      expect(err.length).toBeLessThan(500);
    }
    const long = written("long.json", problem.replace("{", `{"${"x".repeat(500_000)}": 1,`));
    expect((await refused("solve", long)).length).toBeLessThan(1000);
  });

  it("is read through a pipe no further than it may be large", async () => {
    if (existsSync("/dev/zero")) expect(await refused("check", "/dev/zero")).toContain("more than 1 MB is too large");
  });

  it("cannot move the cursor with its own name", async () => {
    expect(await refused("check", "\x1b[2Kno\u202e.json")).toBe("\\u001b[2Kno\\u202e.json: there is no such file\n");
    expect(await refused("check\x1b[2K")).toContain("unknown command 'check\\u001b[2K'");
  });
});

describe("what is shown", () => {
  it("keeps line breaks and, on a terminal, colours of our own; nothing else that moves or turns", () => {
    expect(shown("one\n\x1b[1mtwo\x1b[22m\x1b[31m", true)).toBe("one\n\x1b[1mtwo\x1b[22m\x1b[31m");
    expect(shown("\x1b[1m", false)).toBe("\\u001b[1m");
    expect(shown("\x1b[2J\r\x1b[8mhidden\u202e", true)).toBe("\\u001b[2J\\u000d\\u001b[8mhidden\\u202e");
  });
});

describe("options that make no sense", () => {
  it("are explained with an example", async () => {
    expect(await refused("check", demo("sound-rig.json"), "--what-if", "fall@2")).toContain("fails@0,hanging@0.5");
    expect(await refused("check", demo("sound-rig.json"), "--on", "1 July")).toContain("a date such as 2026-07-01");
    const wear = ["--wear", demo("old-rig-wear.json")];
    expect(await refused("check", demo("old-rig.json"), ...wear)).toContain(
      "--on: A wear record gives a state only on a date",
    );
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
