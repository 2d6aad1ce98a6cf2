/** English: every sentence that a user reads of an assessment. Another language is another file like this. */
export const ENGLISH = {
  // Parts
  "part.harness": "Harness tie-in",
  "part.leash": "Leash",
  "part.main": "Main line",
  "part.backup": "Backup",
  "part.connection": "Connection {number}",
  "part.tape": "Tape {number}",
  "part.weblock": "Weblock of the {line}, {end}",
  "part.sewnLoop": "Sewn loop of the {line}, {end}",
  "part.knot": "Knotted end of the {line}, {end}",
  "part.end": "End of the {line}, {end}",
  "part.anchor": "{name}, anchor {anchor}",
  "part.unknown": "Part {id}",
  "part.inKnot": "{part}, {place}",
  "line.main": "main line",
  "line.backup": "backup",
  "part.at": "{part}, {reason} {distance} from A",
  "part.the": "the {part}",
  "part.theAt": "the {part} at its {reason} {distance} from A",
  "part.theWhere": "the {part} {distance} from A",

  // Steps back and forward of a document that is not in view
  "step.rig": "rig, {step}",
  "step.record": "wear record, {step}",
  "step.log": "break log, {step}",

  // Places
  "place.inMiddle": "in the middle",
  "place.atAnchor": "at anchor {anchor}",
  "place.from": "{distance} from anchor {anchor}",

  // The verdict
  "verdict.holds": "Holds",
  "verdict.thin": "Thin",
  "verdict.fails": "Fails",
  "verdict.open": "Nothing found yet",
  "verdict.lapsed": "Lapsed",
  "part.verdict.holds": "holds",
  "part.verdict.thin": "thin",
  "part.verdict.fails": "fails",
  "part.verdict.open": "not settled",
  "part.verdict.notLoaded": "not loaded",
  "verdict.partFails":
    "Fails: {part} may have to carry {demand}; only {strength} can be counted on, what 19 of 20 such parts reach ({event}).",
  "verdict.failsUnsettled": "This is not settled: its margin lies between {low} and {high}, and more runs would tell.",
  "verdict.notCaught": "Fails: nothing holds the walker ({event}).",
  "verdict.ground": "Fails: the walker reaches the ground ({event}).",
  "verdict.groundMay":
    "Fails: the walker may reach the ground ({event}). No run did, but fewer than 95 % of such falls can be counted on to stay above it.",
  "verdict.pullTooHard":
    "Fails: the pull on the person may come to {demand}, more than the {limit} that a body is taken to bear ({event}).",
  "verdict.partThin": "Thin: {part} keeps a margin of {margin}; you require {required} {class} ({event}).",
  "verdict.groundNear":
    "Thin: the walker's feet may come within {height} of the ground; you require {required} ({event}).",
  "verdict.pullHard":
    "Thin: the pull on the person may come to {demand}; the limit asked for is {limit}, by {note} ({event}).",
  "verdict.withheld": "Not said to hold: {what}",
  "verdict.beyondKnown": "Not said to hold, for more wear than anything is known of: {parts}.",
  "verdict.beyondUnwritten": "Not said to hold, for wear that is not written down: {parts}.",
  "verdict.noStrengthCounted":
    "Where R is 0.00, so little is written down of a part's age and wear that no strength is counted: write down what you know.",
  "beyond.part": "{name} ({factors})",
  "beyond.more": "{count|one more part|{count} more parts}",
  "verdict.hasLapsed": "Lapsed: {what}",
  "lapse.tension": "{name}: tension set anew on {on}. Inspect it.",
  "lapse.falls": "{name}: {falls} falls since it was inspected, {planned} planned. Inspect it.",
  "lapse.overdue": "{name}: to be inspected by {due}. Inspect it.",
  "lapse.never": "{name}: not inspected since it was put up. Inspect it.",
  "lapse.more": "{count|One more thing|{count} more things} likewise.",
  "verdict.unconfirmed": "Thin: {count|1 value is|{count} values are} not confirmed.",
  "verdict.alsoUnconfirmed": "{count|1 value is|{count} values are} not confirmed.",
  "verdict.notLoadedParts":
    "Thin: {count|one part was|some parts were} never loaded, so nothing is known of {count|it|them}: {parts}.",
  "verdict.holdsAll":
    "Holds: every part keeps what you require ({expected} in falls, {afterFailure} after a failure). The part nearest to its required margin: {part}, margin {margin}; you require {required} {class}.",
  "verdict.openGap": "Nothing found yet: {run} of {of} what-ifs looked at. This does not say that the rig holds.",
  "verdict.openOne":
    "Nothing found in {count|this what-if|these {count} what-ifs} alone. That says nothing of the other {others}.",
  "verdict.openCoarse": "Nothing found yet, on a coarse mesh for a first look. This does not say that the rig holds.",
  "verdict.openDraws":
    "Nothing found yet: the worst what-ifs have not been run again with all that scatters drawn by chance.",
  "verdict.openFailed":
    "Nothing found, but {count|one what-if|some what-ifs} could not be computed: the worst may be among them.",
  "verdict.also": "{count|One more part is|{count} more parts are} thin.",
  "verdict.alsoFails": "{count|One more part fails|{count} more parts fail}.",
  "verdict.alsoGround": "The walker reaches the ground as well ({event}).",
  "verdict.alsoNotCaught": "In another what-if nothing holds the walker ({event}).",
  "verdict.alsoNear":
    "The walker's feet may come within {height} of the ground as well; you require {required} ({event}).",
  "verdict.alsoPull":
    "The pull on the person may come to {demand}; the limit asked for is {limit}, by {note} ({event}).",
  "verdict.alsoNotLoaded": "{count|One part was|{count} parts were} never loaded: {parts}.",
  "verdict.partial": "So far {run} of {of} what-ifs were looked at; worse may come.",
  "verdict.unsettled": "Thin, not settled: {what}. More runs would tell.",
  "verdict.alsoUnsettled": "Not settled: {what}. More runs would tell.",
  "unsettled.part": "{part} keeps {margin} ({low} to {high}) where {required} is required",
  "unsettled.more": "{count|one more part|{count} more parts}",
  "unsettled.height": "the height of the feet above the ground",
  "unsettled.pull": "the pull on the person",
  "verdict.computing": "Computing: {run} of {of} what-ifs so far.",
  "study.settled": "{runs} runs; {settled} of {parts} parts settled.",
  "part.settledSoFar": "settled so far",
  "verdict.nothingThen": "When it gives way nothing holds the walker.",
  "verdict.groundThen": "When it gives way the walker reaches the ground.",
  "verdict.catcherThen": "When it gives way {catcher} holds the walker.",
  "verdict.noRescue": "A rescue was not asked about.",
  "verdict.raised": "RAISED by own judgement above what is known: {parts}.",
  "verdict.likelierFirst":
    "If anything gave way in the worst what-if, it would likeliest be {first} ({chance} of the cases); nearest to its required margin is {least}. A part that scatters more can go first though its margin is larger.",
  "class.expected": "in falls",
  "class.afterFailure": "after a failure",

  // What happened
  "catcher.main": "the main line",
  "catcher.backup": "the backup",
  "catcher.both": "main line and backup together",
  "catcher.remains": "what is left of both lines",
  "catcher.nothing": "nothing",
  "story.caught": "{catcher} caught you {drop} down.",
  "story.notCaught": "Nothing caught you.",
  "story.ground": "You reached the ground{speed}.",
  "story.speed": " at {speed}",
  "story.leash": "Your leash parted: nothing held you.",
  "story.ring": "The ring parted: nothing held you.",
  "story.gaveWay": "{part} gave way {time} in.",
  "story.gaveWayOften": "{part} gave way {time} in, then in {count|one more place|{count} more places}.",
  "story.moreGaveWay": "{count|One more part|{count} more parts} gave way.",
  "story.pull": "Hardest pull on your harness: {pull}.",
  "fate.caught": "caught by {catcher}",
  "fate.tooMuch": "{catcher} would have to hold it, with more than can be counted on",
  "fate.nothing": "nothing holds the walker",
  "fate.ground": "reaches the ground",
  "fate.feet": "feet reach the ground",
  "fate.leash": "the leash parts",
  "fate.ring": "the ring parts",
  "fate.gaveWay": "{parts} {count|gives|give} way",
  "fate.notRun": "not computed",

  // Moments of a run, on the time axis and in the scene
  "moment.part.main": "main line",
  "moment.part.backup": "backup",
  "moment.part.leash": "leash",
  "moment.part.ring": "ring",
  "moment.part.connection": "{count|connection|{count} connections}",
  "moment.part.tape": "{count|tape|{count} tapes}",
  "moment.part.leg": "{count|leg|{count} legs} at anchor {anchor}",
  "moment.part.weblock": "weblock at {anchor}",
  "moment.cut": "{part} {count|fails|fail}",
  "moment.break": "{part} {count|gives|give} way",
  "moment.breakPlaces": "{part} gives way in {count} places",
  "moment.slip": "{part} slips{count||, {count} times}",
  "moment.leashTaut": "leash taut",
  "moment.ringOff": "ring off the line",
  "moment.ringOffOne": "ring off the {part}",
  "moment.ground": "ground",
  "moment.letGo": "feet off",
  "moment.lowest": "lowest point",
  "moment.stillFalling": "still falling",
  "moment.at": "{what} at {value}",
  "moment.upTo": "{what}, up to {value}",
  "moment.where": "{what} {where}",
  "moment.meetsGround": "the walker reaches the ground",

  // One run for somebody who does not see it
  "run.line": "{rig}: a line of {span} between anchors A and B.",
  "run.sag": "With the walker on it the main line sags {sag}.",
  "run.drop": "The walker drops {drop}, lowest after {time}.",
  "run.pull": "Hardest pull of the leash: {pull}.",
  "run.happened": "What happens: {list}.",
  "run.nothingParts": "Nothing gives way.",

  // Trouble of a run
  "trouble.missing": "This rig has no such what-if: {what}",
  "trouble.before": "The run before it failed: {detail}.",
  "trouble.audit": "The run does not balance its own energy, so it gives no number: {detail}.",
  "trouble.diverged": "The numbers of the run went wrong: {detail}.",
  "trouble.equilibrium": "The rig at rest could not be solved: {detail}.",
  "trouble.limits": "The run is larger than can be computed: {detail}.",
  "trouble.tooShort": "The run is too short to judge: {detail}.",
  "trouble.cancelled": "The run was stopped.",

  // Parts without a load
  "notLoaded.walkerLost": "not loaded: the walker was lost before",
  "notLoaded.notRun": "not loaded in the runs that were made",
  "notLoaded.carriesNothing": "carries nothing in any what-if",

  // No second
  "single.none": "Every part has a second that carries the walker when it goes.",
  "single.list": "Single points of failure, whatever their margin: {parts}.",
  "single.leaves.nothing": "nothing: a single point of failure",
  "single.leaves.main": "the main line",
  "single.leaves.backup": "the backup",
  "single.leaves.bothLines": "both lines, without this connection",
  "single.leaves.otherPoints": "the other points",
  "single.leaves.otherRings": "the other rings",
  "single.way.absent": "missing",
  "single.way.cut": "cut",
  "single.way.wronglyClosed": "wrongly closed",
  "single.way.pulledOut": "pulled out",
  "single.way.untied": "untied",
  "single.shown": "caught in every run of it",
  "single.shownNot": "NOT caught in some run of it",
  "single.notShown": "by how the rig is built up; not run",

  // What was taken into account
  "taken.nothing": "The rig's own file alone: no wear record, no break tests.",
  "taken.wear": 'State of {on} by the wear record "{name}" ({lines}).',
  "taken.wearParts": 'State of {on} by the wear record "{name}" (parts only; the webbing as in the rig\'s file).',
  "taken.on": "The rig's own file as the state of {on}; no wear record.",
  "taken.tests": "{count} of {given} break tests say something of it.",
  "taken.noTests": "No break tests.",
  "taken.judged": "Own judgement counts in: {parts}.",

  // Cautions
  "caution.model":
    "This is a model of the rig, not the rig. It does not replace inspection, the makers' instructions, local codes and standards, or qualified practice.",
  "caution.textiles":
    "Textiles can lose much of their strength without showing it. A part that looks sound may not be.",
  "caution.alone":
    "Do not rig from these numbers alone. Let somebody qualified check the rig, its parts and what was entered here.",
  "caution.invented": "Demo data: every number of this rig is invented. It describes no real line.",
  "caution.unconfirmed": "Not confirmed by anybody: {list}.",
  "caution.scatter":
    "Loads are what 95 % of such falls stay under, in draws of the walker's mass, place and moment, of stiffness, damping, friction, tension and slack. How far these scatter is assumed, not measured on a rig.",
  "caution.unfounded":
    "{share} strengths rest on common practice, memory or assumptions, not on tests of these parts. Test pieces of the real ones.",
  "caution.all": "All {of}",
  "caution.some": "{some} of {of}",
  "caution.failedRuns":
    "{count|One what-if|{count} what-ifs} could not be computed reliably. The verdict is incomplete: the worst case may be among them.",
  "caution.chance":
    "Where a slack line snaps taut, loads are partly a matter of chance: a gram more or less on the walker can change one by a tenth, and the pull on the harness by a third where the main line fails during a catch. Do not count on a margin that is only just met.",
  "caution.partial": "Not every what-if was run: {run} of {of}. The worst case may be among the others.",
  "caution.coarse": "Computed on a coarse mesh, for a first look: peaks may be off. Check again on the standard mesh.",
  "caution.noBackup": "The rig has no backup: nothing catches the walker when the main line fails.",
  "caution.noGround": "No ground was given: whether the walker reaches it in a drop was not checked.",
  "caution.slips":
    "{part} lets webbing through above {load}, in {count|1 what-if|{count} what-ifs} of those run: loads end there. That is taken from the rig's file. A weblock that grips harder makes the loads larger, and webbing that slipped through a weblock is worn.",
  "caution.endedOnGround":
    "{count|One what-if ends|{count} what-ifs end} on the ground. What the parts would have carried after that is not computed.",
  "caution.notModelled":
    "Not modelled: edges and abrasion while loaded, swinging into rock, wind, a wrongly closed part, and how the body takes the force.",
  "caution.judged": "Own judgement counts in: {list}.",
  "caution.raised":
    "RAISED: {part} counts as {times} times as strong as it otherwise would ({reason}){likewise}.{without}",
  "caution.likewise": "; likewise: {list}",
  "caution.without": " Without it the {count|margin of this part|margins of these parts} would be {margins}.",
  "caution.wideLegs":
    "The legs of anchor {anchor} meet at {angle}: each of two carries {share} times the whole load. Keep them below 90° (common practice); a lifting association's table, seen second hand, counts two legs at 1.4 times one leg up to 90°, as one leg beyond.",
  "caution.widestLegs":
    "The legs of anchor {anchor} meet at {angle}: each of two carries {share} times the whole load, more than one leg alone would. Do not rig it so: a lifting association's table, seen second hand, counts two legs up to 120° only.",
  "caution.sharing":
    "The points of {anchors} are taken to share by the angle of their legs. Nothing makes them: a fixed anchor pulled to one side, or legs of unequal length, can load one leg with nearly all of it.",
  "caution.sharingAlone":
    "Alone, the weakest of them keeps this margin against the largest load of the whole anchor: {list}.",
  "caution.aloneKeeps": "{part} {margin}",
  "caution.aloneLess": "{part} {margin}, LESS than you require",
  "caution.singlePoint": "There is one point at {anchors}: nothing takes its load when that goes.",
  "anchors.one": "anchor {anchor}",
  "anchors.both": "anchors A and B",

  // Side by side

  // Tables: heads, captions and the words in their cells
  "table.rated": "Rated",
  "table.value": "Value",
  "table.notKnown": "?",
  "table.none": "–",
  "table.feetOnGround": "ground",
  "table.required.class": "{factor} {class}",
  "table.toldOnly": "{title} (told, does not count)",
  "load.band": "E {load} ({band})",
  "table.band": "{low}–{high}",
  "basis.text": "{kind}: {note}",

  // Headings
  "head.follows": "When a part that keeps too little gives way",
  "head.notes": "Look at these",

  // The pull on the person
  "fact.pull": "Pull on the person",
  "person.above": "above {limit}: {note}",
  "person.grade.keeps": "within",
  "person.grade.thin": "thin",
  "person.grade.fails": "fails",
  "blank.item": "{part}: {what}; counts as {share} of what it would at best",

  // The rig in a line and as a table

  // The report

  // Side by side, in sentences

  // State by a wear record

  // Refused

  // Chances
  "chance.tiny": "less than 1 in a million",
  "chance.oneIn": "1 in {number}",
  "chance.over99": "over 99 %",
  "chance.all": "100 %",
  "chance.below": "less than {bound}",
  "chance.upTo": "{value} (up to {high})",
  "chance.range": "{value} ({range})",
  "chance.span": "{low} to {high}",
} as const satisfies Record<string, string>;
