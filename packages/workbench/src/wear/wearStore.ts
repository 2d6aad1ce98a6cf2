/** The wear view's state: what of record and log can be read, and what is looked at. They themselves are in the one history. */
import { type BreakTest, type RecordIssue, readWearRecord, type WearRecord } from "@secondline/strength";
import { createStore, type StoreApi } from "zustand/vanilla";
import type { Documents, EarlierWear, KeptWear, WearWork, WrittenRecord } from "../documents/documents.ts";
import { documentsOf } from "../history/history.ts";
import { viewOfStep, type WearPage } from "../history/inSight.ts";
import type { Sandbox } from "../inHand/sandbox.ts";
import type { SandboxState } from "../inHand/state.ts";
import { dayOf, todayIso } from "./days.ts";
import type { Owner } from "./entryEdits.ts";
import type { Stretch } from "./place.ts";

/** The break test that was last opened, by its place in the log; `editing`: its form is open. */
export interface ChosenTest {
  readonly index: number;
  readonly editing: boolean;
}

export interface WearStateSlice {
  /** Record and log as the history of the page has them. */
  readonly work: WearWork;
  /** Faults of the record as written. */
  readonly issues: readonly RecordIssue[];
  /** The last record without faults, written and read. All that is computed belongs to it. */
  readonly good: { readonly written: WrittenRecord; readonly record: WearRecord };
  readonly earlier: readonly EarlierWear[];
  /** The examples that a first visit shows; they stay open until the user opens or writes something else. */
  readonly example: WearWork | undefined;
  readonly page: WearPage;
  readonly owner: Owner;
  /** Index of the entry in the form. */
  readonly entry: number | undefined;
  readonly test: ChosenTest | undefined;
  /** The stretch of the webbing in sight [m from the marked end]; undefined: the whole webbing. */
  readonly along: Stretch | undefined;
  /** The day that is shown, YYYY-MM-DD. */
  readonly on: string;
}

export interface WearActions {
  /** Another record; `group` joins the letters of one field and the travel of one drag into one step. */
  edit: (record: WrittenRecord, label: string, group?: string) => void;
  change: (part: Partial<WearWork>, label: string) => void;
  finish: () => void;
  /** Another record or log takes the place of the open one, which is kept. */
  replace: (part: Partial<WearWork>, label: string) => void;
  addTest: (test: BreakTest) => void;
  changeTest: (index: number, test: BreakTest) => void;
  removeTest: (index: number) => void;
  look: (part: Partial<Pick<WearStateSlice, "page" | "owner" | "entry" | "test" | "along" | "on">>) => void;
}

export interface WearStore {
  readonly store: StoreApi<WearStateSlice>;
  readonly actions: WearActions;
}

/** Replaced ones; the oldest make room [-]. */
const MOST_KEPT_RECORDS = 8;

/** What a wear view begins with, and what its steps are called. */
export interface WearStart {
  /** What a first visit shows; its record has no faults. */
  readonly example: WearWork;
  readonly steps: Readonly<Record<"testAdded" | "testChanged" | "testRemoved", string>>;
  /** Milliseconds since 1970. */
  readonly now: () => number;
}

/** The wear view of a page: begins with what was kept, else with the example. */
export function createWearStore({ store: page, actions: to }: Sandbox, start: WearStart): WearStore {
  const { steps, now } = start;
  const store = createStore<WearStateSlice>(() => firstState(page.getState().session.wear, start.example));
  const { getState, setState } = store;
  const { example } = getState();

  function takeOver(work: WearWork): void {
    const before = getState().work;
    const { record, log } = work;
    const rest = record === before.record ? {} : readable(readWearRecord(record), record);
    setState({ work, ...rest });
    const { owner, entry, test } = getState();
    // Another test may stand in its place now: a form must not write into that one.
    if (test && log.tests[test.index] !== before.log.tests[test.index]) setState({ test: undefined });
    const owners = record[owner.list] ?? [];
    if (owner.index >= owners.length)
      setState({ owner: { list: "webbings", index: 0 }, entry: undefined, along: undefined });
    else if (entry !== undefined && entry >= (owners[owner.index]?.entries.length ?? 0)) setState({ entry: undefined });
    keep();
  }
  /** What must outlive the page. */
  function keep(): void {
    const { work, earlier } = getState();
    to.look({ wear: { work, earlier } });
  }
  const changeLog = (tests: readonly BreakTest[], label: string) =>
    to.write({ log: { ...getState().work.log, tests } }, label);

  const actions: WearActions = {
    edit: (record, label, group) => to.write({ record }, label, group),
    change: (part, label) => to.write(part, label),
    finish: to.finishEdit,
    replace(part, label) {
      const { work, earlier } = getState();
      const old = { name: part.record ? work.record.name : work.log.name, replaced: now(), work };
      setState({ earlier: [old, ...earlier].slice(0, MOST_KEPT_RECORDS) });
      to.write(part, label);
      keep();
      if (part.record)
        setState({
          owner: { list: "webbings", index: 0 },
          entry: undefined,
          along: undefined,
          on: latestDay(part.record),
        });
    },
    addTest: (test) => changeLog([...getState().work.log.tests, test], steps.testAdded),
    changeTest(index, test) {
      const { tests } = getState().work.log;
      const old = tests[index];
      if (!old) return;
      // Where it came from, and that it is made up, does not change with what is written in it.
      const { line, invented } = old;
      const kept = { ...(line === undefined ? {} : { line }), ...(invented ? { invented } : {}) };
      changeLog(tests.with(index, { ...test, ...kept }), steps.testChanged);
    },
    removeTest: (index) => changeLog(getState().work.log.tests.toSpliced(index, 1), steps.testRemoved),
    // Another webbing has other places.
    look: (part) => setState(part.owner ? { along: undefined, ...part } : part),
  };

  /** After a step back or forward: goes to the page that shows the step. */
  function stepped(before: SandboxState): void {
    const { document, assessment, session } = page.getState();
    const isBack = document.history.future.length > before.document.history.future.length;
    const step = isBack ? document.history.future[0] : document.history.past.at(-1);
    if (!step || document.history === before.document.history) return;
    const isOther =
      assessment.key !== before.assessment.key || assessment.issues.length !== before.assessment.issues.length;
    const go = viewOfStep({ view: session.view, page: getState().page }, documentsOf(step), isOther);
    if (!go) return;
    setState({ page: go.page });
    to.look({ view: go.view });
  }
  to.adopt({ ...getState().work }, stepped);
  page.subscribe(({ document: { history } }, before) => {
    if (history.present === before.document.history.present) return;
    const work = workIn(history.present, example);
    if (work && !isSame(work, getState().work)) takeOver(work);
  });
  return { store, actions };
}

/** The examples stay the very same object: by it they are known. */
function workIn({ record, log, stocks }: Documents, example: WearWork | undefined): WearWork | undefined {
  if (!record || !log || !stocks) return undefined;
  const work = { record, log, stocks };
  return example && isSame(work, example) ? example : work;
}

const isSame = (a: WearWork, b: WearWork): boolean => a.record === b.record && a.log === b.log && a.stocks === b.stocks;

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

function firstState(kept: KeptWear | undefined, example: WearWork): WearStateSlice {
  const first = readWearRecord(example.record);
  if (!first.ok) throw new Error(`The example record has faults: ${JSON.stringify(first.issues[0])}`);
  const work = kept?.work ?? example;
  const read = readWearRecord(work.record);
  return {
    work,
    issues: [],
    good: { written: example.record, record: first.record },
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
