/** Rigs with one fault each, for tests of what is refused and of how it is told. */
import { editDocument, type RigDocument, type RigIssue, readRig } from "../src/index.ts";
import { demoDocument } from "./demoRigs.ts";

const sound = demoDocument("sound-rig");

/** What is wrong, the edits of the sound demo rig that make it so, the place that is faulted, and the code of the fault. */
export type FaultyRig = readonly [what: string, edits: Record<string, unknown>, path: string, code: string];

export const FAULTY_RIGS: readonly FaultyRig[] = [
  ["a tension above the webbing's strength", { "main.pretension": "31 kN" }, "main.pretension", "tension.webbing"],
  ["an end weaker than the tension", { "main.endA.strength": "2 kN" }, "main.endA.strength", "tension.end"],
  [
    "a weblock that slips before the line is tight",
    { "main.endA.slipLoad": "2 kN" },
    "main.endA.slipLoad",
    "tension.slip",
  ],
  [
    "sections longer than the line",
    { "main.sections[1]": { stock: "polyester-webbing-25", length: "61 m" } },
    "main.sections[1].length",
    "sections.tooLongStretched",
  ],
  [
    "two sections without a length",
    { "main.sections[1]": { stock: "polyester-webbing-25" } },
    "main.sections[1].length",
    "sections.manyOpen",
  ],
  [
    "no section to take up the rest",
    { "main.sections[0].length": "59 m" },
    "main.sections[0].length",
    "sections.noneOpen",
  ],
  ["a walker outside the span", { "walker.at": 1.2 }, "walker.at", "limits.large"],
  ["a backup shorter than the span by its slack", { "backup.slack": "-1 %" }, "backup.slack", "limits.negativeBecause"],
  [
    "a backup shorter than the span by its length",
    { "backup.slack": undefined, "backup.length": "58 m" },
    "backup.length",
    "backup.short",
  ],
  ["a backup of neither slack nor length", { "backup.slack": undefined }, "backup.slack", "missing"],
  ["a backup of both slack and length", { "backup.length": "63 m" }, "backup.length", "backup.both"],
  ["a connection beyond the line", { "backup.connections[1].at": 1.1 }, "backup.connections[1].at", "limits.large"],
  ["two connections at one place", { "backup.connections[1].at": 0.25 }, "backup.connections[1].at", "joints.same"],
  ["a tape at a connection", { "backup.tapes[0].at": 0.5 }, "backup.tapes[0].at", "joints.same"],
  ["ground that ends before anchor B", { "ground[10][0]": "59.5 m" }, "ground[10][0]", "ground.endsEarly"],
  ["ground that ends two centimetres before it", { "ground[10][0]": "59.98 m" }, "ground[10][0]", "ground.endsEarly"],
  [
    "ground that ends at anchor B but for less than a centimetre, and above it",
    { "ground[10]": ["59.995 m", "1.3 m"] },
    "ground[10][1]",
    "ground.anchor",
  ],
  ["ground that begins beyond anchor A", { "ground[0][0]": "0.5 m" }, "ground[0][0]", "ground.beginsLate"],
  ["ground as high as the line", { "ground[5][1]": "1 m" }, "ground[5][1]", "ground.line"],
  ["ground above an anchor", { "ground[0][1]": "0.5 m" }, "ground[0][1]", "ground.anchor"],
  ["ground that goes back", { "ground[4][0]": "8 m" }, "ground[4][0]", "ground.backwards"],
  [
    "wear beyond its section",
    { "main.sections[0].wear[0].to": "59.5 m" },
    "main.sections[0].wear[0].to",
    "wear.beyond",
  ],
  [
    "wear before its section",
    { "main.sections[0].wear[0]": { kind: "stitching", at: "0.1 m", length: "0.3 m" } },
    "main.sections[0].wear[0].at",
    "wear.beyondA",
  ],
  [
    "wear that ends before it begins",
    { "main.sections[0].wear[0].to": "10 m" },
    "main.sections[0].wear[0].to",
    "wear.backwards",
  ],
  ["legs that are straight", { "anchorB.legAngle": "180 deg" }, "anchorB.legAngle", "limits.large"],
  ["two bolts without the angle of their legs", { "anchorA.legAngle": undefined }, "anchorA.legAngle", "missing"],
  [
    "hardware for a backup that is not there",
    { backup: undefined, "anchorA.hardware[0].carries": "backup" },
    "anchorA.hardware[0].carries",
    "carries.noBackup",
  ],
  ["an angle with one bolt", { "anchorA.points[1]": undefined }, "anchorA.legAngle", "legs.onePoint"],
  ["two rings of one name", { "rings[1]": sound.rings[0] }, "rings[1].name", "rings.same"],
  ["a leash too short to stand up", { "leash.length": "1 m" }, "leash.length", "leash.short"],
  [
    "an unknown webbing",
    { "main.sections[0].stock": "polyester-webing-25" },
    "main.sections[0].stock",
    "stock.unknown",
  ],
  ["an unknown key", { "backup.slak": "5 %" }, "backup.slak", "key.unknown"],
  [
    "a key of another kind of wear",
    { "main.sections[0].wear[0].depth": "5 %" },
    "main.sections[0].wear[0].depth",
    "key.otherKind",
  ],
  ["an end of no known kind", { "main.endB.kind": "weblok" }, "main.endB.kind", "unknownChoice"],
  ["a knot that is not named", { "main.endB": { kind: "knot" } }, "main.endB.knot", "missing"],
  [
    "a webbing of one's own that lacks its curve",
    {
      stocks: [
        { id: "own", name: "Own", fibre: "hmpe", mass: "40 g/m", width: "25 mm", strength: "30 kN", branches: [] },
      ],
    },
    "stocks[0].curve",
    "missing",
  ],
  [
    "a curve that falls",
    {
      stocks: [
        {
          id: "own",
          like: "dynamic-rope-10",
          curve: [
            ["0 %", "0 N"],
            ["2 %", "2 kN"],
            ["4 %", "1 kN"],
          ],
        },
      ],
    },
    "stocks[0].curve[2]",
    "curve.tension",
  ],
  [
    "a curve whose end is flat, so that higher loads would be hidden",
    {
      stocks: [
        {
          id: "own",
          like: "dynamic-rope-10",
          curve: [
            ["0 %", "0 N"],
            ["10 %", "5 kN"],
            ["20 %", "5.1 kN"],
          ],
        },
      ],
    },
    "stocks[0].curve[2]",
    "curve.flat",
  ],
  [
    "a curve with a step that no fibre makes",
    {
      stocks: [
        {
          id: "own",
          like: "dynamic-rope-10",
          curve: [
            ["0 %", "0 N"],
            ["5 %", "1 kN"],
            ["5.001 %", "20 kN"],
          ],
        },
      ],
    },
    "stocks[0].curve",
    "stock.tooFast",
  ],
  [
    "a rope as light as a thread and as stiff as a cable",
    { stocks: [{ id: "own", like: "dynamic-rope-10", mass: "2 g/m", branches: [["90000 kN", "0.01 s"]] }] },
    "stocks[0].branches",
    "stock.tooFast",
  ],
  [
    "a curve that does not begin at rest",
    {
      stocks: [
        {
          id: "own",
          like: "dynamic-rope-10",
          curve: [
            ["1 %", "0 N"],
            ["2 %", "2 kN"],
          ],
        },
      ],
    },
    "stocks[0].curve[0]",
    "curve.start",
  ],
  [
    "a webbing that is like itself",
    {
      stocks: [
        { id: "a", like: "b" },
        { id: "b", like: "a" },
      ],
    },
    "stocks[0].like",
    "stock.likeItself",
  ],
  [
    "a webbing of one's own under a built-in id",
    { stocks: [{ id: "dynamic-rope-10", like: "dynamic-rope-9" }] },
    "stocks[0].id",
    "stock.builtIn",
  ],
  ["a basis of no known kind", { "harness.basis": "heard: at the crag" }, "harness.basis", "basisKinds"],
];

/** The fault at the place that is named; a text of all there are where there is none. */
export function faultAt(edits: FaultyRig[1], path: string): RigIssue | string {
  const document = Object.entries(edits).reduce<RigDocument>((d, [at, value]) => editDocument(d, at, value), sound);
  const reading = readRig(document);
  const issues = reading.ok ? [] : reading.issues;
  return issues.find((each) => each.path === path) ?? `no issue at ${path}: ${JSON.stringify(issues)}`;
}
