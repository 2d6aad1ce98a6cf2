/** Work is written soon after every change, and comes back as it was. */
import { expect, it } from "vitest";
import { keepWork, readSaved, type Sandbox, type SavedWork, startAutosave } from "../src/index.ts";
import { demoDocument, read } from "./demoDocument.ts";
import { withWear } from "./exampleWear.ts";
import { handSandbox } from "./handRunner.ts";

function kept(fails: () => Error | undefined = () => undefined) {
  const hand = handSandbox(demoDocument());
  const saved: SavedWork[] = [];
  const copies: string[] = [];
  const troubles: unknown[] = [];
  const waiting = new Set<() => void>();
  let clock = 0;
  const keeper = {
    async save(work: SavedWork) {
      const error = fails();
      if (error) throw error;
      saved.push(work);
    },
    async keepCopy(_: unknown, name: string) {
      copies.push(name);
    },
  };
  const autosave = startAutosave(hand.sandbox, keeper, {
    now: () => clock,
    later(_, action) {
      waiting.add(action);
      return () => waiting.delete(action);
    },
    onTrouble: (error) => troubles.push(error),
  });
  async function pass(milliseconds = 0): Promise<void> {
    clock += milliseconds;
    const due = [...waiting];
    waiting.clear();
    for (const action of due) action();
    await hand.settled();
  }
  return { ...hand, saved, copies, troubles, autosave, pass };
}

it("writes once for many letters, and what it wrote opens again with its record", async () => {
  const { sandbox, saved, pass } = kept();
  const wear = withWear(sandbox);
  for (const text of ["8 kg", "85 kg"]) sandbox.actions.edit("walker.mass", text, "Mass", "type mass");
  wear.actions.replace({ record: { secondline: "wear/1", name: "Mine", webbings: [] } }, "a new record");
  await pass();
  expect(saved).toHaveLength(1);
  expect(saved[0]!.version).toBe(2);
  const reading = readSaved(structuredClone(saved[0]), read);
  if (!reading.ok) throw new Error("the kept rig cannot be read");
  expect(reading.lost).toEqual([]);
  const again = handSandbox(reading.work.document, reading.work).sandbox;
  expect(again.store.getState().document.rig.walker.mass).toBe(85);
  const { work, earlier } = withWear(again).store.getState();
  expect(work.record.name).toBe("Mine");
  expect(earlier).toHaveLength(1);
});

it("keeps what an undo came to, too", async () => {
  const { sandbox, saved, pass } = kept();
  sandbox.actions.edit("walker.mass", "95 kg", "Mass");
  await pass();
  sandbox.actions.undo();
  await pass();
  expect(saved.map(({ document }) => document)).toEqual([expect.anything(), demoDocument()]);
});

it("keeps a copy every now and then, tells once that the device is full, and again only after it was not", async () => {
  let full: Error | undefined;
  const { sandbox, saved, copies, troubles, pass } = kept(() => full);
  const type = (mass: number) => sandbox.actions.edit("walker.mass", `${mass} kg`, "Mass");
  type(81);
  await pass(6 * 60_000);
  expect(copies).toEqual([demoDocument().name]);
  full = new Error("full");
  for (const mass of [82, 83]) {
    type(mass);
    await pass();
  }
  expect(troubles).toEqual([full]);
  full = undefined;
  type(84);
  await pass();
  full = new Error("full again");
  type(85);
  await pass();
  expect(troubles).toHaveLength(2);
  expect(saved).toHaveLength(2);
});

it("writes at once what still waits when the page goes, and nothing when nothing does", async () => {
  const { sandbox, saved, autosave, settled } = kept();
  autosave.flush();
  await settled();
  expect(saved).toEqual([]);
  sandbox.actions.edit("walker.mass", "95 kg", "Mass");
  autosave.flush();
  await settled();
  expect(saved).toHaveLength(1);
});

it("tells why work is not kept: the device keeps nothing, another page keeps it, or the storage is full", async () => {
  const texts = ({ store }: Sandbox) => store.getState().session.notices.map(({ text }) => text);
  const services = { now: () => 0, later: (_: number, action: () => void) => (action(), () => undefined) };
  const full = Object.assign(new Error("no"), { name: "QuotaExceededError" });
  const keeper = { save: () => Promise.reject(full), keepCopy: async () => undefined };
  const nowhere = handSandbox(demoDocument()).sandbox;
  expect(await keepWork(nowhere, undefined, { ...services, claim: async () => true })).toBeUndefined();
  expect(texts(nowhere)).toEqual([expect.stringMatching(/keeps nothing/)]);
  const second = handSandbox(demoDocument()).sandbox;
  expect(await keepWork(second, keeper, { ...services, claim: async () => false })).toBeUndefined();
  expect(texts(second)).toEqual([expect.stringMatching(/another tab/)]);
  const { sandbox, settled } = handSandbox(demoDocument());
  expect(await keepWork(sandbox, keeper, { ...services, claim: async () => true })).toBeDefined();
  sandbox.actions.edit("walker.mass", "85 kg", "Mass");
  await settled();
  expect(texts(sandbox)).toEqual([expect.stringMatching(/full/)]);
});
