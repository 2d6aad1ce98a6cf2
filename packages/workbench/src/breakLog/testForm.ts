/** The form of one break test: its fields, and what is wrong in what was typed so far. */
import { FIELDS } from "@secondline/rig";
import {
  type BreakTest,
  type LogColumn,
  type LogFault,
  OUTCOMES,
  readTest,
  type WrittenTest,
} from "@secondline/strength";
import { sayBreakLog as say } from "@secondline/words/page/breakLog";
import { faultInForm, tidyFields } from "./testFields.ts";

interface Option {
  readonly value: string;
  readonly label: string;
}

export type TestFormField = { readonly column: LogColumn; readonly label: string; readonly hint?: string } & (
  | { readonly kind: "date" | "text" }
  | { readonly kind: "choice"; readonly options: readonly Option[]; readonly fallback: string }
);

const UNITS = ["kN", "N", "lbf", "kgf"].map((unit) => ({ value: unit, label: unit }));
const WETNESS = [
  { value: "dry", label: say("testFields.dry") },
  { value: "wet", label: say("testFields.wet") },
];
const ENDINGS = OUTCOMES.map((outcome) => ({
  value: outcome,
  label: {
    broke: say("testFields.broke"),
    stopped: say("testFields.stoppedBeforeBroke"),
    "broke elsewhere": say("testFields.somethingElseBroke"),
    "broke below": say("testFields.brokeBelowLoad"),
    "broke between": say("testFields.brokeBetweenTwo"),
  }[outcome],
}));
const KNOT_FIELD = FIELDS["leash.knots[].kind"];
const KNOTS = [
  { value: "", label: say("testFields.none") },
  ...(KNOT_FIELD?.kind === "choice" ? KNOT_FIELD.options : []),
];

const text = (column: LogColumn, label: string, hint?: string): TestFormField => ({
  kind: "text",
  column,
  label,
  ...(hint === undefined ? {} : { hint }),
});
const choice = (
  column: LogColumn,
  label: string,
  options: readonly Option[],
  fallback = options[0]!.value,
): TestFormField => ({ kind: "choice", column, label, options, fallback });

const FIRST: readonly TestFormField[] = [
  { kind: "date", column: "date", label: say("testFields.date") },
  text("part", say("testFields.whatPulled"), say("testFields.whatPulledHint")),
  text("material", say("testFields.material"), say("testFields.materialHint")),
  text("state", say("testFields.state"), say("testFields.stateHint")),
  choice("wet", say("testFields.wetOrDry"), WETNESS),
  choice("outcome", say("testFields.howEnded"), ENDINGS, "broke"),
];
const LOAD: readonly TestFormField[] = [text("result", say("testFields.load"))];
const LOADS: readonly TestFormField[] = [
  text("result", say("testFields.from")),
  text("result_to", say("testFields.to")),
];
const LAST: readonly TestFormField[] = [
  choice("unit", say("testFields.unit"), UNITS),
  text("failure_mode", say("testFields.howFailed"), say("testFields.howFailedHint")),
  text("failure_place", say("testFields.whereFailed")),
  text("batch", say("testFields.batch")),
  text("taken_from", say("testFields.taken"), say("testFields.takenHint")),
  text("months_outside", say("testFields.monthsOutside"), say("testFields.monthsOutsideHint")),
  text("sun_months", say("testFields.monthsFullSun"), say("testFields.monthsFullSunHint")),
  text("falls", say("testFields.falls"), say("testFields.fallsHint")),
  text("clamped_months", say("testFields.monthsClamp"), say("testFields.monthsStitchingHungHint")),
  text("sewn_months", say("testFields.monthsStitchingHung"), say("testFields.monthsStitchingHungHint")),
  choice("knot", say("testFields.knot"), KNOTS),
  text("note", say("testFields.note")),
];

/** The fields in the order in which they are asked; a test that broke between two loads has two load fields. */
export const testFormFields = ({ outcome }: WrittenTest): readonly TestFormField[] => [
  ...FIRST,
  ...(outcome === "broke between" ? LOADS : LOAD),
  ...LAST,
];

/** What a new test begins with, on a day. */
export const freshTest = (date: string): WrittenTest => ({
  date,
  part: "webbing",
  material: "",
  state: "",
  wet: "dry",
  outcome: "broke",
  unit: "kN",
});

/** The next sample is most often of the same kind: only what was measured is asked again. */
export function nextTest({ result: _result, result_to: _to, note: _note, ...same }: WrittenTest): WrittenTest {
  return same;
}

/** Fields as they are typed, and those whose faults are in sight: that were typed in, or all after a try to keep the test. */
export interface TestDraft {
  readonly fields: WrittenTest;
  readonly touched: ReadonlySet<LogColumn> | "all";
}

export const draftOf = (fields: WrittenTest): TestDraft => ({ fields, touched: new Set() });

export const typedIn = ({ fields, touched }: TestDraft, column: LogColumn, value: string): TestDraft => ({
  fields: { ...fields, [column]: value },
  touched: touched === "all" ? touched : new Set([...touched, column]),
});

export interface DraftRead {
  /** The test, if every field is right. */
  readonly test: BreakTest | undefined;
  readonly faults: readonly LogFault[];
}

export function readDraft({ fields }: TestDraft): DraftRead {
  const reading = readTest(tidyFields(fields), 0);
  return reading.ok ? { test: reading.value, faults: [] } : { test: undefined, faults: reading.faults };
}

/** Faults of a field that are in sight, in the words of the form. */
export const draftMessages = ({ touched }: TestDraft, { faults }: DraftRead, column: LogColumn): readonly string[] =>
  touched === "all" || touched.has(column) ? faults.filter((fault) => fault.column === column).map(faultInForm) : [];
