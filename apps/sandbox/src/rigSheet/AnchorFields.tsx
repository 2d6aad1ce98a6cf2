import { fieldAt } from "@secondline/rig";
import { Condition, PartList, Rated } from "./parts.tsx";
import { RigField } from "./RigField.tsx";

const NEW_PART = { strength: "20 kN", basis: "assumed: entered without a source" };

/** Rock points, legs and hardware of one anchor. */
export function AnchorFields({ anchor }: { anchor: "anchorA" | "anchorB" }) {
  return (
    <>
      <RigField path={`${anchor}.legAngle`} slider help />
      <RigField path={`${anchor}.legLength`} />
      <RigField path={`${anchor}.stiffness`} help />
      <Parts at={`${anchor}.points`} noun="rock point" kind="bolt" least={1} />
      <Parts at={`${anchor}.hardware`} noun="piece of hardware" kind="shackle" least={0} />
    </>
  );
}

function Parts({ at, noun, kind, least }: { at: string; noun: string; kind: string; least: number }) {
  return (
    <PartList
      at={at}
      noun={noun}
      least={least}
      make={(items) => ({
        ...NEW_PART,
        ...(items.at(-1) as object | undefined),
        kind,
        name: `${kindWords(at, kind)} ${items.length + 1}`,
      })}
      titleOf={(item) => String((item as { name?: unknown }).name ?? noun)}
    >
      {(path) => (
        <>
          <RigField path={`${path}.name`} />
          <RigField path={`${path}.kind`} />
          <Rated at={path} />
          <Condition at={`${path}.condition`} />
        </>
      )}
    </PartList>
  );
}

function kindWords(at: string, kind: string): string {
  const field = fieldAt(`${at}[0].kind`);
  const option = field?.kind === "choice" ? field.options.find(({ value }) => value === kind) : undefined;
  return option?.label ?? kind;
}
