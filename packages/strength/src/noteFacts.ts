/** Notes on strengths and on a wear record, by code, with the values that each sentence needs. */
import { type FactDay, type FactsOf, type FactValue, factMaker, type Note, type NoValues } from "@secondline/rig";

type Named = { readonly name: FactValue };
type Between = { readonly from: FactValue; readonly to: FactValue };
type Why = { readonly why: FactValue };
type Been = { readonly note: FactValue };

/** Marks inside the loaded span. */
type Placed = Named & { readonly middle: FactValue; readonly fromA: FactValue };
interface FlagFacts {
  "flag.clampMark": Placed & { readonly months: FactValue };
  "flag.fallZone": Placed & { readonly falls: number };
  "flag.stitching": Placed;
  "flag.heat": Placed;
  "flag.cut": Placed;
  "flag.abrasion": Placed;
  "factor.told": Named & Been;
  "factor.times": Named & Been & { readonly value: FactValue };
  "factor.raises": Named & Been & { readonly value: FactValue; readonly raise: FactValue };
  "beyond.unwritten": Named & { readonly factor: FactValue };
  "beyond.known": Named & { readonly factor: FactValue; readonly outside: FactValue };
  "falls.unwritten": NoValues;
  "condition.onMetal": NoValues;
}

/** Reasons for an inspection. */
type Need = Named & { readonly what: FactValue };
type On = { readonly since: FactDay };
type Over = On & { readonly until: FactDay };
type Noted = { readonly note: string };
interface NeedFacts {
  "part.named": { readonly part: string };
  "need.edge": NoValues;
  "need.storm": NoValues;
  "need.heat": NoValues;
  "need.hotRing": NoValues;
  "need.hardFall": NoValues;
  "need.unfit": Named & { readonly reason: FactValue };
  "judged.found": { readonly by: string; readonly on: FactDay; readonly found: string };
  "judged.several": { readonly list: FactValue };
  "need.on": Need & On;
  "need.onNoted": Need & On & Noted;
  "need.onPlace": Need & On & Between;
  "need.onPlaceNoted": Need & On & Between & Noted;
  "need.over": Need & Over;
  "need.overNoted": Need & Over & Noted;
  "need.overPlace": Need & Over & Between;
  "need.overPlaceNoted": Need & Over & Between & Noted;
}

type Other = { readonly names: FactValue; readonly own: string };
type Silent = { readonly rig: string; readonly on: FactDay };
type Lengths = { readonly loaded: FactValue; readonly name: string; readonly length: FactValue };
type Damage = { readonly line: FactValue; readonly kinds: FactValue; readonly name: string };
type Clamped = { readonly name: string; readonly line: FactValue; readonly ends: FactValue; readonly written: string };

/** How record and rig fit together. */
interface RecordNoteFacts {
  "rig.latitude": NoValues;
  "record.otherLatitude": { readonly rig: string; readonly record: string };
  "record.latitude": NoValues;
  "record.hemisphere": NoValues;
  "record.matchedByName": { readonly name: string };
  "record.matchedByNameOfId": { readonly name: string; readonly id: string };
  "record.otherNames": Other;
  "record.moreOtherNames": Other & { readonly more: number };
  "record.silentOn.main": Silent;
  "record.silentOn.backup": Silent;
  "record.silentOn.both": Silent;
  "record.hangsElsewhere": { readonly rigs: FactValue };
  "record.noMain": { readonly name: string };
  "record.noBackup": { readonly name: string };
  "record.damageKept": Damage;
  "record.damageWorse": Damage;
  "record.lengthOff": Lengths;
  "record.lengthDoubt": Lengths;
  "record.clampsElsewhere": { readonly name: string; readonly rig: string };
  "record.clampsUnsaid": Clamped;
  "record.clampsDenied": Clamped & { readonly missing: FactValue };
  "record.noEntry": Named;
  /** `typed`: the day as a record has it. */
  "record.late": Named & { readonly begun: FactDay; readonly typed: string };
  "record.replacedUnmade": Named & { readonly on: FactDay };
  "record.unknownPart": { readonly part: string };
  "record.notCounted": NoValues;
  "damage.falls": NoValues;
  "damage.abrasion": NoValues;
  "damage.heat": NoValues;
  "damage.cut": NoValues;
  "damage.stitching": NoValues;
  "damage.clampMark": NoValues;
}

type Read = { readonly what: FactValue; readonly comes: FactValue; readonly stated: FactValue } & {
  readonly low: FactValue;
  readonly high: FactValue;
};
type Differs = Read & { readonly difference: FactValue };
type Drift = { readonly first: FactValue; readonly firstOn: FactDay } & {
  readonly last: FactValue;
  readonly lastOn: FactDay;
  readonly change: FactValue;
};

/** Readings of tension and sag. */
interface ReadingFacts {
  "reading.sag": { readonly sag: FactValue };
  "reading.sagUnder": { readonly sag: FactValue; readonly mass: FactValue };
  "reading.tension": { readonly tension: FactValue };
  "reading.tensionUnder": { readonly tension: FactValue; readonly mass: FactValue };
  "reading.agrees": Read;
  "reading.more": Differs;
  "reading.less": Differs;
  "reading.agreesOn": Read & { readonly on: FactDay };
  "reading.moreOn": Differs & { readonly on: FactDay };
  "reading.lessOn": Differs & { readonly on: FactDay };
  "drift.more": Drift;
  "drift.less": Drift;
}

type Outside = { readonly got: FactValue; readonly from: FactValue; readonly to: FactValue };
type What = { readonly what: FactValue };

/** Bases of factors. */
interface BasisFacts {
  "outside.quantity": Outside & { readonly quantity: FactValue };
  "outside.quantityUnit": Outside & { readonly quantity: FactValue; readonly unit: FactValue };
  "outside.unit": Outside & { readonly unit: FactValue };
  "basis.beyond": Been & { readonly outside: FactValue };
  "basis.standIn": Why & Been;
  "basis.noRecord": What;
  "basis.noRecordBecause": Why;
  "basis.own": { readonly reason: FactValue };
  "basis.ownNoFactor": { readonly reason: FactValue };
  "basis.ownCapped": { readonly reason: FactValue };
  "why.outside": What & { readonly months: FactValue };
  "why.sun": What & { readonly months: FactValue };
  "why.age": What & { readonly years: FactValue };
  "why.wet": What;
  "why.worst": What;
  "why.weblock": { readonly months: FactValue };
  "why.form": { readonly id: string };
}

/** Effects of own break tests. */
type Tests = { readonly tests: FactValue; readonly stock: FactValue };
interface TestFacts {
  "basis.invented": Been;
  "basis.newTests": Tests;
  "basis.noNewTests": Been & { readonly stock: FactValue };
  "basis.tested": Tests & Been;
  "basis.testedUpTo": Tests & Been & { readonly most: FactValue };
  "basis.builtIn": Been & { readonly tests: FactValue };
  "basis.builtInUpTo": Been & { readonly tests: FactValue; readonly most: FactValue };
  "basis.noLoss": Been;
  "basis.inPart": Been;
  "tests.own": { readonly count: number };
  "tests.use": { readonly used: number; readonly all: number; readonly list: FactValue };
  "tests.none": { readonly all: number };
  "tests.noneButWet": { readonly all: number };
  "tests.ofStock": { readonly stock: FactValue; readonly causes: FactValue };
  "tests.new": { readonly count: number };
  "tests.with": { readonly count: number; readonly cause: FactValue };
  "tests.leftOut": { readonly list: FactValue };
  "tests.wet": { readonly count: number };
  "tests.noDose": { readonly count: number };
  "tests.noMonths": { readonly count: number };
  "tests.otherWear": { readonly count: number };
  "tests.beyond": { readonly count: number };
  "tests.foreign": { readonly count: number; readonly materials: FactValue };
  "tests.copies": { readonly count: number };
  "tests.wetHeldLess": { readonly stocks: FactValue };
  "dose.sun": { readonly dose: FactValue };
  "dose.falls": { readonly dose: FactValue };
  "dose.clampMark": { readonly dose: FactValue };
  "dose.sewing": { readonly dose: FactValue };
}

type Hung = { readonly name: string; readonly section: number; readonly line: FactValue };

/** Webbing that a record hangs where the rig has no section. The record is at fault, and somebody must put it right. */
export interface HungFacts {
  "line.main": NoValues;
  "line.backup": NoValues;
  "webbing.noSection": Hung;
  "webbing.noSectionOfMany": Hung & { readonly count: number; readonly last: number };
}

export interface NoteFacts
  extends FlagFacts,
    NeedFacts,
    RecordNoteFacts,
    ReadingFacts,
    BasisFacts,
    TestFacts,
    HungFacts {}

export type NoteFact = FactsOf<NoteFacts>;

export const noteFact = factMaker<NoteFacts>();

/** A note as a value within another note. A note in words is looked up by its text. */
export const within = (note: Note): FactValue => (typeof note === "string" ? { brought: note } : note);
