/** Sentences on a load cell's recording, in a file of their own because only the terminal says them. */
export const MEASURED_ENGLISH = {
  "channel.leash": "in the leash",
  "channel.mainA": "in the main line at anchor A",
  "channel.mainB": "in the main line at anchor B",
  "channel.backupA": "in the backup at anchor A",
  "channel.backupB": "in the backup at anchor B",
  "channel.anchorA": "at anchor A, under both lines",
  "channel.anchorB": "at anchor B, under both lines",
  head: "{event}, measured {channel}",
  source: "Recording: {source}; {duration} at {rate} samples a second, {filter}.",
  "filter.done": "filtered (CFC 60) as it came",
  "filter.here": "filtered here (CFC 60), as the model's forces are",
  "filter.none": "not filtered",
  synthetic: "This recording is synthetic. It says nothing about the model.",
  model: "Model: {draws} draws of all that is not known exactly, {mesh} mesh{mass}.",
  "mesh.quick": "coarse",
  "mesh.standard": "standard",
  "mesh.fine": "fine",
  mass: ", walker {mass}",
  alignment:
    "Alignment: the model's first moment lies at {at} of the recording; the draws differ by {spread}. Left over: {off} (root mean square over the catch).",
  "table.measured": "Measured",
  "table.median": "Model's middle",
  "table.draws": "Its draws",
  "name.peak": "Peak",
  "name.impulse": "Impulse over the catch",
  "measured.exact": "{value}",
  "measured.atLeast": "at least {value}",
  "place.below": "below all draws: the model errs to the safe side here",
  "place.within": "within the draws: {below} of {draws} lie below it",
  "place.above": "above all draws: the model errs to the unsafe side here",
  "place.open": "open: {below} of {draws} lie below what was seen, and more may",
  one: "One recording is one check. It says how far the model was off in this fall, not in others.",
  "note.gap": "No force is known from {from} to {to}.",
  "note.saturated":
    "Between {from} and {to} the force stands at {force}: the cell was at its limit. What it pulled above that is not known.",
  "note.overload":
    "Between {from} and {to} the recorder wrote an overload instead of a force: the cell was beyond its limit. What it pulled there is not known.",
  "note.negative":
    "{samples} {samples|sample lies|samples lie} below zero, down to {least}. A line does not push: the cell's zero is off. Nothing was added.",
  "note.reversed": "All forces were below zero and were turned round.",
  "note.slow": "{rate} samples a second are too few to filter (600 are needed): a peak may lie between two of them.",
  "note.begins": "The time axis begins at {at}; times here count from the first sample.",
  "note.uneven": "Samples are {least} to {most} apart; between them straight lines were taken.",
  "note.more": "{count} more such {count|fault|faults} of the recording.",
  "use.all": "The recording covers the whole catch.",
  "use.noImpulse":
    "The recording does not cover the whole catch: there is no impulse to compare, and the peak is a least value.",
  "use.elsewhere":
    "The force is larger outside of the compared catch: {force} at {at}. If that was another fall, cut the file to the one that is meant. The peak counts as a least value.",
  "use.part": "The faults noted above lie in the catch: it pulled at least the measured force, and maybe more.",
  failed: "{count} {count|draw|draws} gave no numbers to trust and {count|is|are} left out.",
  "why.noDraws": "no draw of the model gave numbers to trust: {list}",
  "why.noOverlap":
    "the recording nowhere covers half of a catch of the model. Is it of this fall, and does it hold the seconds around it?",
  badEvent:
    'the line "# what-if" says "{event}"; expected an event as the command line writes one, such as fall@0.5 or fails@0,hanging@0.25',
} as const;

export type MeasuredKey = keyof typeof MEASURED_ENGLISH;
