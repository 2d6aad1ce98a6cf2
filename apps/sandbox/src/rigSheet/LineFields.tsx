import { valueAt } from "@secondline/rig";
import { sayRigSheet } from "@secondline/words/page/rigSheet";
import { Disclosure } from "../design/Disclosure.tsx";
import { useActions, useSandbox } from "../state/useSandbox.ts";
import { useFaultCount } from "./faults.ts";
import { MarkedTitle } from "./Marks.tsx";
import { ChoiceOfKind, Condition, LineEnd, Own, PartList } from "./parts.tsx";
import { RigField } from "./RigField.tsx";

/** Sections of a line with what has happened to them, and its two ends. */
export function LineFields({ line }: { line: "main" | "backup" }) {
  const faults = useFaultCount([`${line}.sections`]);
  return (
    <>
      <Disclosure
        title={<MarkedTitle title={sayRigSheet("lineFields.webbing")} groups={[`${line}.sections`]} />}
        faults={faults}
        level={4}
      >
        <PartList
          at={`${line}.sections`}
          part="section"
          least={1}
          make={(items) => ({ stock: stockOf(items.at(-1)), length: "10 m" })}
          titleOf={(item, index) => sectionTitle(item, index + 1)}
        >
          {(path) => <Section at={path} />}
        </PartList>
      </Disclosure>
      <LineEnd at={`${line}.endA`} title={sayRigSheet("lineFields.endAnchorA")} />
      <LineEnd at={`${line}.endB`} title={sayRigSheet("lineFields.endAnchorB")} />
    </>
  );
}

const stockOf = (section: unknown) => (section as { stock?: unknown } | undefined)?.stock ?? "polyester-webbing-25";

function sectionTitle(section: unknown, number: number): string {
  const { length } = section as { length?: unknown };
  return length === undefined
    ? sayRigSheet("lineFields.sectionOfRest", { number })
    : sayRigSheet("lineFields.sectionOfLength", { number, length: String(length) });
}

function Section({ at }: { at: string }) {
  return (
    <>
      <RigField path={`${at}.stock`} />
      <RigField path={`${at}.length`} help />
      <Condition at={`${at}.condition`} />
      <PartList
        at={`${at}.wear`}
        part="wornPlace"
        make={() => ({ kind: "clampMark", at: "2 m", length: "10 cm", clamped: "1 month" })}
        titleOf={wearTitle}
      >
        {(path) => <Wear at={path} />}
      </PartList>
      <Own at={at} />
    </>
  );
}

const WEAR_FIELDS: Readonly<Record<string, readonly string[]>> = {
  clampMark: ["at", "length", "clamped", "load"],
  fallZone: ["from", "to", "falls"],
  stitching: ["at", "length"],
  abrasion: ["from", "to", "depth"],
  heat: ["from", "to", "depth"],
  cut: ["at", "depth"],
};
/** What a kind of wear begins with when it is chosen; fields that the kinds share are kept. */
const WEAR_STARTS: Readonly<Record<string, Readonly<Record<string, unknown>>>> = {
  clampMark: { at: "2 m", length: "10 cm", clamped: "1 month" },
  fallZone: { from: "10 m", to: "20 m", falls: 20 },
  stitching: { at: "2 m", length: "20 cm" },
  abrasion: { from: "2 m", to: "2.2 m", depth: "5 %" },
  heat: { from: "2 m", to: "2.2 m", depth: "5 %" },
  cut: { at: "2 m", depth: "10 %" },
};
const WEAR_WORDS: Readonly<Record<string, string>> = {
  clampMark: sayRigSheet("lineFields.clampMark"),
  fallZone: sayRigSheet("lineFields.fallZone"),
  stitching: sayRigSheet("lineFields.stitching"),
  abrasion: sayRigSheet("lineFields.abrasion"),
  heat: sayRigSheet("lineFields.glazedHeat"),
  cut: sayRigSheet("lineFields.cut"),
};

function wearTitle(item: unknown): string {
  const wear = item as Record<string, unknown>;
  const where =
    wear.at === undefined
      ? sayRigSheet("lineFields.to", { from: String(wear.from), to: String(wear.to) })
      : String(wear.at);
  return `${WEAR_WORDS[String(wear.kind)] ?? sayRigSheet("lineFields.wornPlaceTitle")}, ${where}`;
}

function Wear({ at }: { at: string }) {
  const wear = useSandbox((state) => valueAt(state.document.history.present.rig, at)) as
    | Record<string, unknown>
    | undefined;
  const { edit } = useActions();
  const kind = String(wear?.kind ?? "");
  return (
    <>
      <ChoiceOfKind
        at={at}
        onChange={(next) => edit(at, wearOfKind(wear ?? {}, next), sayRigSheet("lineFields.kindWear"))}
      />
      {(WEAR_FIELDS[kind] ?? []).map((name) => (
        <RigField key={name} path={`${at}.${name}`} />
      ))}
    </>
  );
}

function wearOfKind(wear: Record<string, unknown>, kind: string): Record<string, unknown> {
  const start = WEAR_STARTS[kind] ?? {};
  return { kind, ...Object.fromEntries(Object.entries(start).map(([name, value]) => [name, wear[name] ?? value])) };
}
