import { sayRecord } from "@secondline/words/page/record";
import { NO_PLAN, plannedCount, planOf, withPlan } from "@secondline/workbench";
import { messagesUnder } from "@secondline/workbench/record";
import { Disclosure } from "../design/Disclosure.tsx";
import { TextField } from "../design/TextField.tsx";
import { useSandbox } from "../state/useSandbox.ts";
import { useFits, useWear, useWearActions } from "../wearInHand/useWear.ts";
import styles from "./wear.module.css";

const FIELDS = [
  {
    key: "inspectEvery",
    label: sayRecord("planOfUse.inspectedEvery"),
    hint: sayRecord("planOfUse.intervalHint"),
    read: (text: string) => (text === "" ? undefined : text),
  },
  {
    key: "falls",
    label: sayRecord("planOfUse.fallsBetweenInspections"),
    hint: sayRecord("planOfUse.fallsHint"),
    read: plannedCount,
  },
] as const;

/** How often the open rig is to be inspected, and how many falls come between: what makes an assessment lapse. */
export function PlanOfUse() {
  const fits = useFits();
  const rig = useSandbox((state) => state.document.rig);
  const record = useWear((state) => state.work.record);
  const issues = useWear((state) => state.issues);
  const { edit, finish } = useWearActions();
  if (!fits) return null;
  const found = planOf(record, rig);
  const plan = found?.plan ?? NO_PLAN;
  const messages = (key: string) => (found ? messagesUnder(issues, `plans[${found.index}].${key}`) : []);
  const put = (key: "inspectEvery" | "falls", value: unknown) =>
    edit(withPlan(record, rig, key, value), sayRecord("planOfUse.step"), `plan.${key}`);
  const faults = messages("inspectEvery").length + messages("falls").length;
  return (
    <Disclosure title={sayRecord("planOfUse.title")} faults={faults}>
      <p className={styles.note}>{sayRecord("planOfUse.lapseRule", { name: rig.name })}</p>
      {FIELDS.map(({ key, label, hint, read }) => (
        <TextField
          key={key}
          {...{ label, hint }}
          value={String(plan[key] ?? "")}
          messages={messages(key)}
          onChange={(text) => put(key, read(text))}
          onBlur={finish}
        />
      ))}
    </Disclosure>
  );
}
