/** Sentences of "How do we know?" on the page. Not part of the first load. */
export const EVIDENCE_ENGLISH = {
  "evidenceSheet.howDoWe": "How do we know?",
  "evidenceSheet.noNumberBeen": "No number has been checked against a fall that somebody measured.",
  "evidenceSheet.checksAgainstNumbers":
    "{outside} checks are against numbers from outside: {printed} printed, {secondHand} second hand, {memory} from memory, {programs} by other programs. {lineProgram} of these are against one program of another author. {computed} more are against numbers that we computed ourselves from published equations. {disagree} are known not to agree.",
  "evidenceSheet.theory": "Theory",
  "evidenceSheet.closedFormsPrinted":
    "Closed forms, printed examples and statistics. They say that the equations are solved well, not that they are the right ones for webbing, a body and an anchor on a rock.",
  "evidenceSheet.otherPrograms": "Other programs",
  "evidenceSheet.sameProblemsSolved":
    "The same problems, solved by programs that are not ours. Whole falls that a backup catches are compared as ensembles, for a gram more on the walker moves a load by 5 to 15 %.",
  "evidenceSheet.strengths": "Strengths",
  "evidenceSheet.whatPartStill":
    "What a part still holds rests on {strengths} numbers. {published} are published, {secondHand} seen second hand, {memory} from memory and {assumed} assumed. Own break tests take their place.",
  "evidenceSheet.validation": "Validation",
  "evidenceSheet.noneYetAgainst":
    "None yet against a measured fall. What would count: the recording of a load cell at a named place of a rig, with the rig's file, the walker's mass and where the fall began. The command `secondline measured RECORDING.csv RIG.json` holds such a recording against the model.",
  "evidenceSheet.everyCheckSource":
    "Every check with its source, its difference and its tolerance is in `docs/EVIDENCE.md`, which the tests write.",
  "evidenceSheet.licencesDidNot": "The licences did not arrive. They are in the file notices.txt beside the page.",
  "evidenceSheet.program": "This program",
  "evidenceSheet.secondlineUnderLicence":
    "Secondline {version}, under the licence Apache-2.0. It contains the work of others, under their licences.",
  "evidenceSheet.licencesOthersWork": "Licences of others' work",
  "evidenceSheet.sources": "The {count} sources",
  "evidenceSheet.checksToleranceUsed":
    "{kind}; {checks|1 check|{checks} checks}, {percent} of the tolerance used at most",
  "evidenceSheet.checksDisagree":
    "{kind}; {checks|1 check|{checks} checks}, {percent} of the tolerance used at most, but {disagree} of them do not agree",
  "evidenceSheet.notAssumed": "The {count} that are not assumed",
} as const;
