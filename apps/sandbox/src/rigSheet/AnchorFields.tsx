import { valueAt } from "@secondline/rig";
import { spokenField } from "@secondline/words/fields";
import { newRigWords } from "@secondline/words/newRig";
import { sayRigSheet } from "@secondline/words/page/rigSheet";
import { Disclosure } from "../design/Disclosure.tsx";
import { MeasuredLegs } from "../measure/MeasuredLegs.tsx";
import { useActions, useSandbox } from "../state/useSandbox.ts";
import { ChoiceOfKind, Condition, Own, PartList, Rated } from "./parts.tsx";
import { RigField } from "./RigField.tsx";

const NEW_PART = { strength: "20 kN", basis: "assumed: entered without a source" };

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
        ...NEW_PART,
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
          <Rated at={path} />
          <Condition at={`${path}.condition`} />
          <Own at={path} />
        </>
      )}
    </PartList>
  );
}

/** A new part is like the last one, but for what is thought of that and how it is rigged. */
function likeLast(items: readonly unknown[]): object {
  const { own: _own, rigged: _rigged, ...like } = (items.at(-1) ?? {}) as Record<string, unknown>;
  return like;
}

/** A sling says how it is rigged; another kind takes that out again. */
function PartKind({ at }: { at: string }) {
  const part = useSandbox((state) => valueAt(state.document.history.present.rig, at)) as
    | Record<string, unknown>
    | undefined;
  const { edit } = useActions();
  const { rigged: _, ...other } = part ?? {};
  return (
    <>
      <ChoiceOfKind
        at={at}
        onChange={(kind) =>
          edit(at, { ...(kind === "sling" ? part : other), kind }, sayRigSheet("anchorFields.kindPart"))
        }
      />
      {(part?.kind === "sling" || part?.rigged !== undefined) && <RigField path={`${at}.rigged`} />}
    </>
  );
}

function kindWords(at: string, kind: string): string {
  const field = spokenField(`${at}[0].kind`);
  const option = field?.kind === "choice" ? field.options.find(({ value }) => value === kind) : undefined;
  return option?.label ?? kind;
}
