/** Ways to fields of the sheet from what was measured. */
import { spokenField } from "@secondline/words/fields";
import { newRigWords } from "@secondline/words/newRig";
import { placeAnchorB } from "@secondline/workbench";
import { Disclosure } from "../design/Disclosure.tsx";
import { MeasuredLegs } from "../measure/MeasuredLegs.tsx";
import { MeasuredSite } from "../measure/MeasuredSite.tsx";
import { useActions } from "../state/useSandbox.ts";

const { say } = newRigWords;

/** Span and rise in one step, with the ground moved along. */
export function SpanAndRise() {
  const { change } = useActions();
  return (
    <Disclosure title={say("measured.open")} level={4}>
      <MeasuredSite onTake={(site) => change((before) => placeAnchorB(before, site), say("measured.step"))} />
    </Disclosure>
  );
}

/** The angle between the legs of an anchor. */
export function Legs({ anchor }: { anchor: "anchorA" | "anchorB" }) {
  const { edit } = useActions();
  const path = `${anchor}.legAngle`;
  return (
    <Disclosure title={say("legs.open", { anchor: anchor.slice(-1) })} level={4}>
      <MeasuredLegs onTake={(angle) => edit(path, angle, spokenField(path)!.label)} />
    </Disclosure>
  );
}
