/**
 * The user's work on this device, in IndexedDB: the current work, and copies of earlier work that nothing overwrites.
 * One tab writes; another tab that is open on the same work says so and leaves the store alone.
 */

import type { SavedWork, WorkKeeper, WrittenRig } from "@secondline/workbench";
import { type DBSchema, type IDBPDatabase, openDB } from "idb";

export interface Copy {
  readonly key: number;
  readonly name: string;
  /** Milliseconds since 1970. */
  readonly saved: number;
  readonly document: WrittenRig;
}

interface Schema extends DBSchema {
  work: { key: "current"; value: SavedWork };
  copies: { key: number; value: Omit<Copy, "key"> };
}

/** The oldest make room [-]. */
const MOST_KEPT_COPIES = 50;

export interface WorkStore extends WorkKeeper {
  load(): Promise<SavedWork | undefined>;
  copies(): Promise<readonly Copy[]>;
}

export async function openWorkStore(): Promise<WorkStore> {
  const database = await openDB<Schema>("secondline", 1, {
    upgrade(fresh) {
      fresh.createObjectStore("work");
      fresh.createObjectStore("copies", { autoIncrement: true });
    },
  });
  return {
    load: () => database.get("work", "current"),
    save: async (work) => {
      await database.put("work", work, "current");
    },
    keepCopy: (document, name, saved) => keepCopy(database, { document, name, saved }),
    copies: () => listCopies(database),
  };
}

async function keepCopy(database: IDBPDatabase<Schema>, copy: Omit<Copy, "key">): Promise<void> {
  const transaction = database.transaction("copies", "readwrite");
  const keys = await transaction.store.getAllKeys();
  const last = keys.at(-1);
  const newest = last === undefined ? undefined : await transaction.store.get(last);
  if (newest && JSON.stringify(newest.document) === JSON.stringify(copy.document)) return;
  await transaction.store.add(copy);
  for (const key of keys.slice(0, Math.max(0, keys.length + 1 - MOST_KEPT_COPIES))) await transaction.store.delete(key);
  await transaction.done;
}

async function listCopies(database: IDBPDatabase<Schema>): Promise<readonly Copy[]> {
  const copies: Copy[] = [];
  let cursor = await database.transaction("copies").store.openCursor(null, "prev");
  while (cursor) {
    copies.push({ ...cursor.value, key: cursor.primaryKey });
    cursor = await cursor.continue();
  }
  return copies;
}

/** True for the one tab that may write; the others get false. Browsers without locks: every tab may. */
export async function claimWriting(): Promise<boolean> {
  if (!("locks" in navigator)) return true;
  return new Promise((resolve) => {
    const asked = navigator.locks.request("secondline-work", { ifAvailable: true }, (lock) => {
      resolve(lock !== null);
      // Held for as long as the page lives.
      return lock === null ? undefined : new Promise(() => undefined);
    });
    // Where locks are refused (an opaque origin), nothing else can be writing either.
    asked.catch(() => resolve(true));
  });
}
