import { dayText } from "@secondline/words/dates";
import { sayRecord } from "@secondline/words/page/record";
import { addEntry, entriesOf, nameFor, ownerPath } from "@secondline/workbench";
import { entryWords, freshFields, messagesUnder, PART_KINDS, WEBBING_KINDS } from "@secondline/workbench/record";
import { Button } from "../design/Button.tsx";
import { useSandbox } from "../state/useSandbox.ts";
import { useWear, useWearActions } from "../wearInHand/useWear.ts";
import { EntryForm } from "./EntryForm.tsx";
import styles from "./wear.module.css";

/** All entries in order of date; the chosen one opens as a form in its place. */
export function EntryList() {
  const written = useWear((state) => state.work.record);
  const owner = useWear((state) => state.owner);
  const chosen = useWear((state) => state.entry);
  const on = useWear((state) => state.on);
  const issues = useWear((state) => state.issues);
  const rigName = useSandbox((state) => nameFor(state.document.rig));
  const { edit, look } = useWearActions();
  const kinds = owner.list === "webbings" ? WEBBING_KINDS : PART_KINDS;
  const entries = entriesOf(written, owner);
  function add(): void {
    const event = entries.length === 0 ? (owner.list === "webbings" ? "rigged" : "putUp") : "falls";
    const after = addEntry(written, owner, { date: on, event, ...freshFields(kinds, event, rigName) });
    edit(after.record, sayRecord("entryList.entryAdded"));
    look({ entry: after.entry });
    // Its form, which may lie far below on a small screen, comes into sight and takes the keyboard.
    requestAnimationFrame(() => {
      const row = document.querySelector(`[data-entry="${after.entry}"]`)?.closest("li");
      row?.scrollIntoView({ block: "start" });
      row?.querySelector<HTMLElement>("[role=combobox]")?.focus({ preventScroll: true });
    });
  }
  return (
    <section aria-label={sayRecord("entryList.entries")} className={styles.section}>
      <div className={styles.headRow}>
        <h3 className={styles.h3}>{sayRecord("entryList.entries")}</h3>
        <Button icon="plus" label={sayRecord("entryList.addEntry")} onClick={add} />
      </div>
      <ol className={styles.entries}>
        {entries.map((entry, i) => {
          const faults = messagesUnder(issues, `${ownerPath(owner)}.entries[${i}]`).length;
          return (
            // biome-ignore lint/suspicious/noArrayIndexKey: an entry's place in the list is its identity in the format
            <li key={i} className={chosen === i ? styles.chosen : ""}>
              <button
                type="button"
                className={styles.entry}
                data-entry={i}
                aria-expanded={chosen === i}
                onClick={() => look({ entry: chosen === i ? undefined : i })}
              >
                <span className={entry.date > on ? styles.later : styles.date}>{dayText(entry.date)}</span>
                <span>
                  {entryWords(kinds, entry)}
                  {entry.date > on && <span className={styles.later}> {sayRecord("entryList.later")}</span>}
                  {faults > 0 && (
                    <strong className={styles.fault}> {sayRecord("entryList.putRight", { faults })}</strong>
                  )}
                </span>
              </button>
              {chosen === i && <EntryForm entry={i} />}
            </li>
          );
        })}
      </ol>
      {entries.length === 0 && <p className={styles.soft}>{sayRecord("entryList.nothingWrittenDown")}</p>}
    </section>
  );
}
