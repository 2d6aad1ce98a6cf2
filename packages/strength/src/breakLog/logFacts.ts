/** Faults of a break log and of its tests, by code, with the values that each sentence needs. */
import { type FactsOf, type FactValue, factMaker, type NoValues, type RigFact } from "@secondline/rig";

type OfText = { readonly text: string };
type Loads = { readonly least: string; readonly most: string };
type OfList = { readonly list: FactValue };

/** The value found, and the value expected. */
interface LogPlaceFacts {
  "got.emptyLog": NoValues;
  "got.headerOnly": NoValues;
  "got.megabytes": { readonly size: FactValue };
  "got.tests": { readonly count: number };
  "got.moreFaults": { readonly count: number };
  "got.headerAgain": { readonly first: number };
  "got.quote": NoValues;
  "got.noColumn": NoValues;
  "got.columnTwice": { readonly column: string };
  "got.cells": { readonly count: number };
  "expected.someText": NoValues;
  "expected.partPulled": NoValues;
  "expected.material": NoValues;
  "expected.state": NoValues;
  "expected.upTo": { readonly most: string };
  "expected.calendarDate": NoValues;
  "expected.wetOrDry": NoValues;
  "expected.outcome": OfList;
  "expected.noUpperLoad": NoValues;
  "expected.upperLoad": NoValues;
  "expected.load": NoValues;
  "expected.loadFrom": Loads;
  "expected.loadAboveZero": NoValues;
  "expected.decimalPoint": NoValues;
  "expected.units": NoValues;
  "expected.header": OfList;
  "expected.tests": NoValues;
  "expected.logSize": { readonly most: number };
  "expected.atMostTests": { readonly count: number };
  "expected.faultless": NoValues;
  "expected.test": NoValues;
  "expected.commas": NoValues;
  "expected.semicolons": NoValues;
  "expected.tabs": NoValues;
  "expected.column": { readonly column: string };
  "expected.columnOnce": NoValues;
  "expected.cells": { readonly count: number };
  "expected.unit": { readonly unit: string; readonly line: number };
  "expected.decimalComma": { readonly line: number };
  "expected.either": { readonly small: string; readonly large: string };
}

interface CellFacts {
  "cell.hidden": { readonly hidden: FactValue };
  "cell.empty": { readonly column: string; readonly expected: FactValue };
  "cell.number": OfText & { readonly column: string; readonly most: string };
  "cell.date": OfText;
  "cell.knot": OfText & OfList;
  "cell.wet": OfText;
  "cell.outcome": OfText & OfList;
  "cell.upperLoad": NoValues;
  "cell.upperLoadSmaller": NoValues;
  "cell.noLoad": { readonly column: string };
  "cell.decimalComma": OfText;
  "cell.noNumber": OfText;
  "cell.noUnit": NoValues;
  "cell.unlikelyLoad": OfText & Loads & { readonly unit: string };
  "cell.notPositive": OfText & { readonly unit: string };
  "cell.mixedDecimals": OfText;
  "cell.thousands": OfText & { readonly small: string; readonly large: string };
}

export interface LogFacts extends LogPlaceFacts, CellFacts {
  "log.tooLarge": { readonly size: FactValue; readonly expected: FactValue };
  "log.tooLong": { readonly got: FactValue; readonly expected: FactValue };
  "log.moreFaults": { readonly count: number };
  "log.headerAgain": { readonly first: number };
  "log.needs": { readonly got: FactValue; readonly expected: FactValue };
  "log.quoteOpen": NoValues;
  "log.quoteWithin": NoValues;
  "log.columnMissing": { readonly column: string };
  "log.columnUnknown": { readonly column: string };
  "log.columnTwice": { readonly column: string };
  "log.meant": { readonly column: string };
  "log.commas": Widths;
  "log.semicolons": Widths;
  "log.tabs": Widths;
  "log.unitsMixed": { readonly unit: string; readonly line: number; readonly first: string };
}
type Widths = { readonly got: number; readonly wanted: number };

export type LogFact = FactsOf<LogFacts> | RigFact;

/** One finding of the log's checks. */
export const logFact = factMaker<LogFacts>();
