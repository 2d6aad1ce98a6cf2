/** The rigs that brute force is held against: the three demo rigs, and three more that are unlike them, invented for this. */
import { readRig } from "@secondline/rig";
import { type Assessed, assess } from "@secondline/scenarios";
import { demo, demoRig } from "../assessments.ts";

interface Named {
  readonly name: string;
  readonly assessed: Assessed;
}

const deepGround = (span: number, rise: number) => [
  ["0 m", "-1 m"],
  [`${span / 2} m`, "-140 m"],
  [`${span} m`, `${rise - 1} m`],
];

/** The sound demo rig with other lines; `over` takes the place of what it names. */
function like(name: string, span: number, rise: number, over: (sound: Document) => Partial<Document>): Named {
  const { id: _, ...sound } = demo("sound-rig") as Document & { readonly id: string };
  const place = { name, span: `${span} m`, rise: `${rise} m`, ground: deepGround(span, rise) };
  const read = readRig({ ...sound, ...place, ...over(sound) });
  if (!read.ok) throw new Error(`${name}: ${read.issues[0]?.message}`);
  const assessment = assess({ rig: read.rig });
  if (!assessment.ok) throw new Error(`${name}: ${assessment.issues[0]?.message}`);
  return { name, assessed: assessment.assessed };
}

type Part = Readonly<Record<string, unknown>>;

/** Of a rig's file what the rigs below differ in. */
interface Document {
  readonly main: Part & { readonly sections: readonly Part[] };
  readonly backup: Part & { readonly sections: readonly Part[]; readonly connections: readonly Part[] };
  readonly leash: Part;
  readonly walker: Part;
}

const sections = (sound: Document, stock: string) => [{ stock, condition: sound.main.sections[0]!["condition"] }];
const connections = (sound: Document, places: readonly number[]) =>
  places.map((at) => ({ ...sound.backup.connections[0]!, at }));

const OWN = [
  () =>
    like("long-stretchy", 115, -4, (sound) => ({
      main: {
        ...sound.main,
        pretension: "4 kN",
        sections: sections(sound, "polyamide-webbing-25"),
      },
      backup: {
        ...sound.backup,
        slack: "7 %",
        tapes: [],
        connections: connections(sound, [0.2, 0.4, 0.6, 0.8]),
      },
    })),
  () =>
    like("short-unconnected", 27, 2.5, (sound) => ({
      main: {
        ...sound.main,
        pretension: "1.8 kN",
        sections: sections(sound, "polyester-webbing-25-light"),
      },
      backup: {
        ...sound.backup,
        slack: "6 %",
        tapes: [],
        connections: [],
        sections: sections(sound, "polyester-webbing-25"),
      },
      leash: { ...sound.leash, length: "1.2 m" },
    })),
  () =>
    like("stiff-over-soft", 74, 0.5, (sound) => ({
      main: { ...sound.main, pretension: "5 kN", sections: sections(sound, "hmpe-webbing-25") },
      backup: {
        ...sound.backup,
        slack: "4 %",
        tapes: [],
        sections: sections(sound, "polyamide-webbing-25"),
        connections: connections(sound, [0.35, 0.7]),
      },
      walker: { ...sound.walker, mass: "95 kg" },
    })),
] as const;

const OF_DEMO = ["sound-rig", "loose-backup", "old-rig"] as const;
const OWN_NAMES = ["long-stretchy", "short-unconnected", "stiff-over-soft"] as const;
export const BRUTE_FORCE_RIGS: readonly string[] = [...OF_DEMO, ...OWN_NAMES];

/** @param name one of `BRUTE_FORCE_RIGS` */
export function bruteForceRig(name: string): Named {
  const own = (OWN_NAMES as readonly string[]).indexOf(name);
  if (own >= 0) return OWN[own]!();
  if (name === "old-rig") return demoRig(name, { file: "old-rig-wear", on: "2026-07-10" });
  if ((OF_DEMO as readonly string[]).includes(name)) return demoRig(name);
  throw new Error(`"${name}" is none of the rigs ${BRUTE_FORCE_RIGS.join(", ")}.`);
}
