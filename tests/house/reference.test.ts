/** The reference of the packages that others can install: made on demand, and complete. */
import * as engine from "@secondline/engine";
import * as statistics from "@secondline/statistics";
import { beforeAll, describe, expect, it } from "vitest";
// @ts-expect-error a plain script of the build
import { compileTypes, referenceOf } from "../../scripts/reference.mjs";

beforeAll(compileTypes);

describe.each(Object.entries({ engine, statistics }))("the reference of %s", (name, exported) => {
  it("is made without a warning, and has every name that the package exports", () => {
    const { text, warnings, names } = referenceOf(name) as { text: string; warnings: string[]; names: string[] };
    expect(warnings).toEqual([]);
    expect(names).toEqual(expect.arrayContaining(Object.keys(exported)));
    for (const one of names) expect(text).toContain(`\n### ${one}\n`);
    // A type of the package's readme, with the unit of a member as its comment has it.
    expect(text).toMatch(
      name === "engine" ? /interface Problem \{[^`]*\[m\]/ : /interface Fit extends|interface Fit \{|type Fit =/,
    );
  });
});

it("tells what has no comment", () => {
  expect(referenceOf("engine").text).not.toMatch(/\n### \w+\n\n```/);
});
