import { FIELDS } from "@secondline/rig";
import { type LogColumn, OUTCOMES } from "@secondline/strength";
import { sayBreakLog } from "@secondline/words/page/breakLog";
import { Choice } from "../design/Choice.tsx";
import { TextField } from "../design/TextField.tsx";
import { DateField } from "./DateField.tsx";
import type { TestDraft } from "./useTestDraft.ts";

const UNIT_OPTIONS = ["kN", "N", "lbf", "kgf"].map((unit) => ({ value: unit, label: unit }));
const WET_OPTIONS = [
  { value: "dry", label: sayBreakLog("testFields.dry") },
  { value: "wet", label: sayBreakLog("testFields.wet") },
];
const OUTCOME_OPTIONS = OUTCOMES.map((outcome) => ({
  value: outcome,
  label: {
    broke: sayBreakLog("testFields.broke"),
    stopped: sayBreakLog("testFields.stoppedBeforeBroke"),
    "broke elsewhere": sayBreakLog("testFields.somethingElseBroke"),
    "broke below": sayBreakLog("testFields.brokeBelowLoad"),
    "broke between": sayBreakLog("testFields.brokeBetweenTwo"),
  }[outcome],
}));

const KNOT_FIELD = FIELDS["leash.knots[].kind"];
const KNOT_OPTIONS = [
  { value: "", label: sayBreakLog("testFields.none") },
  ...(KNOT_FIELD?.kind === "choice" ? KNOT_FIELD.options : []),
];

/** All that can be written down about one break test. */
export function TestFields({ draft: { fields, put, messages } }: { draft: TestDraft }) {
  const between = fields.outcome === "broke between";
  const text = (column: LogColumn, label: string, hint?: string) => (
    <TextField
      label={label}
      value={fields[column] ?? ""}
      onChange={(value) => put(column, value)}
      messages={messages(column)}
      {...(hint ? { hint } : {})}
    />
  );
  return (
    <>
      <DateField
        label={sayBreakLog("testFields.date")}
        value={fields.date ?? ""}
        onChange={(date) => put("date", date)}
        messages={messages("date")}
      />
      {text("part", sayBreakLog("testFields.whatPulled"), sayBreakLog("testFields.whatPulledHint"))}
      {text("material", sayBreakLog("testFields.material"), sayBreakLog("testFields.materialHint"))}
      {text("state", sayBreakLog("testFields.state"), sayBreakLog("testFields.stateHint"))}
      <Choice
        label={sayBreakLog("testFields.wetOrDry")}
        value={fields.wet ?? "dry"}
        options={WET_OPTIONS}
        onChange={(value) => put("wet", value)}
      />
      <Choice
        label={sayBreakLog("testFields.howEnded")}
        value={fields.outcome ?? "broke"}
        options={OUTCOME_OPTIONS}
        onChange={(value) => put("outcome", value)}
      />
      {text("result", between ? sayBreakLog("testFields.from") : sayBreakLog("testFields.load"))}
      {between && text("result_to", sayBreakLog("testFields.to"))}
      <Choice
        label={sayBreakLog("testFields.unit")}
        value={fields.unit ?? "kN"}
        options={UNIT_OPTIONS}
        onChange={(value) => put("unit", value)}
      />
      {text("failure_mode", sayBreakLog("testFields.howFailed"), sayBreakLog("testFields.howFailedHint"))}
      {text("failure_place", sayBreakLog("testFields.whereFailed"))}
      {text("batch", sayBreakLog("testFields.batch"))}
      {text("taken_from", sayBreakLog("testFields.taken"), sayBreakLog("testFields.takenHint"))}
      {text("months_outside", sayBreakLog("testFields.monthsOutside"), sayBreakLog("testFields.monthsOutsideHint"))}
      {text("sun_months", sayBreakLog("testFields.monthsFullSun"), sayBreakLog("testFields.monthsFullSunHint"))}
      {text("falls", sayBreakLog("testFields.falls"), sayBreakLog("testFields.fallsHint"))}
      {text("clamped_months", sayBreakLog("testFields.monthsClamp"), sayBreakLog("testFields.monthsStitchingHungHint"))}
      {text(
        "sewn_months",
        sayBreakLog("testFields.monthsStitchingHung"),
        sayBreakLog("testFields.monthsStitchingHungHint"),
      )}
      <Choice
        label={sayBreakLog("testFields.knot")}
        value={fields.knot ?? ""}
        options={KNOT_OPTIONS}
        onChange={(value) => put("knot", value)}
      />
      {text("note", sayBreakLog("testFields.note"))}
    </>
  );
}
