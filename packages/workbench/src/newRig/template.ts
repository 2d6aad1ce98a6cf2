/**
 * The rig that a new one is begun from: two bolts at either side, a weblock at either end of both lines, shackles of their own.
 * Sizes are usual ones, without a source; each is marked until somebody confirms it.
 */
import { RIG_FORMAT, type RigDocument } from "@secondline/rig";
import { sayNewRig as say } from "@secondline/words/newRig";

const TEMPLATE_BASIS = "assumed: of a usual size, from the template of a new rig";
const ENTERED_BASIS = "assumed: entered without a source";

type Condition = NonNullable<RigDocument["leash"]["condition"]>;

/** What the answers come to, as typed. */
export interface Said {
  readonly name: string;
  readonly span: string;
  readonly rise: string;
  readonly ground: RigDocument["ground"];
  readonly stocks: RigDocument["stocks"];
  readonly webbing: string;
  readonly tension: string;
  /** Undefined: there is none. */
  readonly backup:
    | {
        readonly webbing: string;
        readonly slack: string;
        /** Shares of the line's length [-]. */
        readonly connections: readonly number[];
        readonly strength: string;
        readonly strengthSaid: boolean;
      }
    | undefined;
  readonly anchorA: SaidAnchor;
  readonly anchorB: SaidAnchor;
  readonly rope: string;
  readonly leashLength: string;
  readonly knot: string;
  readonly mass: string;
  /** Empty: nobody said, and the sunniest counts. */
  readonly latitude: string;
  /** The condition of every part; undefined: nobody said, and the worst counts. */
  readonly condition: Condition | undefined;
  readonly isNew: boolean;
}

export interface SaidAnchor {
  readonly points: number;
  readonly kind: string;
  readonly strength: string;
  readonly strengthSaid: boolean;
  readonly legAngle: string;
}

/** The whole document of a new rig. */
export function rigFromAnswers(said: Said): RigDocument {
  const aged = said.condition ? { condition: said.condition } : {};
  const end = {
    kind: "weblock" as const,
    strength: "45 kN",
    basis: TEMPLATE_BASIS,
    bend: 8,
    ...(said.isNew ? { clamped: "0 months" } : {}),
    ...aged,
  };
  const knot = said.knot as RigDocument["leash"]["knots"][number]["kind"];
  return {
    secondline: RIG_FORMAT,
    name: said.name,
    span: said.span,
    rise: said.rise,
    ...(said.latitude === "" ? {} : { latitude: said.latitude as NonNullable<RigDocument["latitude"]> }),
    ...(said.stocks && said.stocks.length > 0 ? { stocks: said.stocks } : {}),
    anchorA: anchorOf(said.anchorA, said.backup !== undefined, aged),
    anchorB: anchorOf(said.anchorB, said.backup !== undefined, aged),
    main: { pretension: said.tension, sections: [{ stock: said.webbing, ...aged }], endA: end, endB: end },
    ...(said.backup ? { backup: backupOf(said.backup, end, aged) } : {}),
    rings: [{ name: say("name.ring"), mass: "0.1 kg", strength: "30 kN", basis: TEMPLATE_BASIS, ...aged }],
    leash: {
      stock: said.rope,
      length: said.leashLength,
      knots: [
        { kind: knot, where: "ring" },
        { kind: knot, where: "harness" },
      ],
      ...aged,
      ...(said.isNew ? { falls: 0, sheathSlip: "0 %", glazed: "0 %" } : {}),
    },
    harness: { strength: "15 kN", basis: TEMPLATE_BASIS, ...aged },
    walker: { mass: said.mass },
    ground: said.ground,
  };
}

type Aged = { readonly condition?: Condition };
type End = RigDocument["main"]["endA"];

function backupOf(
  { webbing, slack, connections, strength, strengthSaid }: NonNullable<Said["backup"]>,
  end: End,
  aged: Aged,
): NonNullable<RigDocument["backup"]> {
  const basis = strengthSaid ? ENTERED_BASIS : TEMPLATE_BASIS;
  return {
    slack,
    sections: [{ stock: webbing, ...aged }],
    endA: end,
    endB: end,
    ...(connections.length > 0 ? { connections: connections.map((at) => ({ at, strength, basis, ...aged })) } : {}),
  };
}

/** Kinds of points that have names; any other is a point. */
const NAMED_KINDS = ["bolt", "tree", "sling", "shackle"] as const;

function pointName(written: string, i: number, count: number): string {
  const kind = NAMED_KINDS.find((one) => one === written) ?? "point";
  if (count === 1) return say(`name.${kind}`);
  if (count > 2) return say(`numbered.${kind}`, { number: i + 1 });
  return i === 0 ? say(`left.${kind}`) : say(`right.${kind}`);
}

function anchorOf(anchor: SaidAnchor, hasBackup: boolean, aged: Aged): RigDocument["anchorA"] {
  const { points, kind, strength, strengthSaid, legAngle } = anchor;
  const shackle = { kind: "shackle" as const, strength: "40 kN", basis: TEMPLATE_BASIS, ...aged };
  return {
    points: Array.from({ length: points }, (_, i) => ({
      name: pointName(kind, i, points),
      kind: kind as RigDocument["anchorA"]["points"][number]["kind"],
      strength,
      basis: strengthSaid ? ENTERED_BASIS : TEMPLATE_BASIS,
      ...(kind === "bolt" ? { pullAngle: "90 deg" } : {}),
      ...aged,
    })),
    ...(points > 1 ? { legAngle, legLength: "1.2 m" } : {}),
    hardware: hasBackup
      ? [
          { name: say("name.mainShackle"), carries: "main", ...shackle },
          { name: say("name.backupShackle"), carries: "backup", ...shackle },
        ]
      : [{ name: say("name.shackle"), ...shackle }],
  };
}
