/** Faults of a wear record, by code, with the values that each sentence needs. */
import { type FactDay, type FactsOf, type FactValue, factMaker, type NoValues, type RigFact } from "@secondline/rig";
import type { HungFacts } from "../noteFacts.ts";

type Stretch = { readonly from: FactValue; readonly to: FactValue };
/** `event`: the kind of the entry, in quotation marks. */
type OfEvent = { readonly event: string };

/** The value found, and the value expected. */
interface RecordPlaceFacts {
  "noun.record": NoValues;
  "place.main": { readonly rig: string; readonly section: number };
  "place.backup": { readonly rig: string; readonly section: number };
  "place.clamp": { readonly at: FactValue; readonly since: FactDay };
  range: Stretch;
  "got.again": { readonly name: FactValue };
  "part.ofRig": { readonly part: string; readonly rig: string };
  "got.span": Stretch;
  "got.clamps": { readonly first: FactValue; readonly second: FactValue };
  "expected.longer": { readonly than: FactValue };
  "expected.later": { readonly date: string };
  "expected.earlier": { readonly date: string };
  "expected.date": NoValues;
  "expected.downPart": NoValues;
  "expected.upPart": NoValues;
  "expected.oneWebbing": NoValues;
  "expected.rigged": NoValues;
  "expected.down": NoValues;
  "expected.oneClamp": NoValues;
  "expected.noFactor": NoValues;
  "expected.once": NoValues;
  "expected.key": NoValues;
  "expected.textOrNumber": NoValues;
  "expected.groupOfValues": NoValues;
  "expected.type": { readonly type: string };
  "expected.number": NoValues;
  "expected.string": NoValues;
  "expected.boolean": NoValues;
  "expected.array": NoValues;
  "expected.other": NoValues;
  "expected.within": Stretch;
  "expected.placeWithin": Stretch;
}

export interface RecordFacts extends RecordPlaceFacts, HungFacts {
  "stretch.backwards": Stretch;
  "spot.outside": { readonly at: FactValue; readonly range: FactValue };
  "part.upTwice": NoValues;
  "part.notUp": OfEvent;
  "webbing.samePlace": { readonly first: string; readonly second: string; readonly place: FactValue };
  "firstUse.beforeMade": { readonly firstUse: FactDay; readonly made: FactDay };
  "firstUse.usedBefore": OfEvent & { readonly date: FactDay; readonly firstUse: FactDay };
  "replaced.beforeMade": { readonly date: FactDay; readonly made: FactDay };
  "order.entry": { readonly date: FactDay; readonly before: FactDay };
  "order.made": { readonly date: FactDay; readonly before: FactDay };
  "event.notRigged": OfEvent;
  "event.rigged": OfEvent;
  "clamps.two": { readonly name: string; readonly first: FactValue; readonly second: FactValue };
  "value.outOfBounds": { readonly got: FactValue; readonly expected: FactValue };
  "value.noDate": { readonly got: FactValue };
  "record.key": { readonly key: string };
  /** A value of another kind than the form asks for; `at`: its path. */
  "form.field": { readonly at: string; readonly got: FactValue; readonly expected: FactValue };
  "form.file": { readonly got: FactValue; readonly expected: FactValue };
  twice: { readonly name: FactValue };
  "factor.noDoubt": { readonly judgement: string };
  "span.outside": { readonly got: FactValue };
  "falls.beside": { readonly got: FactValue; readonly loaded: FactValue };
  "clamp.offBeforeOn": { readonly until: FactDay; readonly date: FactDay };
}

export type RecordFact = FactsOf<RecordFacts> | RigFact;

/** One finding of the record's checks. */
export const recordFact = factMaker<RecordFacts>();
