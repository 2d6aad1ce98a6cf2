/** The forms of record and log: their fields, and what becomes of what is typed. */
import { describe, expect, it } from "vitest";
import type { WrittenRecord } from "../src/index.ts";
import {
  draftMessages,
  draftOf,
  fieldValue,
  freshTest,
  nextTest,
  ownerFields,
  ownersIn,
  ownerValue,
  readDraft,
  testFormFields,
  typedIn,
  withFreshWebbing,
  withOwnerField,
  withoutOwner,
} from "../src/record/index.ts";
import { exampleRecord } from "./exampleWear.ts";

const FIRST = { list: "webbings", index: 0 } as const;

describe("a break test that is typed in", () => {
  const fresh = draftOf(freshTest("2026-07-04"));

  it("is no test before every field is right, and says nothing of fields that nobody touched", () => {
    const read = readDraft(fresh);
    expect(read.test).toBeUndefined();
    expect(read.faults.length).toBeGreaterThan(0);
    expect(draftMessages(fresh, read, "result")).toEqual([]);
  });

  it("tells the fault of a field once it was typed in, and all of them after a try to keep it", () => {
    const typed = typedIn(fresh, "result", "-3");
    expect(draftMessages(typed, readDraft(typed), "result")).toHaveLength(1);
    expect(draftMessages(typed, readDraft(typed), "material")).toEqual([]);
    const tried = { ...fresh, touched: "all" } as const;
    expect(draftMessages(tried, readDraft(tried), "material")).toHaveLength(1);
    expect(typedIn(tried, "result", "20").touched).toBe("all");
  });

  it("is a test as soon as all is right", () => {
    const typed = [
      ["material", "polyester-webbing-25"],
      ["state", "new"],
      ["result", "20"],
    ].reduce((draft, [column, value]) => typedIn(draft, column as "state", value!), fresh);
    expect(readDraft(typed).test?.result).toEqual({ kind: "exact", value: 20_000 });
  });

  it("asks for two loads where it broke between two, and for one where it did not", () => {
    const asked = (outcome: string) => testFormFields({ outcome }).map(({ column }) => column);
    expect(asked("broke between")).toContain("result_to");
    expect(asked("broke")).not.toContain("result_to");
    expect(new Set(asked("broke between")).size).toBe(asked("broke between").length);
  });

  it("leaves for the next one all but what was measured", () => {
    const next = nextTest({ ...freshTest("2026-07-04"), material: "m", result: "20", result_to: "22", note: "odd" });
    expect(next).toEqual({ ...freshTest("2026-07-04"), material: "m" });
  });
});

describe("a webbing of the record", () => {
  it("is changed field by field, in its place, and nothing else with it", () => {
    const field = ownerFields(FIRST).find(({ key }) => key === "name")!;
    const changed = withOwnerField(exampleRecord, FIRST, field, "Long one");
    expect(ownerValue(changed, FIRST, "name")).toBe("Long one");
    expect({ ...changed.webbings![0], name: exampleRecord.webbings![0]!.name }).toEqual(exampleRecord.webbings![0]);
    expect(Object.keys(changed.webbings![0]!)).toEqual(Object.keys(exampleRecord.webbings![0]!));
    expect(changed.webbings!.slice(1)).toEqual(exampleRecord.webbings!.slice(1));
  });

  it("has no date where the date is taken out, and empty words where words are", () => {
    const [name, made] = ["name", "made"].map((key) => ownerFields(FIRST).find((one) => one.key === key)!);
    const dated = withOwnerField(exampleRecord, FIRST, made!, "2024-03-01");
    expect(ownerValue(dated, FIRST, "made")).toBe("2024-03-01");
    expect(withOwnerField(dated, FIRST, made!, "").webbings![0]).not.toHaveProperty("made");
    expect(withOwnerField(dated, FIRST, name!, "").webbings![0]!.name).toBe("");
  });

  it("comes and goes, with an id of its own", () => {
    const { record, owner } = withFreshWebbing(exampleRecord);
    const ids = record.webbings!.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ownersIn(record).length).toBe(ownersIn(exampleRecord).length + 1);
    expect(withoutOwner(record, owner)).toEqual(exampleRecord);
    expect(withFreshWebbing({ name: "empty" } as WrittenRecord).owner).toEqual(FIRST);
  });
});

describe("a field of an entry", () => {
  const field = (kind: string, more: object = {}) => ({ key: "k", label: "K", kind, ...more }) as never;

  it("is left out of the file where it is empty and may be, and is empty words where it may not", () => {
    expect(fieldValue(field("quantity"), "")).toBeUndefined();
    expect(fieldValue(field("date", { optional: true }), "")).toBeUndefined();
    expect(fieldValue(field("text", { optional: true }), "")).toBeUndefined();
    expect(fieldValue(field("text"), "")).toBe("");
  });

  it("of a number holds a number, and what is none as it was typed", () => {
    expect(fieldValue(field("count"), "12")).toBe(12);
    expect(fieldValue(field("count"), "a dozen")).toBe("a dozen");
  });
});
