/** What the sheet of a rig is made of, as data: fields, and groups of fields that many parts of a rig have in common. */
import { sayRigSheet } from "@secondline/words/page/rigSheet";
import type { Written } from "./newParts.ts";
import { endOfKind } from "./newParts.ts";

/** One field of the document. */
export interface SheetField {
  readonly kind: "field";
  readonly at: string;
  /** With a slider, where the field has a natural range. */
  readonly slider?: boolean;
  /** With its line of help. */
  readonly help?: boolean;
  /** In place of the field's own label, where the title around it does not say what it is. */
  readonly label?: string;
  /** Of a choice that may be left open: what leaving it open amounts to. */
  readonly unsaid?: string;
  /** Left out as long as the document says nothing there. */
  readonly onlyWritten?: boolean;
}

/** Items behind a title that opens; faults and unconfirmed values at or below `at` are counted beside it. */
export interface SheetFold {
  readonly kind: "fold";
  readonly at: string;
  readonly title: string;
  readonly items: readonly SheetItem[];
}

/** What the items of a list are. */
export type PartOfList = "section" | "wornPlace" | "knot" | "ring" | "rockPoint" | "hardware" | "connection" | "tape";

/** A list of parts, each behind its title, with ways to add one and to take one out. */
export interface SheetList {
  readonly kind: "list";
  readonly at: string;
  readonly part: PartOfList;
  /** Least number of parts. */
  readonly least: number;
  /** A new part, given the ones that are there. */
  readonly make: (parts: readonly unknown[]) => unknown;
  /** `number`: counted from 1. */
  readonly titleOf: (part: unknown, number: number) => string;
  readonly itemsAt: (path: string) => readonly SheetItem[];
}

/** The kind of the part at `at`, and what a part as it is written has below. */
export interface SheetKind {
  readonly kind: "kind";
  readonly at: string;
  /** Name of the step that changes it. */
  readonly step: string;
  readonly change: (part: Written, kind: string) => unknown;
  readonly itemsOf: (part: Written) => readonly SheetItem[];
}

export type SheetItem = SheetField | SheetFold | SheetList | SheetKind;

export const field = (at: string, look: Omit<SheetField, "kind" | "at"> = {}): SheetField => ({
  kind: "field",
  at,
  ...look,
});

export const fold = (title: string, at: string, items: readonly SheetItem[]): SheetFold => ({
  kind: "fold",
  at,
  title,
  items,
});

/** Rated strength with its basis. */
export const ratedItems = (at: string): readonly SheetItem[] => [field(`${at}.strength`), field(`${at}.basis`)];

/** What has happened to a part. */
export const conditionItem = (at: string): SheetFold =>
  fold(sayRigSheet("parts.ageWeather"), `${at}.condition`, [
    field(`${at}.condition.outside`, { help: true }),
    field(`${at}.condition.sun`, { slider: true }),
    field(`${at}.condition.age`),
    field(`${at}.condition.wet`),
  ]);

/** What its owner thinks of a part, and why. */
export const ownItem = (at: string): SheetFold =>
  fold(sayRigSheet("parts.ownJudgement"), `${at}.own`, [
    field(`${at}.own.factor`, { slider: true, help: true }),
    field(`${at}.own.reason`, { help: true }),
  ]);

/** What every part has that is rated: strength, what has happened to it, what its owner thinks of it. */
export const ratedPartItems = (at: string): readonly SheetItem[] => [...ratedItems(at), conditionItem(at), ownItem(at)];

/** How a line ends at an anchor. */
export const lineEndItem = (at: string, title: string): SheetFold =>
  fold(title, at, [
    {
      kind: "kind",
      at,
      step: sayRigSheet("parts.kindEnd"),
      change: endOfKind,
      itemsOf: ({ kind }) => [
        ...(kind === "knot" ? [field(`${at}.knot`)] : []),
        ...ratedItems(at),
        ...(kind === "weblock"
          ? [field(`${at}.slipLoad`, { help: true }), field(`${at}.clamped`, { help: true })]
          : []),
      ],
    },
    field(`${at}.bend`, { help: true }),
    conditionItem(at),
    ownItem(at),
  ]);
