/**
 * Sentences of the lessons, with {places} for numbers of the simulation. No text is put together from pieces. Not part of the
 * first load.
 */
export const LESSONS_ENGLISH = {
  "view.title": "Lessons",
  "view.intro":
    "Short ones. In each you say what you expect, with a number and a reason; then the same simulation as everywhere in Secondline runs, and you see both side by side. There are no marks.",
  "view.cautionsName": "Cautions",
  "list.number": "Lesson {number}",
  "list.begin": "Begin",
  "list.again": "Look again",
  "list.kept": "You said {predicted}; the run gave {result}.",
  "list.none": "Not tried yet.",
  "list.invented": "The rigs of the lessons are invented. They describe no real line.",
  "lesson.back": "All lessons",
  "lesson.next": "Next: {title}",
  "lesson.again": "Predict once more",
  "lesson.done": "That was the last one: what you said, and what came of it",
  "lesson.situation": "What is given",
  "lesson.prediction": "Your prediction",
  "lesson.result": "The run",
  "lesson.why": "Why",
  "lesson.summary": "In short",
  "lesson.notTold": "What this does not tell",
  "lesson.mesh":
    "All runs are made on the coarse mesh, so that you need not wait long. A finer one moves their numbers by up to about a tenth.",
  "lesson.yourReason": "Your reason",
  "lesson.computingBefore": "Computing what is given",
  "lesson.computingAfter": "Running your question",
  "lesson.stop": "Stop",
  "lesson.stopped": "Stopped before its end.",
  "lesson.retry": "Run again",
  "lesson.failed": "This could not be computed reliably, and no number of it is shown. The reason: {message}",
  "lesson.noNumber": "The run gave no number that can be trusted, so there is nothing to compare with.",
  "lesson.otherwise":
    "The run did not go as this lesson was written for, so its explanation is left out. What happened stands above.",
  "lesson.run": "Run it",
  "lesson.reason": "Because",
  "lesson.ownReason": "In your own words, if you like",
  "lesson.needNumber": "Move the slider to your number first.",
  "lesson.needReason": "Say why first: choose a reason, or write your own.",
  "lesson.youSaid": "You said {predicted}, because: {reason}",
  "lesson.notKept": "This browser does not keep your predictions on this device: {message}.",
  "lesson.pictureBefore": "As it was",
  "lesson.pictureAfter": "The run",
  "lesson.pictureChoice": "Which run to look at",
  "lesson.pictureWaiting": "The picture appears here as soon as it is computed.",
  "lesson.pictureFailed": "There is no computed fall to show.",
  "slider.given": "Given: {value}",
  "bars.given": "Given",
  "bars.said": "You said",
  "bars.run": "The run",
  "judge.close": "Close: the run came within {percent} of your number.",
  "judge.exact": "That is the run’s number.",
  "judge.more": "The run came to {ratio} times what you said.",
  "judge.less": "The run came to {percent} of what you said.",
  "judge.fromNothing": "You said none at all; the run gave {result}.",
  "announce.result": "The run is done. You said {predicted}; it gave {result}. {judgement}",

  "noBackup.title": "The second line",
  "noBackup.line": "The main line fails, with a backup and without",
  "noBackup.given":
    "A line of 60 m hangs {height} above the ground. You hang in the leash in the middle when the main line fails at anchor A. There is a backup below it. {beforeStory}",
  "noBackup.ask": "Take the backup away, and let the same happen. How fast are you when you reach the ground?",
  "noBackup.slider": "Speed at the ground",
  "noBackup.reason1": "The half that is still tied at B swings me round and slows me.",
  "noBackup.reason2": "Nothing much slows me: it is nearly a free fall.",
  "noBackup.reason3": "The air slows a falling person down to something moderate.",
  "noBackup.reply1":
    "Hardly: the ring ran along that half towards its loose end. You met the ground at {afterKmh}, and a fall with nothing attached ends at {freeKmh}.",
  "noBackup.reply2": "Yes: you met the ground at {afterKmh}, and a fall with nothing attached ends at {freeKmh}.",
  "noBackup.reply3":
    "The simulation has air in it, but a person falls far before air counts for much. {afterKmh} is next to the {freeKmh} of a fall with nothing attached.",
  "noBackup.why":
    "A main line is one piece from anchor to anchor: when it fails anywhere, all of it is gone. The half at B is still tied, but the ring is not tied to it: it runs along the line towards the loose end. You reach the ground after {afterTime} at {afterSpeed}, about {afterKmh}; a fall from the same height with nothing attached ends at {freeKmh}. With the backup you came to a stop {beforeDrop} down.",
  "noBackup.summary": "The backup is not a spare. Once the main line has failed, it is all there is.",
  "noBackup.notTold":
    "What the ground does to a person. Whether you would swing into rock. Whether one cause, such as an edge, a fire or a wrongly closed part, could take both lines at once: two lines over the same edge are one line.",

  "looseBackup.title": "Slack in the backup",
  "looseBackup.line": "More line between the same two anchors",
  "looseBackup.given":
    "The backup is 4 % longer than the gap is wide: 2.4 m of spare line on 60 m. The main line fails at anchor A while you hang in the middle. {beforeStory}",
  "looseBackup.ask": "Give the backup 12 % instead, 7.2 m of spare line. How far down do you go?",
  "looseBackup.slider": "Drop",
  "looseBackup.reason1": "As far as before, plus the 4.8 m of line that were added.",
  "looseBackup.reason2": "Three times the slack, three times the drop.",
  "looseBackup.reason3": "More than before, but less than in proportion: the first slack costs most.",
  "looseBackup.reply1":
    "It is more than that: 4.8 m of line that were added cost {addedDrop} of height, because a line gives away its length by sagging.",
  "looseBackup.reply2":
    "No: three times the slack made {dropRatio} times the drop. The sag does not grow in step with the slack.",
  "looseBackup.reply3": "Yes: three times the slack made {dropRatio} times the drop.",
  "looseBackup.why":
    "A loose line between two anchors can only use up its spare length by hanging down, and the sag grows with the root of the slack. That is why 2.4 m of spare line already made a drop of {beforeDrop}. Three times as much makes {dropRatio} times the drop: {afterDrop}. You also arrive faster. The hardest pull on your harness went from {beforePull} to {afterPull}.",
  "looseBackup.summary":
    "Slack is paid for in height and in force, and the first few metres of spare line cost the most. Here your harness came to a stop {clearance} above the ground. Not every gap is that deep.",
  "looseBackup.notTold":
    "How much slack is right for your line. A backup as tight as the main line carries load it is meant to be spared, wears beside it and hums in the wind. Makers’ instructions and qualified practice come first.",

  "connection.title": "One connection",
  "connection.line": "Both lines joined at one place",
  "connection.given":
    "The same backup with 4 % of slack, joined to the main line nowhere but at the anchors. The main line fails at anchor A. {beforeStory}",
  "connection.ask":
    "Join the two lines at one place, 24 m from anchor A: that is 6 m from you, on the side where the main line fails. How far down do you go now?",
  "connection.slider": "Drop",
  "connection.reason1": "Hardly less: the backup is as long as before.",
  "connection.reason2": "About half: only part of the slack can open.",
  "connection.reason3": "Next to nothing: the connection holds me at once.",
  "connection.reply1":
    "The backup is as long as before, but most of its slack lies beyond the connection and stays there. The drop is {dropPercent} of what it was.",
  "connection.reply2":
    "Yes: only the slack between anchor A and the connection opened, and the drop is {dropPercent} of what it was.",
  "connection.reply3":
    "Not at once: first the slack between anchor A and the connection has to open, and both lines stretch. That took {afterDrop}.",
  "connection.why":
    "From the connection to anchor B the main line is whole. It now hangs on the backup at the connection, so only the slack of the bay between anchor A and the connection can open; the slack beyond it stays where it is. The drop went from {beforeDrop} to {afterDrop}, which is {dropPercent} of it, and the pull on your harness from {beforePull} to {afterPull}.",
  "connection.summary":
    "Connections cut a long loose backup into short ones. What opens is the slack of the bay in which the main line fails.",
  "connection.notTold":
    "That it is always half: place, slack and where the line fails decide. A failure in another bay, a worn connection or one that the ring catches on are other stories. A connection carries load too and must be as sound as the rest.",

  "knot.title": "Sewn or tied",
  "knot.line": "The same webbing with another end",
  "knot.given":
    "A backup of light webbing, {webbingRated} as new, has hung two and a half months of summer in full sun. It ends in sewn loops. When the main line fails at anchor A, 95 % of such falls pull on the loop at A with less than {beforeEndLoad}, and 95 % of such loops hold {beforeEndStrength} or more: a margin of {beforeEndMargin}.",
  "knot.ask":
    "Somebody takes the loop off at anchor A and ties an overhand knot into the same webbing. What do 95 % of such ends hold?",
  "knot.slider": "What the knotted end can be counted on to hold",
  "knot.reason1": "As much as the loop: webbing is webbing.",
  "knot.reason2": "About four fifths: a knot weakens a little.",
  "knot.reason3": "Less than half: flat webbing hates tight bends.",
  "knot.reply1":
    "The webbing is the same; its way around itself is not. Of {beforeEndStrength} at the loop, {afterEndStrength} are left at the knot.",
  "knot.reply2": "Less is left than that: {afterEndStrength} of {beforeEndStrength}. Flat webbing takes a knot badly.",
  "knot.reply3": "Yes: {afterEndStrength} of {beforeEndStrength} are left.",
  "knot.whyParts":
    "In a knot the webbing runs around itself in a tight bend: some of it carries nearly everything, and it is squeezed where it carries. Together with what the sun took, {afterEndStrength} can be counted on, and the fall asks for {afterEndLoad}: a margin of {afterEndMargin}, which fails. The picture shows two breaks: the main line, as asked, and {breakTime} later the backup at its knot at A. There is no third line. In this one run a middling knot was tied. It parted at {breakLoad}: more than can be counted on, and too little all the same.",
  "knot.whyFails":
    "In a knot the webbing runs around itself in a tight bend: some of it carries nearly everything, and it is squeezed where it carries. Together with what the sun took, {afterEndStrength} can be counted on, and the fall asks for {afterEndLoad}: a margin of {afterEndMargin}, which fails. In this one run a middling knot was tied, and it held; one in twenty is weaker than what can be counted on.",
  "knot.whyHolds":
    "In a knot the webbing runs around itself in a tight bend: some of it carries nearly everything, and it is squeezed where it carries. Together with what the sun took, {afterEndStrength} can be counted on, against a pull of {afterEndLoad}: a margin of {afterEndMargin}.",
  "knot.summary":
    "A line is as strong as its weakest ending. Two backups of the same webbing can differ by more than half, by how they end.",
  "knot.notTold":
    "How your knot in your webbing does: kinds of knots in flat webbing are not told apart here, and they differ. Knots in rope keep more. The strength of the knot is not worked out from the fall: it is the rated strength times factors, and the one for the knot rests on this: {knotBasis}. Only a pull test of the real piece tells.",

  "clampMark.title": "Where a clamp has sat",
  "clampMark.line": "The same webbing after it was moved",
  "clampMark.given":
    "A main line has hung for a year. It was then clamped afresh, beyond the place that had sat in the weblock, so that this place carries nothing. In a leash fall in the middle 95 % of such falls pull with less than {beforeMainLoad}, and 95 % of such webbing holds {beforeMainStrength} or more where it is weakest: a margin of {beforeMainMargin}.",
  "clampMark.ask":
    "At the next move nobody looks where the old clamp mark is. It comes to lie in the span, 5 m from anchor A. What does 95 % of such webbing now hold where it is weakest?",
  "clampMark.pictureBefore": "Mark beyond the clamp",
  "clampMark.pictureAfter": "Mark in the span",
  "clampMark.slider": "What can be counted on at the weakest place",
  "clampMark.reason1": "As much as before: near the anchor there is little load.",
  "clampMark.reason2": "A little less: the webbing is only pressed flat there.",
  "clampMark.reason3": "Much less: what the clamp bit and what the sun took multiply.",
  "clampMark.reply1":
    "There is hardly less load near the anchor: {afterMainLoad} at the clamp mark. And the mark holds {afterMainStrength} where clean webbing holds {beforeMainStrength}.",
  "clampMark.reply2": "It is taken to be more than a flat place: {afterMainStrength} are left of {beforeMainStrength}.",
  "clampMark.reply3":
    "Yes: {afterMainStrength} are left of {beforeMainStrength}. Both losses are shares of what is left, so they multiply.",
  "clampMark.why":
    "A taut line pulls about equally hard all along: at the clamp mark, 5 m from anchor A, the fall asks for {afterMainLoad}. So the strength decides. The mark takes its share of what the sun has left, and {afterMainStrength} can be counted on: a margin of {afterMainMargin}, where {afterMainRequired} is required. The line looks the same.",
  "clampMark.summary":
    "Keep a record of where clamps have sat, in metres of webbing, and look it up at every re-tension, move and reuse. A tired place is harmless only where nothing pulls on it.",
  "clampMark.notTold":
    "How deep your clamp bites. The number for the clamp mark rests on this: {markBasis}. After a take-down, pull pieces of your own lines apart and see.",

  "shortStiff.title": "Another line, the same fall",
  "shortStiff.line": "Long and soft, short and stiff",
  "shortStiff.given":
    "You fall into the leash in the middle of 60 m of polyester webbing. The hardest pull on your harness is {beforePull}; each anchor gets up to {beforeAnchor}. The line gives way softly: at the deepest you are {beforeDrop} lower than you stood.",
  "shortStiff.ask":
    "The same person takes the same fall with the same leash on 15 m of tight HMPE webbing. What is the hardest pull on the harness?",
  "shortStiff.slider": "Hardest pull on the harness",
  "shortStiff.reason1": "The same: my weight and my leash decide.",
  "shortStiff.reason2": "Less: on a short line I do not fall as far.",
  "shortStiff.reason3": "More: something has to give, and here little does.",
  "shortStiff.reply1":
    "They are the same as before, and the pull is not: {afterPull} instead of {beforePull}. The line decides with them.",
  "shortStiff.reply2":
    "You did go less far, {afterDrop} instead of {beforeDrop}. That is why it hurts: the same energy is taken up over a shorter way.",
  "shortStiff.reply3": "Yes: {afterPull} instead of {beforePull}.",
  "shortStiff.why":
    "The energy of a fall has to go somewhere, and a force does its work over a distance. On the long line the whole line moved with you; here you were stopped {afterDrop} down, most of it free fall and leash. The pull on the harness went from {beforePull} to {afterPull}. The anchors have it worse: a tight line pulls flat, so that each gets up to {afterAnchor} instead of {beforeAnchor}.",
  "shortStiff.summary":
    "Short, stiff and tight is the hard combination. What is soft in such a rig is the leash, so that its length, its rope and its knots matter most.",
  "shortStiff.notTold":
    "What a pull does to a body, which depends on the harness, the posture and the person. Fewer kilonewtons are not harmless in themselves.",

  "chance.title": "The same fall, thirty times",
  "chance.line": "What nobody knows to the last digit",
  "chance.given":
    "The plain line with its backup of 4 % slack. The main line fails at anchor A while you hang in the middle. {beforeStory} Nobody knows the walker's mass, the place, the tension or the stiffness of webbing so exactly as a run takes them.",
  "chance.ask":
    "Let it happen thirty times, each time with all of that a little different, by chance. How hard is the hardest of the thirty pulls on the harness?",
  "chance.pictureBefore": "The one run",
  "chance.pictureAfter": "The hardest of thirty",
  "chance.slider": "Hardest of thirty pulls",
  "chance.reason1": "The same as in the one run: it is the same fall.",
  "chance.reason2": "A little more: small differences make small differences.",
  "chance.reason3": "Much more: a slack line that snaps taut is sensitive.",
  "chance.reply1": "No two of them are the same: the pulls go from {manyLeast} to {manyMost}.",
  "chance.reply2":
    "The hardest is {manyRatio} times the middle one, {manyMiddle}. The one run before gave {beforePull}.",
  "chance.reply3":
    "The hardest is {manyRatio} times the middle one, {manyMiddle}. The one run before gave {beforePull}.",
  "chance.why":
    "Each dot is one fall. Mass, place, moment, tension, stiffness, damping, slack and friction were drawn anew for each, as far as each may be off. The pulls go from {manyLeast} to {manyMost}, with {manyMiddle} in the middle. So one run, however carefully made, is one dot.",
  "chance.summary":
    "A load of a fall is no number but a spread. What counts is what nearly all such falls stay under, not what one of them was.",
  "chance.notTold":
    "How far your own line's values may be off: the spreads are assumed, not measured on a rig. And thirty falls do not show the worst of a thousand.",
  "chance.dots":
    "Thirty pulls on the harness, one dot each: from {manyLeast} to {manyMost}, {manyMiddle} in the middle.",
  "chance.list": "The thirty, from the smallest: {list}.",
  "chance.computing": "The same fall, thirty times",
  "chance.few": "Only {count} of the thirty gave numbers that can be trusted.",

  "howFar.title": "How far can I go?",
  "howFar.line": "One number from end to end of a range",
  "howFar.given":
    "The plain line with its backup of 4 % slack. The main line fails at anchor A while you hang in the middle. {beforeStory} Below this line there is room for a drop of 15 m, and for no more.",
  "howFar.ask":
    "Go through the slack of the backup from 2 % to 14 %, with all that nobody knows exactly drawn anew at every step. At how much slack do 19 of 20 such falls no longer stop within 15 m?",
  "howFar.pictureBefore": "At 4 % of slack",
  "howFar.pictureAfter": "At {slack} % of slack",
  "howFar.slider": "Slack at which the room is used up",
  "howFar.reason1": "Slack and drop grow in step: from one run I can work it out.",
  "howFar.reason2": "Below that: the drop that counts is not the one of a single run.",
  "howFar.reason3": "Far up the range: slack costs little height at first.",
  "howFar.reply1":
    "They do not: at 2 % such falls stay under {firstDrop}, at 14 % under {lastDrop}. The curve says {crossAt}.",
  "howFar.reply2":
    "What 19 of 20 falls stay under lies deeper than the one run: the curve meets the limit at {crossAt}.",
  "howFar.reply3": "The first slack costs most: at 2 % already {firstDrop}. The curve meets the limit at {crossAt}.",
  "howFar.why":
    "{sweepRuns} falls were run at seven values of the slack, and one smooth curve laid through what 95 % of them stay under. It meets {limit} at {crossAt}, and so many falls leave it open whether that is {crossLow} or {crossHigh}. Beyond the lower of the two nobody can be sure.",
  "howFar.summary":
    "Ask for the whole range, not for one value. And keep to the sure side of where the curve meets the limit: that is {crossLow}, not {crossAt}.",
  "howFar.notTold":
    "That the rig holds up to there: a sweep follows one number in one what-if. Loads, other falls and the ground under other places of the line are other questions.",
  "howFar.curve":
    "Drop over the slack of the backup: {firstDrop} at 2 %, {lastDrop} at 14 %. The curve meets the limit of {limit} at {crossAt}, between {crossLow} and {crossHigh}.",
  "howFar.limit": "limit {limit}",

  "ribbon.title": "Along the main line, {time} in",
  "ribbon.holds": "What 95 % of such webbing holds",
  "ribbon.carries": "What it carries now",
  "ribbon.mark": "clamp mark: holds {strength}, carries {load}",
  "ribbon.label":
    "The main line from anchor A to anchor B: what it can be counted on to hold at every place, and what it carries at the moment that is shown.",

  "class.begin": "For a class",
  "class.hint": "Full screen, large type, traces under the picture",
  "class.end": "Leave the class",
  "class.pointHint": "Drag in the picture or in the traces: one line moves through both.",
  "class.traces": "Pull on the harness",
  "class.pointer": "Point at a moment in the picture",
  "class.aloud": "Answers to read aloud",

  "closing.title": "What you said, and what came of it",
  "closing.none": "Nothing was predicted yet. Each lesson leaves its line here.",
  "closing.tried": "{tried} of {all} lessons tried.",
  "closing.mean": "Half of your numbers came within {percent} of the run.",
  "closing.print": "Print the handout",
  "closing.again": "To the lesson",
  "text.title": "Secondline: lessons, to read aloud",
  "text.lesson": "Lesson {number}: {title}",
  "text.asked": "Asked: {ask}",
  "text.said": "You said {predicted}. The run gave {result}. {judgement}",
  "text.because": "Because: {reason}",
  "text.notTried": "Not tried.",
  "text.short": "In short: {summary}",
  "text.notTold": "Not told: {notTold}",

  "kept.recordLessons": "a record of lessons",
} as const;
