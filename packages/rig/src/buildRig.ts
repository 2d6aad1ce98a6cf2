/** A document that passed every check, turned into a rig in SI units with the stated defaults filled in. */
import { readBasis } from "./basis.ts";
import type { ReadDocument } from "./document.ts";
import type { Draft } from "./draft.ts";
import { chord } from "./geometry.ts";
import { findStock } from "./ownStocks.ts";
import type {
  AnchorPart,
  AnchorSide,
  Basis,
  Condition,
  ConnectionPart,
  Latitude,
  LineEnd,
  LineStock,
  OwnJudgement,
  Rated,
  Rig,
  RigBackup,
  Wear,
  WebbingSection,
} from "./rig.ts";
import { unconfirmedIn } from "./unconfirmed.ts";
import { MONTH_SECONDS, YEAR_SECONDS } from "./units.ts";

/** Makes optional what may be undefined, which the rig's types tell apart. */
type Present<T> = { [K in keyof T as undefined extends T[K] ? never : K]: T[K] } & {
  [K in keyof T as undefined extends T[K] ? K : never]?: Exclude<T[K], undefined>;
};
/** The same object without the keys whose value is undefined. */
function present<T extends object>(group: T): Present<T> {
  return Object.fromEntries(Object.entries(group).filter(([, value]) => value !== undefined)) as Present<T>;
}

const DEFAULT_FACTOR: Basis = {
  kind: "common practice",
  note: "no source: every part is asked to hold twice its largest computed load",
};
const CHOSEN_FACTOR: Basis = { kind: "assumed", note: "chosen in the rig file, no basis given" };

type ReadEnd = ReadDocument["main"]["endA"];
type ReadSection = ReadDocument["main"]["sections"][number];
type ReadWear = NonNullable<ReadSection["wear"]>[number];
type ReadAnchor = ReadDocument["anchorA"];
type ReadPart = ReadAnchor["points"][number];
type ReadHardware = NonNullable<ReadAnchor["hardware"]>[number];
type ReadCondition = ReadPart["condition"];
type ReadOwn = ReadPart["own"];

const rated = (part: { strength: number; basis?: Basis | undefined }): Rated => ({
  strength: part.strength,
  basis: part.basis ?? readBasis(undefined),
});

const own = (read: ReadOwn): OwnJudgement | undefined =>
  read?.reason === undefined ? undefined : present({ factor: read.factor, reason: read.reason.trim() });

type Where = Latitude | undefined;

/** `inUse`: times that something else in the document says the part has been in use [s]. Nothing is younger than its longest use. */
function condition(read: ReadCondition, latitude: Where, inUse: readonly number[] = []): Condition {
  if (!read) return {};
  const { outside, sun, age, wet } = read;
  return present({
    monthsOutside: outside === undefined ? undefined : outside / MONTH_SECONDS,
    sun,
    latitude: outside === undefined ? undefined : latitude,
    ageYears: age === undefined ? undefined : Math.max(age, outside ?? 0, ...inUse) / YEAR_SECONDS,
    wet,
  });
}

function wear(read: ReadWear): Wear {
  if (read.kind !== "clampMark") return read;
  const { kind, at, length, clamped, load } = read;
  return present({ kind, at, length, months: clamped / MONTH_SECONDS, load });
}

function anchorPart(read: ReadPart | ReadHardware, latitude: Where): AnchorPart {
  const { name, kind, rigged } = read;
  return present({
    name,
    kind,
    rated: rated(read),
    rigged,
    carries: "carries" in read ? read.carries : undefined,
    pullAngle: "pullAngle" in read ? read.pullAngle : undefined,
    condition: condition(read.condition, latitude),
    own: own(read.own),
  });
}

function anchorSide(read: ReadAnchor, latitude: Where): AnchorSide {
  return present({
    points: read.points.map((part) => anchorPart(part, latitude)),
    hardware: (read.hardware ?? []).map((part) => anchorPart(part, latitude)),
    legAngle: read.legAngle ?? 0,
    legLength: read.legLength ?? 0,
    axisAngle: read.axisAngle,
    stiffness: read.stiffness,
  });
}

function lineEnd(read: ReadEnd, stock: LineStock, latitude: Where): LineEnd {
  const common = present({
    bend: read.bend,
    condition: read.condition && condition(read.condition, latitude),
    own: own(read.own),
  });
  if (read.kind === "weblock") {
    const monthsClamped = read.clamped === undefined ? undefined : read.clamped / MONTH_SECONDS;
    return { kind: read.kind, rated: rated(read), ...present({ slipLoad: read.slipLoad, monthsClamped }), ...common };
  }
  // A loop is sewn of the webbing itself, and a knot tied in it: as new neither holds more than the webbing.
  if (read.kind === "sewnLoop") return { kind: read.kind, rated: atMost(stock.rated, rated(read)), ...common };
  const { strength, basis } = read;
  const held = strength === undefined ? stock.rated : atMost(stock.rated, rated({ strength, basis }));
  return { kind: read.kind, knot: read.knot, rated: held, ...common };
}

const atMost = (webbing: Rated, stated: Rated): Rated => (stated.strength > webbing.strength ? webbing : stated);

/** Turns a faultless document into a rig; `draft` is the same document, for its stocks and the stated defaults. */
export function buildRig(read: ReadDocument, draft: Draft): Rig {
  const { latitude } = read;
  return present({
    version: 1 as const,
    id: read.id,
    name: read.name,
    notes: read.notes ?? "",
    invented: read.invented ?? false,
    unconfirmed: unconfirmedIn(draft.document),
    span: read.span,
    rise: filled(draft, "rise"),
    latitude,
    ground: read.ground,
    anchorA: anchorSide(read.anchorA, latitude),
    anchorB: anchorSide(read.anchorB, latitude),
    main: { pretension: read.main.pretension, ...line(read.main, draft, latitude) },
    backup: read.backup && backupLine(read.backup, draft, latitude),
    rings: read.rings.map((ring, i) =>
      present({
        name: ring.name,
        mass: ring.mass,
        clearance: filled(draft, `rings[${i}].clearance`),
        friction: filled(draft, `rings[${i}].friction`),
        rated: rated(ring),
        condition: condition(ring.condition, latitude),
        own: own(ring.own),
      }),
    ),
    leash: present({
      stock: stock(draft, read.leash.stock),
      length: read.leash.length,
      knots: read.leash.knots,
      condition: condition(read.leash.condition, latitude),
      falls: read.leash.falls,
      sheathSlip: read.leash.sheathSlip,
      glazed: read.leash.glazed,
      own: own(read.leash.own),
    }),
    harness: present({
      rated: rated(read.harness),
      condition: condition(read.harness.condition, latitude),
      own: own(read.harness.own),
    }),
    walker: present({
      mass: read.walker.mass,
      rescuer: read.walker.rescuer,
      tieIn: filled(draft, "walker.tieIn"),
      lateral: filled(draft, "walker.lateral"),
      at: filled(draft, "walker.at"),
    }),
    requiredAfterFailure: filled(draft, "requiredAfterFailure"),
    requiredClearance: filled(draft, "requiredClearance"),
    requiredFactor: {
      value: filled(draft, "requiredFactor"),
      basis: read.requiredFactorBasis ?? (read.requiredFactor === undefined ? DEFAULT_FACTOR : CHOSEN_FACTOR),
    },
  });
}

/** A quantity of a faultless document, or its default in the field table. */
function filled(draft: Draft, path: string): number {
  const value = draft.number(path);
  if (value === undefined) throw new Error(`${path} was to be there by now`);
  return value;
}

function stock(draft: Draft, id: string): LineStock {
  return findStock(draft, id) as LineStock;
}

function line(read: { sections: ReadSection[]; endA: ReadEnd; endB: ReadEnd }, draft: Draft, latitude: Where) {
  const ends = [[read.endA, 0] as const, [read.endB, read.sections.length - 1] as const];
  const sections = read.sections.map(
    (from, i): WebbingSection =>
      present({
        stock: stock(draft, from.stock),
        length: from.length,
        condition: condition(from.condition, latitude, [
          ...(from.wear ?? []).flatMap((one) => (one.kind === "clampMark" ? [one.clamped] : [])),
          ...ends.flatMap(([end, section]) => (section === i && end.kind === "weblock" ? (end.clamped ?? []) : [])),
        ]),
        wear: (from.wear ?? []).map(wear),
        own: own(from.own),
      }),
  );
  return {
    sections,
    endA: lineEnd(read.endA, sections[0]!.stock, latitude),
    endB: lineEnd(read.endB, sections.at(-1)!.stock, latitude),
  };
}

function backupLine(read: NonNullable<ReadDocument["backup"]>, draft: Draft, latitude: Where): RigBackup {
  const distance = chord({ span: filled(draft, "span"), rise: filled(draft, "rise") });
  const slack = read.slack ?? filled(draft, "backup.length") / distance - 1;
  return { slack, ...line(read, draft, latitude), connections: joints(read, latitude) };
}

/** Connections in the order of the document, then the tapes in theirs: an index leads back to its field. */
function joints(backup: NonNullable<ReadDocument["backup"]>, latitude: Where): ConnectionPart[] {
  const made = (kind: ConnectionPart["kind"], list: NonNullable<typeof backup.connections> | undefined) =>
    (list ?? []).map((joint) =>
      present({
        at: joint.at,
        kind,
        rated: rated(joint),
        condition: condition(joint.condition, latitude),
        own: own(joint.own),
      }),
    );
  return [...made("connection", backup.connections), ...made("tape", backup.tapes)];
}
