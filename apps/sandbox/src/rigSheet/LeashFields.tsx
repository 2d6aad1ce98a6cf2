import { sayRigSheet } from "@secondline/words/page/rigSheet";
import { ConditionFields, Own, PartList, RatedFields } from "./parts.tsx";
import { RigField } from "./RigField.tsx";

const KNOT_WORDS: Readonly<Record<string, string>> = {
  ring: sayRigSheet("leashFields.ringEnd"),
  harness: sayRigSheet("leashFields.harness"),
  middle: "between",
};

/** Leash, its knots, and the ring or rings it hangs from. */
export function LeashFields() {
  return (
    <>
      <RigField path="leash.length" slider />
      <RigField path="leash.stock" />
      <RigField path="leash.falls" />
      <RigField path="leash.sheathSlip" help />
      <RigField path="leash.glazed" help />
      <PartList
        at="leash.knots"
        part="knot"
        make={() => ({ kind: "figureEight", where: "harness" })}
        titleOf={(item, index) =>
          sayRigSheet("leashFields.knotNumber", {
            number: index + 1,
            place: KNOT_WORDS[String((item as { where?: unknown }).where)] ?? sayRigSheet("leashFields.leash"),
          })
        }
      >
        {(path) => (
          <>
            <RigField path={`${path}.kind`} />
            <RigField path={`${path}.where`} />
          </>
        )}
      </PartList>
      <ConditionFields at="leash.condition" />
      <Own at="leash" />
      <PartList
        at="rings"
        part="ring"
        least={1}
        make={(items) => ({
          ...(items.at(-1) as object),
          name: sayRigSheet("leashFields.ringNumber", { number: items.length + 1 }),
        })}
        titleOf={(item, index) =>
          String((item as { name?: unknown }).name ?? sayRigSheet("leashFields.ringNumber", { number: index + 1 }))
        }
      >
        {(path) => (
          <>
            <RigField path={`${path}.name`} />
            <RigField path={`${path}.mass`} />
            <RigField path={`${path}.clearance`} help />
            <RigField path={`${path}.friction`} />
            <RatedFields at={path} />
            <ConditionFields at={`${path}.condition`} />
            <Own at={path} />
          </>
        )}
      </PartList>
    </>
  );
}
