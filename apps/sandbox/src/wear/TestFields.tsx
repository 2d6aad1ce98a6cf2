import { FIELDS } from "@secondline/rig";
import { type LogColumn, OUTCOMES } from "@secondline/strength";
import { Choice } from "../design/Choice.tsx";
import { TextField } from "../design/TextField.tsx";
import { DateField } from "./DateField.tsx";
import type { TestDraft } from "./useTestDraft.ts";

const UNITS = ["kN", "N", "lbf", "kgf"].map((unit) => ({ value: unit, label: unit }));
const WET = [
  { value: "dry", label: "Dry" },
  { value: "wet", label: "Wet" },
];
const HOW = OUTCOMES.map((outcome) => ({
  value: outcome,
  label: {
    broke: "Broke",
    stopped: "Stopped before it broke",
    "broke elsewhere": "Something else broke",
    "broke below": "Broke below this load",
    "broke between": "Broke between two loads",
  }[outcome],
}));

const KNOT_FIELD = FIELDS["leash.knots[].kind"];
const KNOT_OPTIONS = [{ value: "", label: "None" }, ...(KNOT_FIELD?.kind === "choice" ? KNOT_FIELD.options : [])];

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
        label="Date"
        value={fields.date ?? ""}
        onChange={(date) => put("date", date)}
        messages={messages("date")}
      />
      {text("part", "What was pulled", "webbing, leash, sewn loop …")}
      {text("material", "Material", "As in the rig, such as polyester-webbing-25, to count for it")}
      {text("state", "State", "new, fall zone, clamp mark …")}
      <Choice label="Wet or dry" value={fields.wet ?? "dry"} options={WET} onChange={(value) => put("wet", value)} />
      <Choice
        label="How it ended"
        value={fields.outcome ?? "broke"}
        options={HOW}
        onChange={(value) => put("outcome", value)}
      />
      {text("result", between ? "From" : "Load")}
      {between && text("result_to", "To")}
      <Choice label="Unit" value={fields.unit ?? "kN"} options={UNITS} onChange={(value) => put("unit", value)} />
      {text("failure_mode", "How it failed", "fibres, thread, knot …")}
      {text("failure_place", "Where it failed")}
      {text("batch", "Batch")}
      {text("taken_from", "Taken from", "e.g. 31 m from the marked end")}
      {text("months_outside", "Months outside", "All seasons together")}
      {text("sun_months", "Months of full sun", "Half of the day in shade: half of the months")}
      {text("falls", "Falls", "Caught on the piece that was pulled")}
      {text("clamped_months", "Months in a clamp", "Left out, the months outside count")}
      {text("sewn_months", "Months that stitching hung outside", "Left out, the months outside count")}
      <Choice label="Knot" value={fields.knot ?? ""} options={KNOT_OPTIONS} onChange={(value) => put("knot", value)} />
      {text("note", "Note")}
    </>
  );
}
