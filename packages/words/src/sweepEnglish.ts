/** Sentences on sweeps and studies, in a file of their own because the first load does not need them. */
export const SWEEP_ENGLISH = {
  "fault.form":
    '{option}: got "{text}"; expected PATH=FROM..TO, such as backup.slack=2%..14%, walker.mass=50kg..110kg, connections=0..5 or months=0..24.',
  "fault.unknown":
    '{option}: got "{text}"; a rig\'s file has no number of that name. Numbers are named by their path in the file, such as: {about}.',
  "fault.notNumber": '{option}: got "{text}"; that is no number in a rig\'s file but "{about}".',
  "fault.absent": '{option}: got "{text}"; this rig has nothing at {about}.',
  "fault.value": '{option}: got "{text}". {about}',
  "fault.reversed": '{option}: got "{text}"; the range goes backwards. Was {about} meant?',
  "fault.empty": '{option}: got "{text}"; the range is empty: both ends are the same. One value is what check is for.',
  "fault.whole": '{option}: got "{text}"; this is counted in whole numbers.',
  "fault.noConnection":
    '{option}: got "{text}"; connections are copies of the first one in the file, and this rig\'s backup has none.',
  "fault.noDay": '{option}: got "{text}"; months count from a day: say which with --on.',
  "fault.range": '{option}: got "{text}"; at most {about}.',
  "fault.points":
    '--points: got "{text}"; expected a whole number from {least} to {most}: a curve needs {least} points.',
  "fault.what": '{option}: got "{text}"; expected margin, drop, height or load:PART.',
  "fault.part": '{option}: got "{text}"; the rig has no such part. Its parts: {parts}.',
  "fault.limit": '--limit: got "{text}". {about}',
  "fault.limitNumber": "A share of the required margin is a plain number above 0, such as 1.2.",
  "fault.many": "{option}: a sweep changes one number or two, got {count}.",
  "fault.same": "{option}: {name} is there twice; two different numbers make a map.",
  "fault.noPoint": "{file}: no value of the range gives a rig. At {change}: {message}",
  "fault.fewPoints":
    "{file}: only {count} {count|value|values} of the range {count|gives|give} a rig; a curve needs {least}.",
  "fault.nothing.height": "{file}: no ground is known, so there is no height above it to sweep.",
  "fault.nothing.load": "{file}: no run loaded that part.",
  "fault.nothing.other": "{file}: no run gave numbers to be trusted.",
  "what.margin": "Least margin of any part, as a share of the required margin",
  "what.drop": "Drop that 95 % of the falls stay under",
  "what.height": "Height of the feet above the ground that 95 % of the falls keep",
  "what.load": "Load that 95 % of the falls stay under: {part}",
  "head.over": "{what}, over {range}",
  range: "{name} from {from} to {to}",
  "table.value": "Curve",
  "table.band": "95 %",
  "table.own": "This point",
  "table.governs": "Governs",
  "table.event": "What-if",
  "table.runs": "Runs",
  interval: "{low} to {high}",
  "interval.sure": "by the whole 95 % interval",
  "interval.upTo": "up to {high}",
  "interval.from": "from {low} on",
  "interval.all": "anywhere in the range",
  "at.connections": "{at} {at|connection|connections}",
  "at.months": "{at} {at|month|months}",
  "at.field": "{at} {label}",
  "crossing.required.above":
    "From {at} on ({interval}), {part} keeps the {required} that is required of it {class}; below it does not. What-if: {event}.",
  "crossing.required.below":
    "Up to {at} ({interval}), {part} keeps the {required} that is required of it {class}; above it does not. What-if: {event}.",
  "crossing.ground.above": "The ground is reached at {at} ({interval}) and below. What-if: {event}.",
  "crossing.ground.below": "The ground is reached at {at} ({interval}) and above. What-if: {event}.",
  "crossing.clearance.above":
    "The feet stay the required {limit} above the ground from {at} on ({interval}). What-if: {event}.",
  "crossing.clearance.below":
    "The feet stay the required {limit} above the ground up to {at} ({interval}). What-if: {event}.",
  "crossing.own.above": "The limit of {limit} is kept from {at} on ({interval}). What-if: {event}.",
  "crossing.own.below": "The limit of {limit} is kept up to {at} ({interval}). What-if: {event}.",
  "throughout.required.keeps":
    "No part went below what is required anywhere in the range, in the what-ifs that were drawn; the least is {value}{governs}. What-if: {event}.",
  "throughout.required.below":
    "All over the range a part keeps less than is required; the least is {value}{governs}. What-if: {event}.",
  "throughout.ground.keeps":
    "In 95 of 100 falls the feet stay off the ground all over the range; the least height is {value}. What-if: {event}.",
  "throughout.ground.below": "The ground is reached all over the range. What-if: {event}.",
  "throughout.clearance.keeps":
    "The feet stay more than the required {limit} above the ground all over the range; the least height is {value}. What-if: {event}.",
  "throughout.clearance.below":
    "The feet come nearer to the ground than the required {limit} all over the range. What-if: {event}.",
  "throughout.own.keeps": "The limit of {limit} is kept all over the range; the worst is {value}. What-if: {event}.",
  "throughout.own.below":
    "The limit of {limit} is not kept anywhere in the range; the worst is {value}. What-if: {event}.",
  "throughout.apart": "That apart: {text}",
  "throughout.unsure": "The band reaches over the limit in places: more runs may say otherwise.",
  governs: ", of {part}",
  "region.head": "{limit}: + kept with the whole 95 % band, ? may or may not be, − not kept",
  "region.limit.required": "What is required of every part",
  "region.limit.ground": "Clear of the ground",
  "region.limit.clearance": "The required {limit} above the ground",
  "region.limit.own": "The limit of {limit}",
  "region.none": "no value",
  "region.outline": "Outline: {first} that keep it with the whole 95 % band, by {second}",
  "caption.table":
    "Curve: a smooth curve through the draws of all points, at every value the worst part and what-if; where the draws of a point say worse than the curve, the curve is lifted to what they say. This point: by its own draws alone. 95 %: interval from the number of runs.",
  "caption.apart":
    "Nothing lies between two of these values: every one has its own middle, and only the scatter is learnt from all.",
  "caption.months": "Loads are those of the first day; only strengths change with the months.",
  "caption.plot": "• curve, ─ its 95 % interval, │ limit",
  "drawn.head": "What-ifs that were drawn",
  "drawn.event": "{key}: {title}",
  "drawn.found":
    "{drawn} of {looked} what-ifs, the worst at the ends and in the middle of the range; {draws} draws of each at every value, {runs} runs in all.",
  "drawn.chosen": "The chosen what-ifs; {draws} draws of each at every value, {runs} runs in all.",
  "bad.head": "Values with which the rig is none",
  "bad.point": "{change}: {message}",
  "said.silent":
    "{count} {count|what-if|what-ifs} gave no number at one or more of the values where all were looked at, and {count|is|are} in no curve, though {count|it|one of them} may be the hardest: {list}.",
  "said.failed": "{count} {count|run|runs} gave no numbers to be trusted and {count|is|are} left out.",
  "said.lost": "Nothing holds the walker in some runs at: {list}. Drops and loads of such runs say little.",
  "said.lostAll": "Nothing holds the walker in some runs at every value. Drops and loads of such runs say little.",
  "said.ground": "The feet reach the ground in some runs at: {list}. A check says of such a rig that it fails.",
  "said.groundAll": "The feet reach the ground in some runs at every value. A check says of such a rig that it fails.",
  "said.at": "{text} At: {list}.",
  "said.misfit":
    "The points lie off the smooth curve by more than chance ({times} times, in squares): something changes abruptly in the range. The bands are widened. Look at that place with a narrower range.",
  "said.partsAlone":
    "These are the margins of parts. A verdict also limits the pull on the person and the height of the feet above the ground: neither is in this curve.",
  "said.coarse": "Computed on the coarse mesh: a first look.",
  "caution.sweep":
    "A sweep looks at a few what-ifs and says of no value that the rig holds. Check the rig with the value that you choose.",
  "study.cost":
    "{runs} {runs|run|runs} to make: about {one} on one core, {some} on 16, {many} on 1000; {room} on the disk ({basis}).",
  "search.foretold": "Some {runs} runs, fewer where nothing lies near a limit: about {time} with {jobs} at a time.",
  "study.foretold": "Some {runs} runs: about {time} with {jobs} at a time.",
  "study.basis.measured": "speed measured on this machine",
  "study.basis.usual": "usual speed of a machine",
  "study.time.seconds": "{value} s",
  "study.time.minutes": "{value} minutes",
  "study.time.hours": "{value} hours",
  "study.time.days": "{value} days",
  "study.long": "That is more than 8 hours of one core. --yes begins it all the same; --shard i/n makes a part of it.",
  "study.tooMany":
    "{file}: this plan has {runs} runs; a study makes {most} at most. Take fewer points, what-ifs or draws, or several plans.",
  "study.tooManyCases":
    "{file}: this plan has {cases} rigs and points; a study takes {most} at most. Take fewer points, or several plans.",
  "study.nowhere": "{file}: none of its rigs has what {event} needs. Leave it out, or name a part that they have.",
  "study.noRuns": "{file}: none of its rigs has any of its what-ifs; there is nothing to run.",
  "study.noFolder": "--out: name the folder that results go into.",
  "study.noSuchFolder": "{folder}: there is no such folder",
  "study.shard": '--shard: got "{text}"; expected i/n, such as 2/16, i from 1 to n, n at most {most}.',
  "study.noRoom": "{folder}: about {needed} MB are needed, and {room} MB are left on that disk.",
  "study.notWritten":
    "{file}: the results could not be written: {why}. What is there is whole; the same call goes on from it.",
  "study.locked": "{file}: another program is writing this shard ({who}). Wait for it, or take another shard.",
  "study.damaged":
    "{file}: line {line} is no result of a run. Something else has written into this file; nothing was changed.",
  "study.twice":
    "{file}: line {line} has run {run} a second time. Something else has written into this file; nothing was changed.",
  "study.notOurs": "{file}: this file does not begin as results of a study do; nothing was changed.",
  "study.otherPlan":
    '{file}: these are results of another plan ("{name}"), or the plan or one of its rigs has changed since. Take another folder.',
  "study.otherVersion":
    "{file}: these results were made by version {theirs} or another build of it, this is {ours}; their numbers may differ. Take another folder.",
  "study.dropped": "The last line was torn when the program before was ended; that run is made again.",
  "study.done": "{made} {made|run|runs} made, {had} were there, of {of} in all.",
  "study.status": "{done} of {of} runs are there, in {files} {files|file|files}.",
  "study.nothing": "{list}: there are no results of a study here.",
  "study.missing": "{missing} of {of} runs are missing. Make them first, or take --partial.",
  "study.differs": "Run {run} is another one in {file} than in {other}: they cannot both be right.",
  "study.merged": "{runs} runs written to {file}.",
  "class.expected": "in falls",
  "class.afterFailure": "after a failure",
} as const satisfies Record<string, string>;

export type SweepKey = keyof typeof SWEEP_ENGLISH;
