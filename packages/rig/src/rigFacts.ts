/** What can be wrong with a rig, a field, a quantity or the text of a file, by code, with the values that each sentence has. */
import { type FactsOf, type FactValue, factMaker, type NoValues } from "./fact.ts";

type Named = {
  /** The field, group or list, as it is called. */
  readonly name: FactValue;
};
type Got = {
  readonly got: FactValue;
};
type Expected = {
  readonly expected: FactValue;
};

/** What a dimension is called, with article, and how a value of it is written. */
interface DimensionFacts {
  "noun.length": NoValues;
  "noun.force": NoValues;
  "noun.mass": NoValues;
  "noun.massPerLength": NoValues;
  "noun.angle": NoValues;
  "noun.time": NoValues;
  "noun.stiffness": NoValues;
  "noun.share": NoValues;
  "noun.position": NoValues;
  "noun.ratio": NoValues;
  "noun.count": NoValues;
  "expected.length": NoValues;
  "expected.force": NoValues;
  "expected.mass": NoValues;
  "expected.massPerLength": NoValues;
  "expected.angle": NoValues;
  "expected.time": NoValues;
  "expected.stiffness": NoValues;
  "expected.share": NoValues;
  "expected.position": NoValues;
  "expected.ratio": NoValues;
  "expected.count": NoValues;
}

interface QuantityFacts extends DimensionFacts {
  "quantity.needed": Expected & Got;
  "quantity.empty": Expected;
  "quantity.long": Expected;
  "quantity.noNumber": Expected & Got;
  "quantity.comma": Got;
  "quantity.noUnit": Got & { readonly noun: FactValue; readonly example: string };
  "quantity.percent": Expected & Got;
  "quantity.unitTooMuch": Expected & Got;
  "quantity.unitUnknown": Expected & { readonly unit: string };
  "quantity.otherDimension": Expected & Got & { readonly noun: FactValue };
  "quantity.otherMeasure": Expected & { readonly unit: string };
  "number.tooLarge": Got;
  "number.tooSmall": Got;
  "number.tooLargeToCompute": Got;
  "number.infinite": Got;
  "number.notWhole": Got;
  guess: { readonly guess: string };
}

/** What was got, and what was expected, where no quoted text says it. */
interface PlaceFacts {
  "got.nothing": NoValues;
  "got.list": { readonly count: number };
  "got.group": NoValues;
  "got.emptyFile": NoValues;
  "got.nameAgain": NoValues;
  "got.characters": { readonly count: number };
  "got.entries": { readonly count: number };
  "got.millionCharacters": { readonly count: FactValue };
  "got.nested": { readonly count: number };
  "got.key": { readonly key: string; readonly value: FactValue };
  "got.idAgain": { readonly id: string };
  "expected.pair": NoValues;
  "expected.list": NoValues;
  "expected.group": NoValues;
  "expected.oneOf": { readonly list: FactValue };
  "expected.flag": NoValues;
  "expected.basis": NoValues;
  "expected.basisField": NoValues;
  "expected.basisKinds": { readonly list: FactValue };
  "expected.stock": NoValues;
  "expected.text": NoValues;
  "expected.nothing": NoValues;
  "expected.range": { readonly low: string; readonly high: string };
  "expected.atLeastCharacters": { readonly count: number };
  "expected.atMostCharacters": { readonly count: number };
  "expected.atLeastEntries": { readonly count: number };
  "expected.atMostEntries": { readonly count: number };
  "expected.atMost": { readonly most: FactValue };
  "expected.atLeast": { readonly least: FactValue };
  "expected.moreThan": { readonly least: FactValue };
  "expected.lessThan": { readonly most: FactValue };
  "expected.below": { readonly most: FactValue };
  "expected.atMostThere": { readonly most: FactValue };
  "expected.orMore": { readonly least: FactValue };
  "expected.millionCharacters": { readonly count: number };
  "expected.json": NoValues;
  "expected.nameOnce": NoValues;
  "expected.smallerNumber": NoValues;
  "expected.largerNumber": NoValues;
  "expected.plainNote": NoValues;
  "expected.plainText": NoValues;
  "expected.knownName": NoValues;
  "expected.shortName": NoValues;
  "expected.ownId": NoValues;
  "expected.ownIdOfRig": NoValues;
  "expected.ownName": NoValues;
  "expected.ownPlace": NoValues;
  "expected.reason": NoValues;
  "expected.openSection": NoValues;
  "expected.sectionLength": NoValues;
  "expected.sectionsLeaving": { readonly distance: FactValue };
  "expected.fartherTo": NoValues;
  "expected.insideSection": NoValues;
  "expected.slackOrLength": NoValues;
  "expected.slackAtMost": { readonly most: FactValue };
  "expected.noAngle": NoValues;
  "expected.bolt": NoValues;
  "expected.sling": NoValues;
  "expected.mainOrBoth": NoValues;
  "expected.ropeLeash": NoValues;
  "expected.zeroOrLess": NoValues;
  "expected.risingCurve": NoValues;
  "expected.speed": NoValues;
  "expected.otherStock": NoValues;
  "expected.path": NoValues;
  "expected.pathOnce": NoValues;
  "noun.rig": NoValues;
}

interface FieldFacts {
  missing: Named & Expected;
  needed: Named & Expected & Got;
  renamed: Named & Got & { readonly now: string };
  unknownChoice: Named & Expected & Got;
  wrongCount: Named & Expected & { readonly size: number };
  /** A fault of a quantity, with the name of its field. */
  named: Named & { readonly fault: FactValue };
  numberAsText: Named & Got;
  "limits.negative": Limited;
  "limits.zero": Limited;
  "limits.small": Limited;
  "limits.large": Limited;
  "limits.negativeBecause": Limited & Because;
  "limits.zeroBecause": Limited & Because;
  "limits.smallBecause": Limited & Because;
  basisForm: Expected;
  basisKinds: Expected;
  oneChoice: Named & Expected;
  tooLong: Named & Expected;
  idForm: Got & Expected;
  ownReason: NoValues;
  "key.unknown": { readonly key: string; readonly group: FactValue };
  "key.unknownInRig": { readonly key: string };
  "key.otherKind": { readonly key: string; readonly group: FactValue };
  "key.otherKindOfRig": { readonly key: string };
}
type Limited = Named & Got & { readonly low: string; readonly high: string };
type Because = {
  readonly because: FactValue;
};

interface FileFacts {
  "file.notJson": { readonly noun: FactValue };
  "file.troubleInLine": { readonly line: number };
  "file.tooLarge": { readonly noun: FactValue; readonly size: FactValue };
  "file.nested": { readonly noun: FactValue; readonly got: FactValue };
  "file.twice": NoValues;
  "file.notGroup": NoValues;
  "file.untagged": { readonly expected: string };
  "file.newer": { readonly tag: string; readonly format: string };
  "file.unknownFormat": Got;
  "text.hidden": { readonly hidden: FactValue };
  "name.hidden": { readonly hidden: FactValue };
  "name.reserved": Got;
  "hidden.break": { readonly code: string };
  "hidden.tab": { readonly code: string };
  "hidden.half": { readonly code: string };
  "hidden.control": { readonly code: string };
  "hidden.direction": { readonly code: string };
  "hidden.width": { readonly code: string };
}

/** Faults between fields. */
interface RigCheckFacts {
  "sections.noneOpen": NoValues;
  "sections.manyOpen": NoValues;
  "sections.tooLong": SectionsReach;
  "sections.tooLongStretched": SectionsReach & { readonly tension: FactValue };
  "wear.backwards": NoValues;
  "wear.beyondA": NoValues;
  "wear.beyond": { readonly to: FactValue; readonly length: FactValue };
  "tension.webbing": { readonly tension: FactValue; readonly section: number; readonly rated: FactValue };
  "tension.end": { readonly anchor: string; readonly tension: FactValue };
  "tension.slip": { readonly anchor: string; readonly tension: FactValue };
  "backup.both": NoValues;
  "backup.short": { readonly distance: FactValue };
  "backup.long": NoValues;
  "joints.same": { readonly other: string };
  "legs.onePoint": NoValues;
  "carries.noBackup": NoValues;
  "pull.bolt": NoValues;
  "rigged.sling": NoValues;
  "rings.same": NoValues;
  "leash.noSheath": NoValues;
  "leash.short": { readonly reach: FactValue };
  "ground.backwards": NoValues;
  "ground.beginsLate": NoValues;
  "ground.endsEarly": { readonly span: FactValue };
  "ground.line": { readonly at: FactValue };
  "ground.anchor": { readonly anchor: string };
  "stock.builtIn": { readonly id: string };
  "stock.twice": { readonly id: string };
  "stock.likeItself": { readonly id: string; readonly way: FactValue };
  "stock.unknown": { readonly id: string };
  "stock.tooFast": { readonly speed: number };
  "curve.fewPoints": NoValues;
  "curve.start": NoValues;
  "curve.stretch": NoValues;
  "curve.tension": NoValues;
  "curve.flat": NoValues;
  "unconfirmed.noValue": { readonly path: FactValue };
  "unconfirmed.twice": { readonly path: string };
  "ids.same": { readonly first: string; readonly second: string; readonly id: string };
}
type SectionsReach = {
  readonly reach: FactValue;
  readonly distance: FactValue;
};

export interface RigFacts extends QuantityFacts, PlaceFacts, FieldFacts, FileFacts, RigCheckFacts {}

export type RigFact = FactsOf<RigFacts>;

/** A fact of the rig's checks. */
export const fact = factMaker<RigFacts>();

/** The word that was probably meant, as a sentence of its own. */
export const guessed = (guess: string | undefined): RigFact | undefined =>
  guess === undefined ? undefined : fact("guess", { guess });
