/** What the user says of a part on the command line reaches strength, verdict, cautions and report, with its reason. */
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Outcome } from "@secondline/scenarios";
import { beforeAll, describe, expect, it } from "vitest";
import { command, demo, type Finished, KEPT, scratch } from "./support/command.ts";

let secondline: (...args: string[]) => Promise<Finished>;
beforeAll(async () => {
  secondline = await command();
}, 60_000);

const one = [demo("sound-rig.json"), "--accuracy", "quick", "--what-if", "fall@0.5", "--json", ...KEPT];
const part = (finished: Finished, id: string) =>
  (JSON.parse(finished.out) as Outcome).parts.find((found) => found.id === id)!;

describe("--judge", () => {
  it("counts as a factor with its reason as the basis, and is among the cautions", async () => {
    const plain = await secondline("check", ...one);
    const judged = await secondline("check", ...one, "--judge", "leash=0.25: furry at the ring");
    expect(judged.err).toBe("");
    expect(part(judged, "leash").strength / part(plain, "leash").strength).toBeCloseTo(0.25, 9);
    expect(part(judged, "leash").verdict).toBe("fails");
    expect(JSON.stringify(part(judged, "leash").bases)).toContain("own judgement, furry at the ring");
    const { words } = JSON.parse(judged.out);
    expect(words.cautions.join(" ")).toContain("furry at the ring");
    expect(words.taken).toContain("Own judgement counts in: leash.");
  });

  it("that raises a strength is said in the report too, before the rig's other cautions", async () => {
    const out = join(scratch(), "report.html");
    const few = ["--set", "quick", "--accuracy", "quick", ...KEPT];
    const judged = await secondline(
      "report",
      demo("sound-rig.json"),
      "--out",
      out,
      ...few,
      "--judge",
      "ring=1.2: pulled",
    );
    expect(judged.status).toBe(0);
    const html = readFileSync(out, "utf8");
    expect(html).toMatch(/RAISED: Leash ring counts as 1\.20 times .*pulled/);
    expect(html.indexOf("RAISED")).toBeLessThan(html.indexOf("strengths rest on common practice"));
  });

  it("weakens the webbing along its length in the state by a wear record", async () => {
    const wear = ["wear", demo("old-rig.json"), "--wear", demo("old-rig-wear.json"), "--on", "2026-11-01", "--json"];
    const [plain, judged] = [await secondline(...wear), await secondline(...wear, "--judge", "main=0.5: stiff")];
    expect(part(judged, "main").strength / part(plain, "main").strength).toBeCloseTo(0.5, 9);
  });

  it("that raises a strength is told by the state by a wear record too", async () => {
    const wear = ["wear", demo("old-rig.json"), "--wear", demo("old-rig-wear.json"), "--on", "2026-11-01"];
    const raised = await secondline(...wear, "--judge", "main=1.2: pulled");
    expect(raised.err).toBe("");
    expect(raised.out.replace(/\s+/g, " ")).toMatch(/RAISED: Main line counts as 1\.20 times .*pulled/);
    expect((await secondline(...wear)).out).not.toContain("RAISED");
  });

  it("is refused whole with every fault: no such part, no reason, a factor that is none", async () => {
    const faulty = ["nothing=0.5: x", "leash=0.5", "leash=ten: x", "leash=3: x"];
    const { status, err, out } = await secondline("check", ...one, ...faulty.flatMap((text) => ["--judge", text]));
    expect(status).toBe(2);
    expect(out).toBe("");
    expect(err.trim().split("\n")).toHaveLength(4);
    expect(err).toContain("anchorA.points.0 (left bolt, anchor A)");
  });

  it("is refused of a tape, whose id stands among those of the connections: no verdict would have it", async () => {
    const { status, err } = await secondline("check", ...one, "--judge", "connection.3=0.7: chafed");
    expect(status).toBe(2);
    expect(err).toMatch(/"connection\.3" is tape \d: .*no verdict judges them/);
    expect(err).toContain("connection.1 (connection 2)");
    expect(err).not.toContain("connection.3 (");
  });
});

describe("a file in another encoding", () => {
  it("is refused with a word on how to save it", async () => {
    const file = join(scratch(), "breaks.csv");
    const text = "part,material,state,wet,outcome,result,unit\nwebbing,Gewebe ä,new,dry,broke,30,kN\n";
    for (const bytes of [Buffer.from(text, "latin1"), Buffer.from(`\uFEFF${text}`, "utf16le")]) {
      writeFileSync(file, bytes);
      const { status, err } = await secondline("strength", file);
      expect(status).toBe(2);
      expect(err).toMatch(/not in UTF-8.*Save it again/);
    }
  });
});

describe("a what-if about a leg", () => {
  it("is run when the anchor has it, and told when not", async () => {
    const leg = ["check", demo("sound-rig.json"), "--accuracy", "quick", "--json", "--what-if"];
    const run = await secondline(...leg, "leg@A1,caught@0.5");
    expect((JSON.parse(run.out) as Outcome).whatIfs[0]).toMatchObject({ ok: true, caughtBy: "main" });
    const missing = await secondline(...leg, "leg@A3,caught@0.5");
    expect(missing.status).toBe(2);
    expect(missing.err).toContain("Anchor A has 2 legs.");
  });
});
