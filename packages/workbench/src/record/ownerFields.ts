/** What is written down of a webbing or part besides its entries: the fields of its form, and changes to them. */
import { sayRecord as say } from "@secondline/words/page/record";
import type { WrittenRecord, WrittenWebbing } from "../documents/documents.ts";
import { freeId, type Owner } from "../wear/entryEdits.ts";

export interface OwnerField {
  readonly key: string;
  readonly label: string;
  readonly hint?: string;
  readonly kind: "words" | "quantity" | "date";
}

const DATES: readonly OwnerField[] = [
  { key: "made", label: say("ownerChoice.madeOn"), kind: "date" },
  { key: "firstUse", label: say("ownerChoice.firstUse"), kind: "date" },
];

const FIELDS: Readonly<Record<Owner["list"], readonly OwnerField[]>> = {
  webbings: [
    { key: "name", label: say("ownerChoice.name"), kind: "words" },
    { key: "length", label: say("ownerChoice.lengthNew"), hint: say("ownerChoice.unstretched"), kind: "quantity" },
    { key: "mark", label: say("ownerChoice.markedEndToldBy"), kind: "words" },
    ...DATES,
  ],
  parts: [
    { key: "rig", label: say("ownerChoice.rig"), kind: "words" },
    { key: "part", label: say("ownerChoice.part"), hint: say("ownerChoice.partHint"), kind: "words" },
    ...DATES,
  ],
};

export const ownerFields = ({ list }: Owner): readonly OwnerField[] => FIELDS[list];

export function ownerValue(record: WrittenRecord, { list, index }: Owner, key: string): string {
  return String((record[list]?.[index] as unknown as Record<string, unknown> | undefined)?.[key] ?? "");
}

/** A date that is taken out is not written at all; words may be empty while they are typed. */
export function withOwnerField(record: WrittenRecord, { list, index }: Owner, field: OwnerField, text: string) {
  const item = record[list]?.[index] as unknown as Record<string, unknown>;
  const { [field.key]: _, ...rest } = item;
  const next = field.kind === "date" && text === "" ? rest : { ...item, [field.key]: text };
  return { ...record, [list]: (record[list] as readonly unknown[]).with(index, next) } as WrittenRecord;
}

export const withoutOwner = (record: WrittenRecord, { list, index }: Owner): WrittenRecord => ({
  ...record,
  [list]: (record[list] as readonly unknown[]).toSpliced(index, 1),
});

/** The record with one more webbing, and the place of the webbing in it. */
export function withFreshWebbing(record: WrittenRecord): { readonly record: WrittenRecord; readonly owner: Owner } {
  const webbings = record.webbings ?? [];
  const fresh: WrittenWebbing = {
    id: freeId(record),
    name: say("ownerChoice.webbingNumber", { number: webbings.length + 1 }),
    length: "60 m",
    mark: "how the marked end can be told",
    entries: [],
  };
  return {
    record: { ...record, webbings: [...webbings, fresh] },
    owner: { list: "webbings", index: webbings.length },
  };
}

/** All webbings, then all parts. */
export const ownersIn = ({ webbings = [], parts = [] }: WrittenRecord): readonly Owner[] => [
  ...webbings.map((_, index) => ({ list: "webbings" as const, index })),
  ...parts.map((_, index) => ({ list: "parts" as const, index })),
];
