/** Where a record hangs, as far as the sun asks: its latitude and its hemisphere. */
import type { WrittenRecord } from "../documents/documents.ts";

/** What a record may say of each, in the words of its file. */
export const SITE_VALUES = { latitude: ["low", "middle", "high"], hemisphere: ["north", "south"] } as const;

export type SiteKey = keyof typeof SITE_VALUES;

/** The value as written, "" where the record says nothing. */
export const siteOf = (record: WrittenRecord, key: SiteKey): string => String(record[key] ?? "");

/** The record with one value of its site changed; "" takes the value out. */
export function withSite(record: WrittenRecord, key: SiteKey, value: string): WrittenRecord {
  const { [key]: _, ...rest } = record;
  return value === "" ? (rest as WrittenRecord) : { ...record, [key]: value };
}
