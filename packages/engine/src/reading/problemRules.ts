/** What every field of a problem file must be. */

import { MOST_BRANCHES } from "../kernel/lineLayout.ts";
import { hypot } from "../portable/index.ts";
import { type Checker, type CheckRule, number, oneOf, text } from "./checker.ts";

const length = number("a length above 0, in metres", { above: 0, to: 1e5 });
const strength = number("a strength above 0, in newtons", { above: 0 });
const fraction = number("a fraction of the line's natural length, 0 to 1", { from: 0, to: 1 });
const inner = number("a fraction of the line's natural length between 0 and 1, ends excluded", {
  above: 0,
  to: 1 - 1e-9,
});
const stiffness = number("a stiffness above 0, in N/m", { above: 0 });
const time = number("a time of 0 or more, in seconds", { from: 0 });

const curve: CheckRule = (check, path, value) => {
  const before = check.issues.length;
  check.list(
    path,
    value,
    (c, at, point) => {
      if (!Array.isArray(point) || point.length !== 2 || !point.every(Number.isFinite))
        c.fault(at, point, "a pair [strain, tension in newtons]");
    },
    2,
    200,
  );
  if (check.issues.length > before) return;
  const points = value as [number, number][];
  if (points[0]![0] !== 0 || points[0]![1] !== 0)
    check.fault(`${path}[0]`, points[0], "[0, 0]: a slack line carries nothing");
  for (let k = 1; k < points.length; k++) {
    if (points[k]![0] <= points[k - 1]![0])
      check.fault(`${path}[${k}]`, points[k], "a larger strain than the point before");
    if (points[k]![1] < points[k - 1]![1])
      check.fault(`${path}[${k}]`, points[k], "a tension not below the point before: a curve may not fall");
  }
  const last = points.length - 1;
  if (check.issues.length === before && points[last]![1] <= points[last - 1]![1]) {
    check.fault(
      `${path}[${last}]`,
      points[last],
      "a tension above the point before: the curve goes on straight from here",
    );
  }
};

const branch: CheckRule = (check, path, value) => {
  if (!Array.isArray(value) || value.length !== 2) {
    check.fault(path, value, "a pair [stiffness in newtons, time in seconds]");
    return;
  }
  number("a branch stiffness above 0, in newtons", { above: 0 })(check, `${path}[0]`, value[0]);
  number("a relaxation time above 0, in seconds", { above: 0 })(check, `${path}[1]`, value[1]);
};

const material: CheckRule = (check, path, value) =>
  check.object(path, value, {
    mass: number("a mass above 0, in kg per metre", { above: 0, to: 100 }),
    curve,
    branches: (c, at, list) => c.list(at, list, branch, 0, MOST_BRANCHES),
  });

const lineRules: Readonly<Record<string, CheckRule>> = {
  "material?": material,
  "sections?": (check, path, value) =>
    check.list(path, value, (c, at, section) => c.object(at, section, { to: fraction, material }), 1),
  "strength?": strength,
  "weakZones?": (check, path, value) =>
    check.list(path, value, (c, at, zone) => c.object(at, zone, { from: fraction, to: fraction, strength })),
  "width?": length,
  "dragCoefficient?": number("a drag coefficient of 0 or more", { from: 0, to: 10 }),
};

const joints: CheckRule = (check, path, value) =>
  check.list(path, value, (c, at, joint) => c.object(at, joint, { at: inner, "strength?": strength }), 0, 200);

const anchor: CheckRule = (check, path, value) =>
  check.object(path, value, {
    "stiffness?": stiffness,
    "mass?": number("a mass above 0, in kg", { above: 0 }),
    "legs?": (c, at, list) =>
      c.list(
        at,
        list,
        (d, place, leg) => d.object(place, leg, { rock: position, stiffness, "strength?": strength }),
        1,
        12,
      ),
  });
const position: CheckRule = (check, path, value) => {
  if (
    !Array.isArray(value) ||
    value.length !== 3 ||
    !value.every(Number.isFinite) ||
    hypot(...(value as [number, number, number])) < 0.01
  ) {
    check.fault(path, value, "a place [x, y, z] in metres, at least 1 cm from the master point");
  }
};

/** Checks every field by itself. */
export function checkFields(check: Checker, input: unknown): void {
  check.object("", input, {
    name: text,
    span: length,
    rise: number("a height difference in metres", { from: -1e4, to: 1e4 }),
    main: (c, at, value) =>
      c.object(at, value, {
        pretension: number("a tension above 0, in newtons", { above: 0 }),
        ...lineRules,
        "slip?": (d, place, slip) => d.object(place, slip, { "A?": strength, "B?": strength }),
      }),
    "backup?": (c, at, value) =>
      c.object(at, value, {
        slack: number("a slack of 0 or more, as a share of the chord: a backup may not be shorter than the span", {
          from: 0,
          to: 3,
        }),
        ...lineRules,
        "connections?": joints,
        "tapes?": joints,
      }),
    leash: (c, at, value) => c.object(at, value, { length, material, "strength?": strength }),
    ring: (c, at, value) =>
      c.object(at, value, {
        mass: number("a mass above 0, in kg", { above: 0 }),
        clearance: number("a clearance of 0 or more, in metres", { from: 0, to: 1 }),
        friction: number("a friction coefficient from 0 to 2", { from: 0, to: 2 }),
        "strength?": strength,
      }),
    walker: (c, at, value) =>
      c.object(at, value, {
        mass: number("a mass above 0, in kg", { above: 0, to: 1000 }),
        at: inner,
        tieIn: number("a height in metres", { from: -5, to: 5 }),
        lateral: number("a sideways offset in metres", { from: -5, to: 5 }),
        "dragArea?": number("a drag area of 0 or more, in m²", { from: 0, to: 10 }),
      }),
    start: oneOf("standing", "hanging"),
    "letGo?": time,
    "feetReach?": number("a reach of 0 or more, in metres", { from: 0, to: 2 }),
    "cut?": (c, at, value) => c.object(at, value, { at: fraction, time }),
    "anchors?": (c, at, value) => c.object(at, value, { "A?": anchor, "B?": anchor }),
    "legFailure?": (c, at, value) =>
      c.object(at, value, {
        anchor: oneOf("A", "B"),
        leg: number("the number of a leg, from 0", { from: 0, to: 11 }),
        time,
      }),
    "airDensity?": number("an air density of 0 or more, in kg/m³", { from: 0, to: 2 }),
    "ground?": (c, at, value) =>
      c.list(
        at,
        value,
        (d, place, point) => {
          if (!Array.isArray(point) || point.length !== 2 || !point.every(Number.isFinite))
            d.fault(place, point, "a pair [x, z] in metres");
        },
        2,
        10_000,
      ),
    duration: number("a duration above 0 and up to 120, in seconds", { above: 0, to: 120 }),
  });
}
