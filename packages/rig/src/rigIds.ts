/** Ids of rigs that are loaded together: an id means one rig. */
import type { Rig, RigIssue } from "./rig.ts";
import { fact } from "./rigFacts.ts";

/** Faults for every id that more than one of the rigs has; `path` is the place of the later one in the list. */
export function repeatedRigIds(rigs: readonly Pick<Rig, "id" | "name">[]): RigIssue[] {
  return rigs.flatMap(({ id, name }, i): RigIssue[] => {
    const first = rigs.findIndex((other) => other.id === id);
    if (id === undefined || first === i) return [];
    return [
      {
        path: `[${i}].id`,
        got: fact("got.idAgain", { id }),
        expected: fact("expected.ownIdOfRig", {}),
        message: fact("ids.same", { first: rigs[first]!.name, second: name, id }),
      },
    ];
  });
}
