/** Writes the work in hand to the device soon after every change, and says so when it cannot. */
import { sayPage } from "@secondline/words/page/page";
import type { Sandbox } from "../state/sandbox.ts";
import type { SandboxState } from "../state/types.ts";
import { KEPT_PARTS, type SavedWork, type WorkStore } from "./workStore.ts";

/** A pause in the changes after which they are written [ms]. */
const SETTLE = 400;
/** A copy of the work is kept when it has changed and the last copy is older than this [ms]. */
const COPY_EVERY = 5 * 60_000;

export interface Autosave {
  /** Writes at once what is still waiting: the page is about to go. */
  flush: () => void;
  stop: () => void;
}

export function startAutosave(sandbox: Sandbox, store: WorkStore, now: () => number): Autosave {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let lastCopy = now();
  let trouble = false;

  async function write(): Promise<void> {
    timer = undefined;
    const work = savedWork(sandbox.store.getState());
    try {
      await store.save(work);
      if (now() - lastCopy > COPY_EVERY) {
        lastCopy = now();
        await store.keepCopy(work.goodDocument, rigName(work.goodDocument), lastCopy);
      }
      trouble = false;
    } catch (error) {
      // Told once, not with every letter.
      if (!trouble) sandbox.actions.tell({ tone: "fault", text: saveTrouble(error) });
      trouble = true;
    }
  }

  const unsubscribe = sandbox.store.subscribe((state, before) => {
    if (!worthSaving(state, before)) return;
    clearTimeout(timer);
    timer = setTimeout(() => void write(), SETTLE);
  });
  return {
    flush() {
      if (timer === undefined) return;
      clearTimeout(timer);
      void write();
    },
    stop() {
      clearTimeout(timer);
      unsubscribe();
    },
  };
}

function worthSaving({ document, session }: SandboxState, before: SandboxState): boolean {
  return (
    document.history.present !== before.document.history.present ||
    KEPT_PARTS.some((part) => session[part] !== before.session[part])
  );
}

function savedWork({ document, session }: SandboxState): SavedWork {
  return {
    document: document.history.present,
    goodDocument: document.goodDocument,
    session: Object.fromEntries(KEPT_PARTS.map((part) => [part, session[part]])),
  };
}

function saveTrouble(error: unknown): string {
  const full = error instanceof DOMException && error.name === "QuotaExceededError";
  const reason = full ? sayPage("autosave.storageFull") : error instanceof Error ? error.message : String(error);
  return sayPage("autosave.yourWorkCould", { reason });
}

export function rigName(document: { readonly [key: string]: unknown }): string {
  return typeof document.name === "string" && document.name.trim() !== ""
    ? document.name
    : sayPage("autosave.rigWithoutName");
}
