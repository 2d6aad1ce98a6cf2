/** The current work as it is kept on a device: written soon after every change. */
import type { WrittenRig } from "../documents/documents.ts";
import { rigName } from "../documents/rigName.ts";
import type { Sandbox } from "../inHand/sandbox.ts";
import type { SandboxState, SessionSlice } from "../inHand/state.ts";

/** What is kept of a session. */
export const KEPT_PARTS = [
  "whatIf",
  "accuracy",
  "theme",
  "camera",
  "showForces",
  "wear",
] as const satisfies readonly (keyof SessionSlice)[];
export type KeptPart = (typeof KEPT_PARTS)[number];

/**
 * Counts how kept work is written: 2 says its version; what says none was written before. Whoever changes the form counts on, and
 * `readSaved` reads every form that there was.
 */
const WORK_VERSION = 2;

export interface SavedWork {
  readonly version?: number;
  readonly document: WrittenRig;
  readonly goodDocument: WrittenRig;
  readonly session: Partial<SessionSlice>;
}

/** Where work is kept. Both reject with what the storage says. */
export interface WorkKeeper {
  save(work: SavedWork): Promise<void>;
  /** Keeps a copy of work that is about to be replaced. */
  keepCopy(document: WrittenRig, name: string, saved: number): Promise<void>;
}

/** A pause in the changes after which they are written [ms]. */
const SETTLE_MS = 400;
/** A copy of the work is kept when it has changed and the last copy is older than this [ms]. */
const COPY_INTERVAL_MS = 5 * 60_000;

export interface Autosave {
  /** Writes at once what is still waiting: the page is about to go. */
  flush: () => void;
  stop: () => void;
}

export interface AutosaveServices {
  /** Milliseconds since 1970. */
  readonly now: () => number;
  /** Calls back after a pause; returns what cancels it. */
  readonly later: (milliseconds: number, action: () => void) => () => void;
  /** Work could not be kept; told once, until it could be again. */
  readonly onTrouble: (error: unknown) => void;
}

export function startAutosave({ store }: Sandbox, keeper: WorkKeeper, services: AutosaveServices): Autosave {
  const { now, later, onTrouble } = services;
  let cancel: (() => void) | undefined;
  let lastCopy = now();
  let trouble = false;

  async function write(): Promise<void> {
    cancel = undefined;
    const work = workIn(store.getState());
    try {
      await keeper.save(work);
      if (now() - lastCopy > COPY_INTERVAL_MS) {
        lastCopy = now();
        await keeper.keepCopy(work.goodDocument, rigName(work.goodDocument), lastCopy);
      }
      trouble = false;
    } catch (error) {
      // Told once, not with every letter.
      if (!trouble) onTrouble(error);
      trouble = true;
    }
  }

  const unsubscribe = store.subscribe((state, before) => {
    if (!worthSaving(state, before)) return;
    cancel?.();
    cancel = later(SETTLE_MS, () => void write());
  });
  return {
    flush() {
      if (!cancel) return;
      cancel();
      void write();
    },
    stop() {
      cancel?.();
      unsubscribe();
    },
  };
}

const worthSaving = ({ document, session }: SandboxState, before: SandboxState): boolean =>
  document.history.present.rig !== before.document.history.present.rig ||
  KEPT_PARTS.some((part) => session[part] !== before.session[part]);

const workIn = ({ document, session }: SandboxState): SavedWork => ({
  version: WORK_VERSION,
  document: document.history.present.rig,
  goodDocument: document.goodDocument,
  session: Object.fromEntries(KEPT_PARTS.map((part) => [part, session[part]])),
});
