import { valueAt } from "@secondline/rig";
import { sayRigSheet } from "@secondline/words/page/rigSheet";
import { sectionTitle, stockOf, wearItemTitle, wearOfKind } from "@secondline/workbench";
import { Disclosure } from "../design/Disclosure.tsx";
import { useActions, useSandbox } from "../state/useSandbox.ts";
import { useFaultCount } from "./faults.ts";
import { MarkedTitle } from "./Marks.tsx";
import { ChoiceOfKind, ConditionFields, LineEndFields, Own, PartList } from "./parts.tsx";
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
      <LineEndFields at={`${line}.endA`} title={sayRigSheet("lineFields.endAnchorA")} />
      <LineEndFields at={`${line}.endB`} title={sayRigSheet("lineFields.endAnchorB")} />
    </>
  );
}

function Section({ at }: { at: string }) {
  return (
    <>
      <RigField path={`${at}.stock`} />
      <RigField path={`${at}.length`} help />
      <ConditionFields at={`${at}.condition`} />
      <PartList at={`${at}.wear`} part="wornPlace" make={() => wearOfKind({}, "clampMark")} titleOf={wearItemTitle}>
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
