/** The wear view's state: its work with undo, what of it can be read, and what is looked at. */

import { type BreakTest, readBreakLog, readWearRecord, type WearRecord } from "@secondline/strength";
import { sayWear } from "@secondline/words/page/wear";
import { createStore, type StoreApi } from "zustand/vanilla";
import { closeGroup, type History, record as recordStep, redo, startHistory, undo } from "../state/history.ts";
import type { Sandbox } from "../state/sandbox.ts";
import { dayOf, todayIso } from "./days.ts";
import type { Owner } from "./entryEdits.ts";
import type { Stretch } from "./entryKinds.ts";
import {
  type BreakLog,
  EXAMPLE_LOG_TEXT,
  EXAMPLE_RECORD,
  type KeptWear,
  NO_LOG,
  saysInvented,
  type WearWork,
  type WrittenRecord,
} from "./work.ts";

/** A fault of the record: where, and what in words. */
export interface RecordIssue {
  readonly path: string;
  readonly message: string;
}

export type WearPage = "record" | "log" | "teardown";

/** The break test that was last opened, by its place in the log; `editing`: its form is open. */
export interface ChosenTest {
  readonly index: number;
  readonly editing: boolean;
}

export interface WearStateSlice {
  readonly history: History<WearWork>;
  /** Faults of the record as written. */
  readonly issues: readonly RecordIssue[];
  /** The last record without faults, written and read. All that is computed belongs to it. */
  readonly good: { readonly written: WrittenRecord; readonly record: WearRecord };
  readonly earlier: KeptWear["earlier"];
  /** The examples that a first visit shows; they are in hand until something else is opened or written. */
  readonly example: WearWork | undefined;
  readonly page: WearPage;
  readonly owner: Owner;
  /** Index of the entry in the form. */
  readonly entry: number | undefined;
  readonly test: ChosenTest | undefined;
  /** The stretch of the webbing in sight [m from the marked end]; undefined: all of it. */
  readonly along: Stretch | undefined;
  /** The day that is shown, YYYY-MM-DD. */
  readonly on: string;
}

export interface WearActions {
  /** Another record; `group` joins the letters of one field and the travel of one drag into one step. */
  edit: (record: WrittenRecord, label: string, group?: string) => void;
  change: (part: Partial<WearWork>, label: string) => void;
  finish: () => void;
  /** Another record or log takes the place of the one in hand, which is kept. */
  replace: (part: Partial<WearWork>, label: string) => void;
  addTest: (test: BreakTest) => void;
  changeTest: (index: number, test: BreakTest) => void;
  removeTest: (index: number) => void;
  undo: () => void;
  redo: () => void;
  look: (part: Partial<Pick<WearStateSlice, "page" | "owner" | "entry" | "test" | "along" | "on">>) => void;
}

export interface WearStore {
  readonly store: StoreApi<WearStateSlice>;
  readonly actions: WearActions;
}

/** Replaced records that are kept; the oldest make room. */
const KEPT = 8;

/** `keep` is handed all that must outlive the page, after every change. */
export function createWearStore(
  kept: KeptWear | undefined,
  keep: (kept: KeptWear) => void,
  now = () => Date.now(),
): WearStore {
  const store = createStore<WearStateSlice>(() => firstState(kept));
  const { getState, setState } = store;

  function takeOver(history: History<WearWork>, earlier = getState().earlier): void {
    const before = getState();
    if (history === before.history && earlier === before.earlier) return;
    const { record } = history.present;
    const read = record === before.history.present.record ? undefined : readWearRecord(record);
    const rest = read === undefined ? {} : readable(read, record);
    setState({ history, earlier, ...rest });
    const { owner, entry, test } = getState();
    // Another test may stand in its place now: a form must not write into that one.
    if (test && history.present.log.tests[test.index] !== before.history.present.log.tests[test.index])
      setState({ test: undefined });
    const owners = record[owner.list] ?? [];
    if (owner.index >= owners.length)
      setState({ owner: { list: "webbings", index: 0 }, entry: undefined, along: undefined });
    else if (entry !== undefined && entry >= (owners[owner.index]?.entries.length ?? 0)) setState({ entry: undefined });
    if (history.present !== before.history.present || earlier !== before.earlier)
      keep({ work: history.present, earlier });
  }
  const present = () => getState().history.present;
  const step = (part: Partial<WearWork>, label: string, group?: string) =>
    recordStep(getState().history, label, { ...present(), ...part }, group);

  const actions: WearActions = {
    edit: (record, label, group) => takeOver(step({ record }, label, group)),
    change: (part, label) => takeOver(step(part, label)),
    finish: () => takeOver(closeGroup(getState().history)),
    replace(part, label) {
      const old = { name: part.record ? present().record.name : present().log.name, replaced: now(), work: present() };
      takeOver(step(part, label), [old, ...getState().earlier].slice(0, KEPT));
      if (part.record)
        setState({
          owner: { list: "webbings", index: 0 },
          entry: undefined,
          along: undefined,
          on: latestDay(part.record),
        });
    },
    addTest(test) {
      const { log } = present();
      takeOver(step({ log: { ...log, tests: [...log.tests, test] } }, sayWear("wearStore.breakTestAdded")));
    },
    changeTest(index, test) {
      const { log } = present();
      const old = log.tests[index];
      if (!old) return;
      // Where it came from, and that it is made up, does not change with what is written in it.
      const { line, invented } = old;
      const kept = { ...(line === undefined ? {} : { line }), ...(invented ? { invented } : {}) };
      takeOver(
        step(
          { log: { ...log, tests: log.tests.with(index, { ...test, ...kept }) } },
          sayWear("wearStore.breakTestChanged"),
        ),
      );
    },
    removeTest(index) {
      const { log } = present();
      takeOver(step({ log: { ...log, tests: log.tests.toSpliced(index, 1) } }, sayWear("wearStore.breakTestRemoved")));
    },
    undo: () => takeOver(undo(getState().history)),
    redo: () => takeOver(redo(getState().history)),
    // Another webbing has other places.
    look: (part) => setState(part.owner ? { along: undefined, ...part } : part),
  };
  return { store, actions };
}

function readable(read: ReturnType<typeof readWearRecord>, written: WrittenRecord): Partial<WearStateSlice> {
  return read.ok ? { issues: [], good: { written, record: read.record } } : { issues: read.issues };
}

/** The later of today and the last entry: what somebody wrote down last is in sight. */
export function latestDay(record: WrittenRecord): string {
  const dates = [...(record.webbings ?? []), ...(record.parts ?? [])].flatMap(({ entries }) =>
    entries.map((e) => e.date),
  );
  return [todayIso(), ...dates.filter((date) => dayOf(date) !== undefined)].sort().at(-1) ?? todayIso();
}

export function exampleLog(): BreakLog {
  const read = readBreakLog(EXAMPLE_LOG_TEXT);
  if (!read.ok) return NO_LOG;
  return { name: sayWear("wearStore.exampleBreakLog"), invented: saysInvented(EXAMPLE_LOG_TEXT), tests: read.tests };
}

export const exampleWork = (): WearWork => ({ record: EXAMPLE_RECORD, log: exampleLog(), stocks: {} });

function firstState(kept: KeptWear | undefined): WearStateSlice {
  const example = readWearRecord(EXAMPLE_RECORD);
  if (!example.ok) throw new Error(`The example record has faults: ${example.issues[0]?.message}`);
  const work = kept?.work ?? exampleWork();
  const read = readWearRecord(work.record);
  return {
    history: startHistory(work),
    issues: [],
    good: { written: EXAMPLE_RECORD, record: example.record },
    ...readable(read, work.record),
    earlier: kept?.earlier ?? [],
    example: kept ? undefined : work,
    page: "record",
    owner: { list: "webbings", index: 0 },
    entry: undefined,
    test: undefined,
    along: undefined,
    on: latestDay(work.record),
  };
}

const stores = new WeakMap<Sandbox, WearStore>();

/** One per sandbox: its undo outlives a change of views. What it makes is kept with the rest of the work. */
export function wearStoreOf(sandbox: Sandbox): WearStore {
  const known = stores.get(sandbox);
  if (known) return known;
  const kept = sandbox.store.getState().session.wear as KeptWear | undefined;
  const made = createWearStore(kept, (wear) => sandbox.actions.look({ wear }));
  stores.set(sandbox, made);
  return made;
}
