/** Sentences of the terminal on options that it cannot take as they were given. No page loads it. */
export const OPTIONS_ENGLISH = {
  wholeNumber: '{option}: got "{got}"; expected a whole number from {least} to {most}.',
  cacheEmpty: "--cache: this is empty; name a folder.",

  "judge.refused": '--judge: got "{got}"; {why}',
  "judge.form": 'expected PART=FACTOR: REASON or PART: REASON. Example: "leash=0.7: looks furry at the ring"',
  "judge.factor": "the factor: {message}",
  "judge.tape": '"{part}" is {name}: tapes are made to give way, and no verdict judges them. Parts: {parts}.',
  "judge.part": "{part} ({name})",
  "judge.noPart": 'there is no part "{part}". Parts: {parts}.',

  "spread.refused":
    '--spread: got "{got}"; expected INPUT=SPREAD, such as mass=5% or mass=0.05, at most 100 %; 0 takes it for exactly known.',
  "spread.inputs": "Inputs: {inputs}.",

  // Messages in two lines
  "whatIf.refused":
    '--what-if: got "{got}"; expected fall@PLACE, fails@PLACE,WALKER@PLACE or leg@LEG,WALKER@PLACE, WALKER being hanging, standing (not with a leg) or\ncaught, PLACE a fraction of the line (0 at anchor A, 1 at anchor B) and LEG such as A1. The walker must be between the anchors. Example: fails@0,hanging@0.5',

  "compare.count": "compare takes two to four rigs, got {count}.",

  "content.refused": '--content: "{got}" is neither {first} nor {second} (percent of parts)',
  "figures.sameFile": "--table: this is the file of --plot; take another",
  "figures.needsPlot": "--dark: needs --plot FILE.svg",
  "figures.needsFile": "--{option}: needs --plot FILE.svg or --table FILE.csv",
  "figures.unknown": '--figure: "{got}" is none of {kinds}',
  "figures.none": "{file}: this log has nothing for {kinds}",
  "figures.or": "{kinds} or {last}",
} as const;
