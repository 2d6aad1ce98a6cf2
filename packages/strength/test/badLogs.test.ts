import { describe, expect, it } from "vitest";
import { type LogFault, readBreakLog } from "../src/index.ts";
import { csv, HEAD, row } from "./logRows.ts";

const faults = (text: string): readonly LogFault[] => {
  const reading = readBreakLog(text);
  return reading.ok ? [] : reading.faults;
};

describe("a load that cannot be one is refused, with line, column and remedy", () => {
  it.each(["1e-320", "1e9", "1e308", "0", "-3"])("%s kN", (result) => {
    const [fault] = faults(csv([row({ result })]));
    expect(fault).toMatchObject({ line: 2, column: "result" });
    expect(["cell.unlikelyLoad", "cell.notPositive", "number.tooLarge"]).toContain(fault!.message.code);
  });

  it("and so are a million years outside and hexadecimal falls", () => {
    const text = `${HEAD.join(",")},sun_months,falls\n${row({}).join(",")},1e7,0x10`;
    expect(faults(text).map(({ column }) => column)).toEqual(["sun_months", "falls"]);
  });
});

describe("31.200 where commas part no cells may be 31.2 or 31 200", () => {
  it("is asked about when no other number of the file tells", () => {
    const [fault] = faults(csv([row({ result: "31.200" }), row({ result: "30.900" })], ";"));
    expect(fault).toMatchObject({
      line: 2,
      column: "result",
      expected: { values: { small: "31.2", large: "31200" } },
      message: { code: "cell.thousands" },
    });
    expect(faults(csv([row({ result: "31,200" })], ";"))[0]).toMatchObject({
      expected: { values: { small: "31,2", large: "31200" } },
    });
  });

  it("is a decimal number beside one that can be nothing else, and between commas", () => {
    expect(faults(csv([row({ result: "31.200" }), row({ result: "30.95" })], ";"))).toEqual([]);
    expect(faults(csv([row({ result: "31.200" })]))).toEqual([]);
    expect(faults(csv([row({ result: "0.950" })], ";"))).toEqual([]);
  });
});

it("an interval upside down and a test without material say what to do", () => {
  const upside = row({ outcome: "broke between", result: "22", result_to: "20" });
  const found = faults(csv([upside, row({ material: "" })]));
  expect(found.map(({ line, column }) => [line, column])).toEqual([
    [2, "result_to"],
    [3, "material"],
  ]);
  expect(found[0]!.expected).toMatchObject({ code: "expected.upperLoad" });
  expect(found[1]!.message).toMatchObject({ code: "cell.empty", values: { expected: { code: "expected.material" } } });
});

it("a repeated header is one fault, not one per column", () => {
  const found = faults([csv([row({})]), csv([row({})])].join("\n"));
  expect(found.map(({ line }) => line)).toEqual([3]);
  expect(found[0]!.message).toEqual({ code: "log.headerAgain", values: { first: 1 } });
});

it("a file of 50 MB is refused by its size, before it is read", () => {
  const [fault, ...rest] = faults("x".repeat(50e6));
  expect(rest).toEqual([]);
  expect(fault).toMatchObject({ line: 1, got: { code: "got.megabytes", values: { size: 50 } } });
  expect(faults(csv(Array.from({ length: 20_001 }, () => row({}))))[0]!.got).toMatchObject({
    values: { count: 20_001 },
  });
});

it("faults are told up to fifty, long cells are cut short", () => {
  const found = faults(csv(Array.from({ length: 4000 }, () => row({ result: "9".repeat(500).concat("x") }))));
  expect(found).toHaveLength(50);
  expect(found.at(-1)!.message).toEqual({ code: "log.moreFaults", values: { count: 3951 } });
  expect(Math.max(...found.map(({ message }) => JSON.stringify(message).length))).toBeLessThan(200);
});

it("a knot is read however it is written, and an unknown one is refused with the known ones", () => {
  const text = (knot: string) => `${HEAD.join(",")},knot\n${row({}).join(",")},${knot}`;
  const reading = readBreakLog(text("Figure-Eight"));
  expect(reading.ok && reading.tests[0]!.knot).toBe("figureEight");
  expect(JSON.stringify(faults(text("granny"))[0]!.message)).toContain("barrel");
});
