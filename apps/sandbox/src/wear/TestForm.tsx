import { type LogColumn, type LogFault, OUTCOMES, readTest, type TestFields } from "@secondline/strength";
import { useState } from "react";
import { Button } from "../design/Button.tsx";
import { Choice } from "../design/Choice.tsx";
import { TextField } from "../design/TextField.tsx";
import { useActions } from "../state/useSandbox.ts";
import { DateField } from "./DateField.tsx";
import { todayIso } from "./days.ts";
import { useWearActions } from "./useWear.ts";
import styles from "./wear.module.css";

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

const fresh = (): TestFields => ({
  date: todayIso(),
  part: "webbing",
  material: "",
  state: "",
  wet: "dry",
  outcome: "broke",
  unit: "kN",
});

/** One test typed in; nothing goes into the log until every field is right. */
export function TestForm() {
  const [fields, setFields] = useState(fresh);
  const [faults, setFaults] = useState<readonly LogFault[]>([]);
  const { addTest } = useWearActions();
  const { announce } = useActions();
  const put = (column: LogColumn, value: string) => {
    setFields({ ...fields, [column]: value });
    setFaults(faults.filter((fault) => fault.column !== column));
  };
  const messages = (column: LogColumn) =>
    faults.filter((fault) => fault.column === column).map(({ message }) => message);
  const text = (column: LogColumn, label: string, hint?: string) => (
    <TextField
      label={label}
      value={fields[column] ?? ""}
      onChange={(value) => put(column, value)}
      messages={messages(column)}
      {...(hint ? { hint } : {})}
    />
  );
  function add(): void {
    const { result_to: _upper, ...rest } = fields;
    const trimmed = Object.fromEntries(
      Object.entries(fields.outcome === "broke between" ? fields : rest).map(([key, value]) => [key, value?.trim()]),
    );
    const read = readTest(trimmed as TestFields, 0);
    if (!read.ok) {
      setFaults(read.faults);
      announce(`Not added: ${read.faults.length === 1 ? "one field" : `${read.faults.length} fields`} to put right.`);
      return;
    }
    addTest(read.value);
    // The next sample is most often of the same kind: only what was measured is asked again.
    const { result: _result, result_to: _to, note: _note, ...same } = fields;
    setFields(same);
    setFaults([]);
    announce("The test is in the log.");
  }
  return (
    <div className={styles.testForm}>
      <DateField
        label="Date"
        value={fields.date ?? ""}
        onChange={(date) => put("date", date)}
        messages={messages("date")}
      />
      {text("part", "What was pulled", "webbing, leash, sewn loop …")}
      {text("material", "Material", "As in the rig, such as polyester-webbing-25, to count for it")}
      {text("state", "State", "new, fall zone, clamp trace …")}
      <Choice label="Wet or dry" value={fields.wet ?? "dry"} options={WET} onChange={(value) => put("wet", value)} />
      <Choice
        label="How it ended"
        value={fields.outcome ?? "broke"}
        options={HOW}
        onChange={(value) => put("outcome", value)}
      />
      {text("result", fields.outcome === "broke between" ? "From" : "Load")}
      {fields.outcome === "broke between" && text("result_to", "To")}
      <Choice label="Unit" value={fields.unit ?? "kN"} options={UNITS} onChange={(value) => put("unit", value)} />
      {text("failure_mode", "How it failed", "fibres, thread, knot …")}
      {text("failure_place", "Where it failed")}
      {text("batch", "Batch")}
      {text("taken_from", "Taken from", "e.g. 31 m from the marked end")}
      {text("months_outside", "Months outside")}
      {text("sun_months", "Months of full sun")}
      {text("falls", "Falls")}
      {text("note", "Note")}
      <div className={styles.buttons}>
        <Button tone="filled" label="Add to the log" onClick={add} />
      </div>
    </div>
  );
}
