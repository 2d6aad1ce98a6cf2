import { valueAt } from "@secondline/rig";
import { spokenField } from "@secondline/words/fields";
import { newRigWords } from "@secondline/words/newRig";
import { sayRigSheet } from "@secondline/words/page/rigSheet";
import { anchorPartOfKind, kindWords, likeLast, NEW_ANCHOR_PART } from "@secondline/workbench";
import { Disclosure } from "../design/Disclosure.tsx";
import { MeasuredLegs } from "../measure/MeasuredLegs.tsx";
import { useActions, useSandbox } from "../state/useSandbox.ts";
import { ChoiceOfKind, ConditionFields, Own, PartList, RatedFields } from "./parts.tsx";
import { RigField } from "./RigField.tsx";

/** Rock points, legs and hardware of one anchor. */
export function AnchorFields({ anchor }: { anchor: "anchorA" | "anchorB" }) {
  return (
    <>
      <RigField path={`${anchor}.legAngle`} slider help />
      <Legs anchor={anchor} />
      <RigField path={`${anchor}.legLength`} />
      <RigField path={`${anchor}.axisAngle`} help />
      <RigField path={`${anchor}.stiffness`} help />
      <Parts at={`${anchor}.points`} part="rockPoint" kind="bolt" least={1} />
      <Parts at={`${anchor}.hardware`} part="hardware" kind="shackle" least={0} />
    </>
  );
}

function Legs({ anchor }: { anchor: "anchorA" | "anchorB" }) {
  const { edit } = useActions();
  const label = spokenField(`${anchor}.legAngle`)!.label;
  return (
    <Disclosure title={newRigWords.say("legs.open", { anchor: anchor.slice(-1) })} level={4}>
      <MeasuredLegs onTake={(angle) => edit(`${anchor}.legAngle`, angle, label)} />
    </Disclosure>
  );
}

interface PartsProps {
  at: string;
  part: "rockPoint" | "hardware";
  kind: string;
  least: number;
}

function Parts({ at, part, kind, least }: PartsProps) {
  return (
    <PartList
      at={at}
      part={part}
      least={least}
      make={(items) => ({
        ...NEW_ANCHOR_PART,
        ...likeLast(items),
        kind,
        name: `${kindWords(at, kind)} ${items.length + 1}`,
      })}
      titleOf={(item) => String((item as { name?: unknown }).name ?? sayRigSheet(`anchorFields.${part}`))}
    >
      {(path) => (
        <>
          <RigField path={`${path}.name`} />
          <PartKind at={path} />
          {/* A rock point is pulled at an angle to its axis; hardware hangs between it and one line or both. */}
          {at.endsWith(".points") ? (
            <RigField path={`${path}.pullAngle`} help />
          ) : (
            <RigField path={`${path}.carries`} />
          )}
          <RatedFields at={path} />
          <ConditionFields at={`${path}.condition`} />
          <Own at={path} />
        </>
      )}
    </PartList>
  );
}

function PartKind({ at }: { at: string }) {
  const part = useSandbox((state) => valueAt(state.document.history.present.rig, at)) as
    | Record<string, unknown>
    | undefined;
  const { edit } = useActions();
  return (
    <>
      <ChoiceOfKind
        at={at}
        onChange={(kind) => edit(at, anchorPartOfKind(part, kind), sayRigSheet("anchorFields.kindPart"))}
      />
      {(part?.kind === "sling" || part?.rigged !== undefined) && <RigField path={`${at}.rigged`} />}
    </>
  );
}
