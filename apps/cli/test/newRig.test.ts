import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { readRig } from "@secondline/rig";
import { beforeAll, describe, expect, it } from "vitest";
import { askAnswers } from "../src/newRig/askAnswers.ts";
import { command, scratch } from "./support/command.ts";

let run: Awaited<ReturnType<typeof command>>;
beforeAll(async () => {
  run = await command();
});
const rigAt = (file: string) => {
  const read = readRig(readFileSync(file, "utf8"));
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  return read.rig;
};

describe("new", () => {
  it("writes a rig of the answers that it was given, and says what is not confirmed", async () => {
    const file = join(scratch(), "rig.json");
    const { status, out } = await run("new", file, "--set", "span=62 m", "--set", "tension=2 kN", "--set", "age=new");
    expect(status).toBe(0);
    const rig = rigAt(file);
    expect(rig).toMatchObject({ span: 62, main: { pretension: 2000 }, leash: { falls: 0 } });
    expect(rig.unconfirmed).not.toContain("span");
    expect(out).toContain(`${rig.unconfirmed!.length} values are not confirmed:`);
    expect(out).toContain("Walker: mass");
    expect((await run("validate", file)).status).toBe(0);
  });

  it("takes answers from a file; --set goes before it", async () => {
    const folder = scratch();
    const [answers, file] = [join(folder, "answers.json"), join(folder, "rig.json")];
    writeFileSync(answers, JSON.stringify({ span: "62 m", mass: "70 kg", confirmed: ["leash"] }));
    expect((await run("new", file, "--answers", answers, "--set", "mass=85 kg")).status).toBe(0);
    const rig = rigAt(file);
    expect([rig.span, rig.walker.mass]).toEqual([62, 85]);
    expect(rig.unconfirmed).not.toContain("leash.length");
  });

  it("takes the ground from a file, whose unit must be said", async () => {
    const folder = scratch();
    const [ground, file] = [join(folder, "gully.csv"), join(folder, "rig.json")];
    writeFileSync(ground, "0,-1\n100,-130\n200,-2");
    const refused = await run("new", file, "--ground", ground, "--set", "span=60 m");
    expect([refused.status, existsSync(file)]).toEqual([2, false]);
    expect(refused.err).toContain("--ground-unit");
    const made = await run("new", file, "--ground", ground, "--ground-unit", "ft", "--set", "span=60 m");
    expect(made.status).toBe(0);
    expect(rigAt(file).ground[1]).toEqual([30.48, -39.62]);
    expect(rigAt(file).unconfirmed).not.toContain("ground");
    expect(made.out).not.toContain("It reaches");
    // Feet that are taken for metres reach far beyond the span.
    const wrong = await run("new", file, "--force", "--ground", ground, "--ground-unit", "m", "--set", "span=60 m");
    expect(wrong.out.replace(/\s+/g, " ")).toContain(
      "It reaches 200 m from anchor A, and the span is 60 m. Is it in feet?",
    );
    writeFileSync(ground, "x,y\n0,-1\n0,-2");
    expect((await run("new", file, "--force", "--ground", ground, "--ground-unit", "m")).err).toContain(
      "Line 3 goes back",
    );
  });

  it("overwrites nothing without being told to, and never its own answers", async () => {
    const file = join(scratch(), "rig.json");
    writeFileSync(file, "mine");
    const refused = await run("new", file, "--template");
    expect([refused.status, readFileSync(file, "utf8")]).toEqual([2, "mine"]);
    expect(refused.err).toContain("--force overwrites it");
    expect((await run("new", file, "--template", "--force")).status).toBe(0);
    expect(rigAt(file).unconfirmed!.length).toBeGreaterThan(40);
    const own = join(scratch(), "answers.json");
    writeFileSync(own, "{}");
    expect((await run("new", own, "--answers", own, "--force")).status).toBe(2);
  });

  it("tells every answer that is wrong, and writes nothing", async () => {
    const file = join(scratch(), "rig.json");
    const { status, err } = await run(
      "new",
      file,
      "--set",
      "span=60",
      "--set",
      "connections=70 m",
      "--set",
      "mass=8 kN",
    );
    expect(status).toBe(2);
    for (const text of ["span (Span)", "connections (Connections)", "mass (Mass)"]) expect(err).toContain(text);
    expect(existsSync(file)).toBe(false);
    expect((await run("new", file, "--set", "spam=60 m")).err).toContain("write NAME=VALUE");
    expect((await run("new", file, "--set", "span=60 m", "--set", "span=6 m")).err).toContain("there twice");
  });

  it("has nobody to ask where there is no terminal, and says how to go on", async () => {
    const file = join(scratch(), "rig.json");
    const { status, err } = await run("new", file);
    expect([status, existsSync(file)]).toEqual([2, false]);
    expect(err).toContain("--set");
  });
});

describe("the questions in a terminal", () => {
  it("work out span and rise from measured values, and show them before they are taken over", async () => {
    const told: string[] = [];
    const asked: string[] = [];
    const typed: Readonly<Record<string, string[]>> = {
      Span: ["measured", "measured"],
      "What you measured": ["feel", "level", "angle"],
      "From A to B, straight": ["65", "65 m", "60 m"],
      "Level part of it": ["66 m", "63 m"],
      "B is": ["lower"],
      "Angle from A to B": ["30 deg"],
      "Take span and rise over": ["no", "yes"],
    };
    const answers = await askAnswers({
      ask: async (prompt) => {
        asked.push(prompt);
        return typed[prompt.replace(/ \[.*/, "")]?.shift() ?? "";
      },
      tell: (text) => told.push(text),
    });
    expect(told).toContain("Span 63 m, rise -16 m.");
    expect(told).toContain("The level part is no longer than the straight distance, 65 m.");
    expect(told.join("\n")).toContain("angle, level, plumb");
    expect(told).toContain("Steeper than 20°, which is unusual. Is everything of it right?");
    expect(answers).toEqual({ span: "51.96 m", rise: "30 m" });
    // What was worked out is not asked again.
    expect(asked.some((prompt) => prompt.startsWith("Rise"))).toBe(false);
  });

  it("are asked one after the other; an answer that cannot be read is asked again with an example", async () => {
    const asked: string[] = [];
    const told: string[] = [];
    const typed: Readonly<Record<string, string[]>> = {
      Span: ["sixty", "60", "60 m"],
      Rise: ["ok"],
      "Is there a backup": ["no"],
      Age: ["new"],
    };
    const answers = await askAnswers({
      ask: async (prompt) => {
        asked.push(prompt);
        return typed[prompt.replace(/ \[.*/, "")]?.shift() ?? "";
      },
      tell: (text) => told.push(text),
    });
    expect(answers).toEqual({ span: "60 m", rise: "0 m", backup: "no", age: "new" });
    expect(asked.filter((prompt) => prompt.startsWith("Span"))).toHaveLength(3);
    expect(told.join("\n")).toContain("Such as 60 m.");
    // Without a backup it has no slack; what is new has seen no sun.
    expect(asked.some((prompt) => /^(Slack|Connections|Share of full sun)/.test(prompt))).toBe(false);
  });

  it("end without answers when somebody leaves", async () => {
    expect(await askAnswers({ ask: async () => undefined, tell: () => undefined })).toBeUndefined();
  });
});
