import { mkdtemp, readdir, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { RunOrder, RunResult } from "@secondline/scenarios";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { layeredResults, memoryResults } from "../src/index.ts";
import { folderResults } from "../src/node.ts";
import { LeastRecent } from "../src/results/leastRecent.ts";
import { runKey, serves, studyKey, worthStoring } from "../src/results/resultKey.ts";
import { assessed } from "./support/rig.ts";

const result = (drop: number): RunResult =>
  ({ ok: true, drop, webbing: { main: { at: new Float64Array([0.1, 1 / 3]) } }, clearance: -0 }) as never;
const order: RunOrder = {
  event: { kind: "mainFails", at: 0.5, cutAt: 0, walker: "caught" },
  draw: { mass: 1, place: 0, moment: 0 },
  accuracy: "quick",
};

describe("the key of a run", () => {
  it("tells apart whatever makes another run", () => {
    const event = order.event as Extract<RunOrder["event"], { kind: "mainFails" }>;
    const others: RunOrder[] = [
      order,
      { ...order, event: { ...event, late: 0.01 } },
      { ...order, event: { ...event, at: 0.500001 } },
      { ...order, draw: { ...order.draw, moment: 0.005 } },
      { ...order, accuracy: "standard" },
    ];
    const keys = [...others.map((one) => runKey(assessed, one)), runKey({ ...assessed, runsHash: "another" }, order)];
    expect(new Set(keys).size).toBe(6);
  });

  it("is the same for the same run, and of a study for whoever wants to hear of it meanwhile", () => {
    expect(runKey(assessed, { ...order, trace: true })).toBe(runKey({ ...assessed }, order));
    const options = { accuracy: "quick", size: "quick" } as const;
    expect(studyKey(assessed, { ...options, tellSoFar: true })).toBe(studyKey(assessed, options));
    expect(studyKey({ ...assessed, notes: [{ code: "record.latitude", values: {} }] }, options)).not.toBe(
      studyKey(assessed, options),
    );
  });

  it("is asked for nothing that another try may end differently", () => {
    expect(worthStoring({ ok: false, trouble: { reason: "cancelled" } })).toBe(false);
    expect(worthStoring({ ok: false, trouble: { reason: "audit" } })).toBe(true);
  });
});

describe("a result that is kept", () => {
  it("serves an order for a plot only with its trace, and any other order in any case", () => {
    const traced = { ...result(3), trace: {} } as RunResult;
    const failed: RunResult = { ok: false, trouble: { reason: "audit" } };
    const plot = { ...order, trace: true };
    expect([traced, failed, result(3), undefined].map((kept) => serves(kept, plot))).toEqual([
      true,
      true,
      false,
      false,
    ]);
    expect([traced, failed, result(3)].map((kept) => serves(kept, order))).toEqual([true, true, true]);
  });
});

describe("results in memory", () => {
  it("drops the results used longest ago when there are too many", () => {
    const kept = new LeastRecent<Uint8Array>(1000);
    for (const key of ["a", "b"]) kept.put(key, new Uint8Array(400));
    kept.get("a");
    kept.put("c", new Uint8Array(400));
    expect([kept.get("a"), kept.get("b"), kept.get("c")].map(Boolean)).toEqual([true, false, true]);
    kept.put("huge", new Uint8Array(2000));
    expect(kept.size).toBe(2);
    expect(kept.bytes).toBeLessThanOrEqual(1000);
  });

  it("counts a value that is put again once", () => {
    const kept = new LeastRecent<Uint8Array>(1000);
    for (let i = 0; i < 10; i++) kept.put("a", new Uint8Array(400));
    expect(kept.bytes).toBeLessThan(500);
  });
});

describe("results in a folder", () => {
  let folder = "";
  beforeEach(async () => {
    folder = await mkdtemp(join(tmpdir(), "secondline-results-"));
  });
  afterEach(() => rm(folder, { recursive: true, force: true, maxRetries: 5 }));
  const files = async () => {
    const found = await readdir(folder, { recursive: true, withFileTypes: true });
    return found.filter((one) => one.isFile()).map((one) => join(one.parentPath, one.name));
  };

  it("come back to the bit, in another program too", async () => {
    await folderResults({ folder, code: "one" }).put("key", result(0.1 + 0.2));
    const [back, none] = await folderResults({ folder, code: "one" }).get(["key", "other"]);
    expect(back).toStrictEqual(result(0.1 + 0.2));
    expect(Object.is((back as { clearance: number }).clearance, -0)).toBe(true);
    expect(none).toBeUndefined();
    expect(await files()).toHaveLength(1);
  });

  it("are not found by another code", async () => {
    await folderResults({ folder, code: "one" }).put("key", result(1));
    expect(await folderResults({ folder, code: "two" }).get(["key"])).toEqual([undefined]);
  });

  it.each([
    ["cut short", (bytes: Buffer) => bytes.subarray(0, bytes.length - 3)],
    ["empty", () => Buffer.alloc(0)],
    ["of another form", (bytes: Buffer) => Buffer.concat([Buffer.from("something else\n"), bytes])],
    [
      "with a bit turned",
      (bytes: Buffer) => {
        const turned = Buffer.from(bytes);
        turned[turned.length - 5]! ^= 1;
        return turned;
      },
    ],
  ])("a file %s counts as not there, and is written anew", async (_, spoil) => {
    const results = folderResults({ folder, code: "one" });
    await results.put("key", result(1));
    const [file] = await files();
    await writeFile(file!, spoil(await readFile(file!)));
    expect(await results.get(["key"])).toEqual([undefined]);
    await results.put("key", result(1));
    expect(await results.get(["key"])).toStrictEqual([result(1)]);
  });

  it("take no more room than they may, and leave the files of others", async () => {
    const results = folderResults({ folder, code: "one" });
    for (let i = 0; i < 20; i++) await results.put(`key ${i}`, result(i));
    await writeFile(join(folder, "notes.txt"), "mine");
    const one = (await readFile((await files()).find((file) => !file.endsWith("notes.txt"))!)).length;
    await folderResults({ folder, code: "one", mostBytes: 5 * one }).put("last", result(1));
    expect((await files()).length).toBe(5 + 1 + 1);
    expect(await readdir(folder)).toContain("notes.txt");
  });

  it("are simply none where the folder cannot be used", async () => {
    await writeFile(join(folder, "file"), "no folder");
    const results = folderResults({ folder: join(folder, "file"), code: "one" });
    await results.put("key", result(1));
    expect(await results.get(["key"])).toEqual([undefined]);
  });

  it("are asked for results that memory lacks, once", async () => {
    const lasting = folderResults({ folder, code: "one" });
    await lasting.put("key", result(1));
    const asked: (readonly string[])[] = [];
    const layered = layeredResults(memoryResults(), {
      ...lasting,
      get(keys) {
        asked.push(keys);
        return lasting.get(keys);
      },
    });
    expect(await layered.get(["key", "none"])).toStrictEqual([result(1), undefined]);
    expect(await layered.get(["key"])).toStrictEqual([result(1)]);
    expect(asked).toEqual([["key", "none"]]);
  });
});
