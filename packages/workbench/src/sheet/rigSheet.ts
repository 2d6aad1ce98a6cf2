/** The whole rig document as a sheet: its groups from what is changed most to what is written once, and the items of each. */
import { parseQuantity } from "@secondline/rig";
import { newRigWords } from "@secondline/words/newRig";
import { sayRigSheet } from "@secondline/words/page/rigSheet";
import {
  anchorPartOfKind,
  freePlace,
  likeLast,
  NEW_ANCHOR_PART,
  NEW_CONNECTION,
  NEW_TAPE,
  stockOf,
  WEAR_FIELDS,
  wearOfKind,
} from "./newParts.ts";
import {
  conditionItem,
  field,
  fold,
  lineEndItem,
  ownItem,
  ratedPartItems,
  type SheetItem,
  type SheetList,
} from "./sheetItems.ts";
import { jointPlace, kindWords, sectionTitle, wearItemTitle } from "./titles.ts";

/** Items that are more than fields: each has a way of its own to be shown. */
export type OwnItem =
  | { readonly kind: "measuredSite" | "ground" | "backup" | "joints" | "materials" }
  | { readonly kind: "legs"; readonly at: "anchorA" | "anchorB" };

export interface SheetGroup {
  readonly title: string;
  /** Paths that belong to it: their faults and unconfirmed values are counted beside the title. */
  readonly groups: readonly string[];
  readonly items: readonly (SheetItem | OwnItem)[];
}

/** What is changed most: open from the beginning. Its values belong to the groups below. */
export const MOST_CHANGED: SheetGroup = {
  title: sayRigSheet("rigSheet.mostChanged"),
  groups: [],
  items: [
    field("span", { slider: true }),
    field("main.pretension", { slider: true, label: sayRigSheet("rigSheet.tensionMainLine") }),
    field("backup.slack", { slider: true, label: sayRigSheet("rigSheet.slackBackup"), onlyWritten: true }),
    field("leash.length", { slider: true, label: sayRigSheet("rigSheet.lengthLeash") }),
    field("walker.mass", { slider: true, label: sayRigSheet("rigSheet.massWalker") }),
    field("requiredFactor", { slider: true, help: true }),
    field("requiredAfterFailure", { slider: true, help: true }),
    field("requiredClearance", { slider: true, help: true }),
  ],
};

/** Sections of a line with what has happened to them, and its two ends. */
export const lineItems = (line: "main" | "backup"): readonly SheetItem[] => [
  fold(sayRigSheet("lineFields.webbing"), `${line}.sections`, [
    {
      kind: "list",
      at: `${line}.sections`,
      part: "section",
      least: 1,
      make: (sections) => ({ stock: stockOf(sections.at(-1)), length: "10 m" }),
      titleOf: sectionTitle,
      itemsAt: sectionItems,
    },
  ]),
  lineEndItem(`${line}.endA`, sayRigSheet("lineFields.endAnchorA")),
  lineEndItem(`${line}.endB`, sayRigSheet("lineFields.endAnchorB")),
];

const sectionItems = (at: string): readonly SheetItem[] => [
  field(`${at}.stock`),
  field(`${at}.length`, { help: true }),
  conditionItem(at),
  {
    kind: "list",
    at: `${at}.wear`,
    part: "wornPlace",
    least: 0,
    make: () => wearOfKind({}, "clampMark"),
    titleOf: wearItemTitle,
    itemsAt: (path) => [
      {
        kind: "kind",
        at: path,
        step: sayRigSheet("lineFields.kindWear"),
        change: wearOfKind,
        itemsOf: ({ kind }) => (WEAR_FIELDS[String(kind)] ?? []).map((name) => field(`${path}.${name}`)),
      },
    ],
  },
  ownItem(at),
];

/** Connections or tapes between main line and backup, beside the `others`, with which none shares its place; `span` [m]. */
export const jointList = (parts: "connections" | "tapes", span: number, others: unknown): SheetList => ({
  kind: "list",
  at: `backup.${parts}`,
  part: parts === "tapes" ? "tape" : "connection",
  least: 0,
  make: (joints) => ({
    ...newJoint(parts),
    ...(joints.at(-1) as object | undefined),
    at: freePlace(placesOf([...joints, ...(Array.isArray(others) ? others : [])])),
  }),
  titleOf: (joint, number) => sayRigSheet(`backupFields.${parts}.title`, { number, place: jointPlace(joint, span) }),
  itemsAt: (path) => [field(`${path}.at`, { slider: true, help: true }), ...ratedPartItems(path)],
});

const placesOf = (joints: readonly unknown[]): readonly number[] =>
  joints.flatMap((joint) => {
    const read = parseQuantity((joint as { at?: unknown }).at, "position");
    return read.ok ? [read.value] : [];
  });

/** A connection or tape to begin with. */
export const newJoint = (parts: "connections" | "tapes") => (parts === "tapes" ? NEW_TAPE : NEW_CONNECTION);

const KNOT_PLACES: Readonly<Record<string, string>> = {
  ring: sayRigSheet("leashFields.ringEnd"),
  harness: sayRigSheet("leashFields.harness"),
  middle: sayRigSheet("leashFields.between"),
};

/** Leash, its knots, and the ring or rings it hangs from. */
const LEASH_ITEMS: readonly SheetItem[] = [
  field("leash.length", { slider: true }),
  field("leash.stock"),
  field("leash.falls"),
  field("leash.sheathSlip", { help: true }),
  field("leash.glazed", { help: true }),
  {
    kind: "list",
    at: "leash.knots",
    part: "knot",
    least: 0,
    make: () => ({ kind: "figureEight", where: "harness" }),
    titleOf: (knot, number) => {
      const place = KNOT_PLACES[String((knot as { where?: unknown }).where)] ?? sayRigSheet("leashFields.leash");
      return sayRigSheet("leashFields.knotNumber", { number, place });
    },
    itemsAt: (path) => [field(`${path}.kind`), field(`${path}.where`)],
  },
  conditionItem("leash"),
  ownItem("leash"),
  {
    kind: "list",
    at: "rings",
    part: "ring",
    least: 1,
    make: (rings) => ({ ...(rings.at(-1) as object), name: ringName(rings.length + 1) }),
    titleOf: (ring, number) => nameOf(ring) ?? ringName(number),
    itemsAt: (path) => [
      field(`${path}.name`),
      field(`${path}.mass`),
      field(`${path}.clearance`, { help: true }),
      field(`${path}.friction`),
      ...ratedPartItems(path),
    ],
  },
];

function ringName(number: number): string {
  return sayRigSheet("leashFields.ringNumber", { number });
}

function nameOf(part: unknown): string | undefined {
  const { name } = part as { name?: unknown };
  return name === undefined || name === null ? undefined : String(name);
}

/** Rock points, legs and hardware of one anchor. */
const anchorItems = (anchor: "anchorA" | "anchorB"): SheetGroup["items"] => [
  field(`${anchor}.legAngle`, { slider: true, help: true }),
  { kind: "legs", at: anchor },
  field(`${anchor}.legLength`),
  field(`${anchor}.axisAngle`, { help: true }),
  field(`${anchor}.stiffness`, { help: true }),
  // A rock point is pulled at an angle to its axis; hardware hangs between it and one line or both.
  anchorParts(`${anchor}.points`, "rockPoint", (path) => field(`${path}.pullAngle`, { help: true })),
  anchorParts(`${anchor}.hardware`, "hardware", (path) => field(`${path}.carries`)),
];

function anchorParts(at: string, part: "rockPoint" | "hardware", how: (path: string) => SheetItem): SheetList {
  const kind = part === "rockPoint" ? "bolt" : "shackle";
  return {
    kind: "list",
    at,
    part,
    least: part === "rockPoint" ? 1 : 0,
    make: (parts) => ({
      ...NEW_ANCHOR_PART,
      ...likeLast(parts),
      kind,
      name: `${kindWords(at, kind)} ${parts.length + 1}`,
    }),
    titleOf: (one) => nameOf(one) ?? sayRigSheet(`anchorFields.${part}`),
    itemsAt: (path) => [
      field(`${path}.name`),
      {
        kind: "kind",
        at: path,
        step: sayRigSheet("anchorFields.kindPart"),
        change: anchorPartOfKind,
        itemsOf: ({ kind: now, rigged }) => (now === "sling" || rigged !== undefined ? [field(`${path}.rigged`)] : []),
      },
      how(path),
      ...ratedPartItems(path),
    ],
  };
}

/** Everything else, group by group. */
export const SHEET_GROUPS: readonly SheetGroup[] = [
  {
    title: sayRigSheet("rigSheet.siteGround"),
    groups: ["name", "id", "notes", "span", "rise", "latitude", "ground", "requiredFactorBasis"],
    items: [
      field("name"),
      field("id", { help: true }),
      field("notes"),
      field("rise", { slider: true }),
      field("latitude", { unsaid: newRigWords.say("unsaid.latitude") }),
      { kind: "measuredSite" },
      field("requiredFactorBasis"),
      { kind: "ground" },
    ],
  },
  {
    title: sayRigSheet("rigSheet.mainLine"),
    groups: ["main"],
    items: [field("main.pretension"), ...lineItems("main")],
  },
  {
    title: sayRigSheet("rigSheet.backup"),
    groups: ["backup.slack", "backup.length", "backup.sections", "backup.endA", "backup.endB"],
    items: [{ kind: "backup" }],
  },
  {
    title: sayRigSheet("rigSheet.connectionsTapes"),
    groups: ["backup.connections", "backup.tapes"],
    items: [{ kind: "joints" }],
  },
  { title: sayRigSheet("rigSheet.leashRing"), groups: ["leash", "rings"], items: LEASH_ITEMS },
  {
    title: sayRigSheet("rigSheet.walkerHarness"),
    groups: ["walker", "harness"],
    items: [
      field("walker.mass"),
      field("walker.rescuer", { help: true }),
      field("walker.tieIn", { help: true }),
      field("walker.lateral", { help: true }),
      ...ratedPartItems("harness"),
    ],
  },
  { title: sayRigSheet("rigSheet.anchorA"), groups: ["anchorA"], items: anchorItems("anchorA") },
  { title: sayRigSheet("rigSheet.anchorB"), groups: ["anchorB"], items: anchorItems("anchorB") },
  { title: sayRigSheet("rigSheet.ownMaterials"), groups: ["stocks"], items: [{ kind: "materials" }] },
];
