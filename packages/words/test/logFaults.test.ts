/** Faults of break logs as their owner reads them. */
import { readBreakLog } from "@secondline/strength";
import { describe, expect, it } from "vitest";
import { csv, HEAD, row } from "../../strength/test/logRows.ts";
import { tellLogFault } from "../src/logFaultWords.ts";

interface Told {
  readonly line: number;
  readonly column: string;
  readonly got: string;
  readonly expected: string;
  readonly message: string;
}
const faults = (text: string): readonly Told[] => {
  const reading = readBreakLog(text);
  if (reading.ok) return [];
  return reading.faults.map(({ line, column, got, expected, message }) => ({
    line,
    column,
    got: tellLogFault(got),
    expected: tellLogFault(expected),
    message: tellLogFault(message),
  }));
};

describe("a load that cannot be one is refused, with line, column and remedy", () => {
  it.each(["1e-320", "1e9", "1e308", "0", "-3"])("%s kN", (result) => {
    const [fault] = faults(csv([row({ result })]));
    expect(fault).toMatchObject({ line: 2, column: "result" });
    expect(fault!.message + fault!.expected).toMatch(/must be|from|too large/);
  });

  it("and so are a million years outside and hexadecimal falls", () => {
    const text = `${HEAD.join(",")},sun_months,falls\n${row({}).join(",")},1e7,0x10`;
    expect(faults(text).map(({ column }) => column)).toEqual(["sun_months", "falls"]);
  });
});

describe("31.200 where commas part no cells may be 31.2 or 31 200", () => {
  it("is asked about when no other number of the file tells", () => {
    const [fault] = faults(csv([row({ result: "31.200" }), row({ result: "30.900" })], ";"));
    expect(fault).toMatchObject({ line: 2, column: "result", expected: "31.2 or 31200" });
    expect(fault!.message).toContain("write the one that is meant");
    expect(faults(csv([row({ result: "31,200" })], ";"))[0]).toMatchObject({ expected: "31,2 or 31200" });
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
  expect(found[0]!.expected).toContain("the lower load goes into result");
  expect(found[1]!.message).toContain("polyester-webbing-25");
});

it("a repeated header is one fault, not one per column", () => {
  const found = faults([csv([row({})]), csv([row({})])].join("\n"));
  expect(found.map(({ line }) => line)).toEqual([3]);
  expect(found[0]!.message).toContain("repeats the header of line 1");
});

it("a file of 50 MB is refused by its size, before it is read", () => {
  const [fault, ...rest] = faults("x".repeat(50e6));
  expect(rest).toEqual([]);
  expect(fault).toMatchObject({ line: 1, got: "50 MB" });
  expect(faults(csv(Array.from({ length: 20_001 }, () => row({}))))[0]!.message).toContain("20001 tests");
});

it("faults are told up to fifty, long cells are cut short", () => {
  const found = faults(csv(Array.from({ length: 4000 }, () => row({ result: "9".repeat(500).concat("x") }))));
  expect(found).toHaveLength(50);
  expect(found.at(-1)!.message).toContain("3951 more faults");
  expect(Math.max(...found.map(({ message }) => message.length))).toBeLessThan(200);
});

it("a knot is read however it is written, and an unknown one is refused with the known ones", () => {
  const text = (knot: string) => `${HEAD.join(",")},knot\n${row({}).join(",")},${knot}`;
  const reading = readBreakLog(text("Figure-Eight"));
  expect(reading.ok && reading.tests[0]!.knot).toBe("figureEight");
  expect(faults(text("granny"))[0]!.message).toContain("barrel");
});

it("mixed units name both lines, and a unit in a column's name is told where units go", () => {
  const mixed = csv([row({}), row({ result: "2700", unit: "lbf" })]);
  expect(faults(mixed)[0]!.message).toContain("line 2 in kN");
  const named = faults("part,material,state,wet,outcome,Result [kN]\nwebbing,x,new,dry,broke,31\n");
  expect(named.map(({ message }) => message).join(" ")).toContain("Did you mean result?");
});
