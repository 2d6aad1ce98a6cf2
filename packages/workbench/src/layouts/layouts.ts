/**
 * The layouts side by side. Each is a whole sandbox of its own: a document with undo that keeps its last good state, and
 * runs with progress. The first is the open rig itself, so that nothing has to be copied back and forth.
 */
import { sayLayouts } from "@secondline/words/page/layouts";
import { createStore, type StoreApi } from "zustand/vanilla";
import type { WrittenRig } from "../documents/documents.ts";
import { createSandbox, type Sandbox } from "../inHand/sandbox.ts";
import type { Services } from "../inHand/state.ts";

export interface Layout {
  readonly id: string;
  readonly sandbox: Sandbox;
}
export interface LayoutsState {
  /** One to four layouts; the first is the open rig. */
  readonly layouts: readonly Layout[];
}

export const MOST_LAYOUTS = 4;
export const LETTERS = ["A", "B", "C", "D"] as const;
const IN_HAND = sayLayouts("layouts.hand");

/** A layout as it is kept on the device. */
export interface WrittenLayout {
  readonly document: WrittenRig;
  readonly goodDocument: WrittenRig;
}

export interface Layouts {
  readonly store: StoreApi<LayoutsState>;
  /** Puts one more beside the others, at its old place if it had one; undefined when there are four. */
  readonly add: (written: WrittenLayout, place?: number) => Layout | undefined;
  /** Takes a layout away; the open rig stays. Returns what brings it back. */
  readonly remove: (id: string) => (() => void) | undefined;
  /** Lets every layout follow the what-if of the open rig; returns what ends that. */
  readonly follow: () => () => void;
  /** All but the open rig, to be kept. */
  readonly written: () => readonly WrittenLayout[];
  /** Calls back when a layout comes, goes or is changed. */
  readonly onChange: (listener: () => void) => () => void;
}

export function createLayouts(inHand: Sandbox, services: Services, kept: readonly WrittenLayout[] = []): Layouts {
  const store = createStore<LayoutsState>(() => ({ layouts: [{ id: IN_HAND, sandbox: inHand }] }));
  const listeners = new Set<() => void>();
  const changed = () => {
    for (const listener of listeners) listener();
  };
  const others = () => store.getState().layouts.slice(1);

  function add(written: WrittenLayout, place?: number): Layout | undefined {
    const { layouts } = store.getState();
    if (layouts.length >= MOST_LAYOUTS) return undefined;
    const { session, assessment } = inHand.store.getState();
    const { whatIf, accuracy } = session;
    const { known, leftOut } = assessment;
    // Layouts are compared with each other, not with what they were: ten megabytes less for each.
    const start = { ...written, session: { whatIf, accuracy }, known, leftOut, keepsPrevious: false };
    const sandbox = createSandbox(services, start);
    const layout = { id: services.newId(), sandbox };
    sandbox.store.subscribe((now, before) => {
      if (now.document.history.present.rig !== before.document.history.present.rig) changed();
    });
    store.setState({ layouts: layouts.toSpliced(place ?? layouts.length, 0, layout) });
    sandbox.actions.runNow();
    changed();
    return layout;
  }

  function remove(id: string): (() => void) | undefined {
    const { layouts } = store.getState();
    const place = layouts.findIndex((layout) => layout.id === id);
    const layout = layouts[place];
    if (!layout || place === 0) return undefined;
    layout.sandbox.actions.stop();
    const written = writtenLayout(layout.sandbox);
    store.setState({ layouts: layouts.toSpliced(place, 1) });
    changed();
    return () => void add(written, Math.min(place, store.getState().layouts.length));
  }

  function follow(): () => void {
    const take = () => {
      const { whatIf, accuracy } = inHand.store.getState().session;
      for (const { sandbox } of others()) {
        const { session } = sandbox.store.getState();
        if (session.accuracy !== accuracy) sandbox.actions.chooseAccuracy(accuracy);
        if (session.whatIf !== whatIf) sandbox.actions.chooseWhatIf(whatIf);
      }
    };
    take();
    return inHand.store.subscribe((now, before) => {
      if (now.session.whatIf !== before.session.whatIf || now.session.accuracy !== before.session.accuracy) take();
    });
  }

  // What is known of the open rig is known of a change to it: the same webbing, on the same day.
  inHand.store.subscribe(({ assessment: now }, { assessment: before }) => {
    for (const { sandbox } of others()) {
      if (now.known !== before.known) sandbox.actions.know(now.known);
      if (now.leftOut !== before.leftOut) sandbox.actions.leaveOut(now.leftOut);
    }
  });
  for (const written of kept.slice(0, MOST_LAYOUTS - 1)) add(written);
  return {
    store,
    add,
    remove,
    follow,
    written: () => others().map(({ sandbox }) => writtenLayout(sandbox)),
    onChange(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}

export function writtenLayout({ store }: Sandbox): WrittenLayout {
  const { history, goodDocument } = store.getState().document;
  return { document: history.present.rig, goodDocument };
}
