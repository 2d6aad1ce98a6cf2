import { sayRecord } from "@secondline/words/page/record";
import {
  entriesOf,
  nameFor,
  ownerPath,
  removeEntry,
  replaceEntry,
  setField,
  type WrittenEntry,
} from "@secondline/workbench";
import {
  asKind,
  type EntryFormField,
  fieldValue,
  inWords,
  messagesUnder,
  PART_KINDS,
  WEBBING_KINDS,
} from "@secondline/workbench/record";
import { Button } from "../design/Button.tsx";
import { Choice } from "../design/Choice.tsx";
import { TextField } from "../design/TextField.tsx";
import { Tick } from "../design/Tick.tsx";
import { useActions, useSandbox } from "../state/useSandbox.ts";
import { useWear, useWearActions } from "../wearInHand/useWear.ts";
import { onEscape } from "./leaveKey.ts";
import styles from "./wear.module.css";

/** The chosen entry, field by field: all that can be dragged can be typed here. */
export function EntryForm({ entry: index }: { entry: number }) {
  const written = useWear((state) => state.work.record);
  const owner = useWear((state) => state.owner);
  const issues = useWear((state) => state.issues);
  const rigName = useSandbox((state) => nameFor(state.document.rig));
  const { edit, finish, look } = useWearActions();
  const { announce } = useActions();
  const kinds = owner.list === "webbings" ? WEBBING_KINDS : PART_KINDS;
  const entry = entriesOf(written, owner)[index];
  if (!entry) return null;
  const kind = kinds.find(({ event }) => event === entry.event);
  const path = `${ownerPath(owner)}.entries[${index}]`;
  const put = (next: WrittenEntry, group?: string) => {
    const after = replaceEntry(written, owner, index, next);
    edit(after.record, sayRecord("entryForm.changed", { what: kind?.label ?? entry.event }), group);
    look({ entry: after.entry });
  };
  function closeAt(next: number): void {
    look({ entry: undefined });
    // The keyboard goes on from the row that the form stood under, or from the one that took its place.
    requestAnimationFrame(() => document.querySelector<HTMLElement>(`[data-entry="${next}"]`)?.focus());
  }
  const close = () => closeAt(index);
  const messages = (key: string) => messagesUnder(issues, `${path}.${key}`);
  const own = issues.filter((issue) => issue.path === path).map(inWords);
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: Escape, wherever in the form the keyboard is
    <div className={styles.form} onKeyDown={onEscape(close)}>
      <Choice
        label={sayRecord("entryForm.whatHappened")}
        value={entry.event}
        options={kinds.map(({ event, label }) => ({ value: event, label }))}
        onChange={(event) => put(asKind(entry, kinds, event, rigName))}
      />
      <Messages messages={[...messages("event"), ...own]} />
      <TextField
        type="date"
        label={sayRecord("entryForm.on")}
        value={entry.date}
        messages={messages("date")}
        onChange={(date) => put({ ...entry, date }, `${path}.date`)}
        onBlur={finish}
      />
      {kind?.fields.map((field) => (
        <FieldOf
          key={field.key}
          {...{ field, entry, put, finish }}
          group={`${path}.${field.key}`}
          messages={messages(field.key)}
        />
      ))}
      <div className={styles.buttons}>
        <Button
          tone="quiet"
          icon="bin"
          label={sayRecord("entryForm.remove")}
          onClick={() => {
            edit(
              removeEntry(written, owner, index),
              sayRecord("entryForm.removed", { what: kind?.label ?? sayRecord("entryForm.entry") }),
            );
            announce(sayRecord("entryForm.removedNotice"));
            closeAt(Math.min(index, entriesOf(written, owner).length - 2));
          }}
        />
        <Button label={sayRecord("entryForm.done")} onClick={close} />
      </div>
    </div>
  );
}

interface FieldProps {
  field: EntryFormField;
  entry: WrittenEntry;
  put: (entry: WrittenEntry, group?: string) => void;
  finish: () => void;
  group: string;
  messages: readonly string[];
}

function FieldOf({ field, entry, put, finish, group, messages }: FieldProps) {
  const value = entry[field.key];
  const set = (next: unknown, grouped = false) => put(setField(entry, field.key, next), grouped ? group : undefined);
  switch (field.kind) {
    case "choice":
      return (
        <>
          <Choice
            label={field.label}
            value={String(value ?? "")}
            options={field.options}
            onChange={(next) => set(next)}
          />
          <Messages messages={messages} />
        </>
      );
    case "flag":
      return <Tick label={field.label} checked={value === true} onChange={(next) => set(next)} />;
    case "sides":
      return <Sides label={field.label} value={Array.isArray(value) ? value : []} onChange={(next) => set(next)} />;
    default:
      return (
        <TextField
          type={field.kind === "date" ? "date" : "text"}
          label={field.label}
          hint={field.hint}
          value={value === undefined ? "" : String(value)}
          messages={messages}
          onChange={(text) => set(fieldValue(field, text), true)}
          onBlur={finish}
        />
      );
  }
}

function Sides({
  label,
  value,
  onChange,
}: {
  label: string;
  value: readonly unknown[];
  onChange: (sides: readonly string[]) => void;
}) {
  const toggle = (side: string, on: boolean) =>
    onChange(["A", "B"].filter((s) => (s === side ? on : value.includes(s))));
  return (
    <fieldset className={styles.sides}>
      <legend>{label}</legend>
      <Tick label={sayRecord("entryForm.atA")} checked={value.includes("A")} onChange={(on) => toggle("A", on)} />
      <Tick label={sayRecord("entryForm.atB")} checked={value.includes("B")} onChange={(on) => toggle("B", on)} />
    </fieldset>
  );
}

export function Messages({ messages }: { messages: readonly string[] }) {
  if (messages.length === 0) return null;
  return (
    <ul className={styles.wrong} role="alert">
      {messages.map((message) => (
        <li key={message}>✕ {message}</li>
      ))}
    </ul>
  );
}
