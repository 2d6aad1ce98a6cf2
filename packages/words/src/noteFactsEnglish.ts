/** Bases of strengths, and reasons for an inspection before a rig may be said to hold. The verdict and its tables tell them. */
import type { NoteFacts } from "@secondline/strength";

export const NOTE_FACTS_ENGLISH = {
  "beyond.unwritten": "{name}, {factor}: not written down; the worst is counted, which lies beyond what is known.",
  "beyond.known": "{name}, {factor}: {outside}, beyond which nothing is known.",
  "falls.unwritten":
    "how many falls the main line has held, and where, is written nowhere though it has hung outside: write its fall zone down, with 0 falls if there were none.",
  "part.named": 'Part "{part}"',
  "need.edge": "contact with an edge",
  "need.storm": "a storm or long flutter",
  "need.heat": "heat",
  "need.hotRing": "a ring that ran hot",
  "need.hardFall": "a fall beyond what was planned for",
  "judged.found": "{by}, {on}: {found}",
  "judged.several": "{list}",
  "need.unfit": "{name}: judged unfit by {reason}. It must come down.",
  "need.on":
    "{name}: {what} on {since}. No factor is known for that: have it inspected, and write down who judged it how.",
  "need.onNoted":
    "{name}: {what} on {since} ({note}). No factor is known for that: have it inspected, and write down who judged it how.",
  "need.onPlace":
    "{name}: {what} on {since}, {from} to {to} from the marked end. No factor is known for that: have it inspected, and write down who judged it how.",
  "need.onPlaceNoted":
    "{name}: {what} on {since}, {from} to {to} from the marked end ({note}). No factor is known for that: have it inspected, and write down who judged it how.",
  "need.over":
    "{name}: {what} from {since} to {until}. No factor is known for that: have it inspected, and write down who judged it how.",
  "need.overNoted":
    "{name}: {what} from {since} to {until} ({note}). No factor is known for that: have it inspected, and write down who judged it how.",
  "need.overPlace":
    "{name}: {what} from {since} to {until}, {from} to {to} from the marked end. No factor is known for that: have it inspected, and write down who judged it how.",
  "need.overPlaceNoted":
    "{name}: {what} from {since} to {until}, {from} to {to} from the marked end ({note}). No factor is known for that: have it inspected, and write down who judged it how.",
  "record.lengthDoubt":
    'The record has {loaded} of "{name}" loaded, the rig {length}: nobody knows where its wear lies. Measure it, and put "from" and "to" in the record right, or the lengths of the rig.',
  "record.unknownPart":
    'The record speaks of a part "{part}" that this rig does not have, or whose wear is kept elsewhere.',
  "record.notCounted": "Its entries for this part are not counted: write the part's id as the rig has it.",
  "line.main": "main line",
  "line.backup": "backup",
  "webbing.noSection":
    'The record hangs "{name}" in "section": {section} of the {line}. The rig has one section, which is written as 0. Nothing of its wear could be counted.',
  "webbing.noSectionOfMany":
    'The record hangs "{name}" in "section": {section} of the {line}. The rig has {count} sections, 0 to {last}. Nothing of its wear could be counted.',
  "reading.sag": "a sag of {sag}",
  "reading.sagUnder": "a sag of {sag} under {mass}",
  "reading.tension": "a tension of {tension}",
  "reading.tensionUnder": "a tension of {tension} under {mass}",
  "reading.more":
    "A reading of {what} comes to {comes} ({low} to {high}) with nobody on the line, {difference} more than the {stated} that the rig states: read again, or put the rig's tension right.",
  "reading.less":
    "A reading of {what} comes to {comes} ({low} to {high}) with nobody on the line, {difference} less than the {stated} that the rig states: read again, or put the rig's tension right.",
  "reading.moreOn":
    "A reading on {on} of {what} comes to {comes} ({low} to {high}) with nobody on the line, {difference} more than the {stated} that the rig states: read again, or put the rig's tension right.",
  "reading.lessOn":
    "A reading on {on} of {what} comes to {comes} ({low} to {high}) with nobody on the line, {difference} less than the {stated} that the rig states: read again, or put the rig's tension right.",
  "outside.quantity": "{quantity} {got} is outside {from} to {to}",
  "outside.quantityUnit": "{quantity} {got} {unit} is outside {from} to {to} {unit}",
  "outside.unit": "{got} {unit} is outside {from} to {to} {unit}",
  "basis.beyond":
    "{outside}, where the factor is known; half of the value at the edge is taken, or the curve drawn on where that is less. Was: {note}",
  "basis.standIn": "{why}. {note}",
  "basis.noRecord": "nothing is known of what happened to {what}: the cautious factor stands in",
  "basis.noRecordBecause": "{why}: the cautious factor stands in",
  "basis.own": "own judgement, {reason}",
  "basis.ownNoFactor":
    "own judgement, {reason}; no factor given: the factor for a part about which nothing is known stands in",
  "basis.ownCapped": "own judgement, {reason}; counted up to what the weblock itself holds",
  "why.outside": "how long {what} was outside is not written down; {months} are counted",
  "why.sun": "how long {what} was outside is not written down; it can be {months}, and so much sun is counted",
  "why.age": "the age of {what} is not written down; {years} years are counted",
  "why.wet": "whether {what} is wet when loaded is not written down; it counts as wet",
  "why.worst": "{what} is not written down; the worst is counted",
  "why.weblock": "how long the webbing has sat in this weblock is not written down; {months} are counted",
  "why.form": 'whether "{id}" is webbing or rope is not written down; the knot counts as one in webbing',
  "basis.invented": "invented tests, nothing was pulled: {note}",
  "basis.newTests":
    "{tests} of new {stock} against its rated strength, with the scatter of the tests and an allowance for other batches",
  "basis.noNewTests":
    "of no new piece of {stock} a load is known that it held; the tests there are leave the level as rated or lower. {note}",
  "basis.tested": "{tests} of {stock}, together with: {note}",
  "basis.testedUpTo": "{tests} of {stock}, the most {most}, together with: {note}",
  "basis.builtIn": "as built in as far as {tests} do not tell: {note}",
  "basis.builtInUpTo": "as built in as far as {tests}, the most {most} do not tell: {note}",
  "basis.noLoss": "{note}; the tests hold more with it than without, which is counted as no loss",
  "basis.inPart": "{note}; the tests hold more than can be believed and count only in part",
  "tests.own": "{count} own break {count|test|tests}",
  "dose.sun": "{dose} months of full sun",
  "dose.falls": "{dose} falls",
  "dose.clampMark": "clamp mark after {dose} months in the clamp",
  "dose.sewing": "sewing after {dose} months outside",
} as const satisfies Partial<Record<keyof NoteFacts, string>>;
