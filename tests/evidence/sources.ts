/** Where the expected values of the checks are from: one entry for each source, however many checks rest on it. */

/**
 * How an expected value is known. _printed_: read in the source itself. _second hand_: read where somebody else quotes it. _from memory_: not
 * looked up again. _other program_: computed by a program of other authors. _computed_: by us, from an equation that the source names.
 */
export type Kind = "printed" | "second hand" | "from memory" | "other program" | "computed";

export interface Source {
  readonly title: string;
  /** Year, or version and date; "not known" where we do not know it. */
  readonly year: string;
  readonly kind: Kind;
  /** Part of the page in which the checks of this source stand. */
  readonly part: "theory" | "programs";
}

export const SOURCES = {
  codeAster: {
    title: "code_aster, validation test SSNL114, a heavy elastic cable",
    year: "manual V6.02.114",
    kind: "printed",
    part: "theory",
  },
  moorPy: {
    title: "MoorPy (NREL), unit test tests/test_catenary.py",
    year: "commit 9191d188",
    kind: "printed",
    part: "theory",
  },
  catenary: { title: "Equations of the elastic catenary", year: "textbook", kind: "computed", part: "theory" },
  saintVenant: {
    title: "Timoshenko & Goodier, Theory of Elasticity, 3rd ed., longitudinal impact (structure from memory)",
    year: "1970",
    kind: "computed",
    part: "theory",
  },
  recoil: {
    title: "Kolsky, Stress Waves in Solids (equation from memory)",
    year: "1953",
    kind: "computed",
    part: "theory",
  },
  smith: {
    title:
      "J. C. Smith et al., Textile Res. J. 28, 288; prestrain by F. O. Ringleb, J. Appl. Mech. 24, 417 (equations from memory)",
    year: "1958, 1957",
    kind: "computed",
    part: "theory",
  },
  irvine: {
    title: "H. M. Irvine & T. K. Caughey, free vibrations of a suspended cable (equation from memory)",
    year: "1974",
    kind: "computed",
    part: "theory",
  },
  lumpedString: {
    title: "Modes of a string of equal masses, closed form",
    year: "textbook",
    kind: "computed",
    part: "theory",
  },
  wexler: {
    title: "A. Wexler, Am. Alpine J. 7, 379: impact-force equation, as encyclopaedias print it",
    year: "1950",
    kind: "computed",
    part: "theory",
  },
  dampedDrop: {
    title: "A mass falling on a damped spring, closed form",
    year: "textbook",
    kind: "computed",
    part: "theory",
  },
  pendulum: {
    title: "Period of the large pendulum, elliptic integral",
    year: "textbook",
    kind: "computed",
    part: "theory",
  },
  ferry: {
    title: "J. D. Ferry, Viscoelastic Properties of Polymers, 3rd ed., ch. 1 to 3 (equations from memory)",
    year: "1980",
    kind: "computed",
    part: "theory",
  },
  legs: { title: "Two legs in line with the load: F/(2·cos(θ/2))", year: "textbook", kind: "computed", part: "theory" },
  capstan: { title: "Capstan equation (Euler, Eytelwein)", year: "textbook", kind: "computed", part: "theory" },
  cfc: {
    title: "SAE J211-1 and ISO 6487, channel class 60, limits of the gain",
    year: "not known",
    kind: "from memory",
    part: "theory",
  },
  butterworth: {
    title: "Two-pole Butterworth filter run both ways, closed form",
    year: "textbook",
    kind: "computed",
    part: "theory",
  },
  cmstatr: {
    title: "Validation vignette of the R package cmstatr, after CMH-17-1G",
    year: "not known",
    kind: "printed",
    part: "theory",
  },
  scipy: {
    title: "scipy 1.17: likelihood by Nelder–Mead, exact factors",
    year: "version 1.17",
    kind: "other program",
    part: "programs",
  },
  nistLives: { title: "NIST/SEMATECH e-Handbook, 8.4.1.3", year: "web page", kind: "printed", part: "theory" },
  nistTolerance: { title: "NIST/SEMATECH e-Handbook, 7.2.6.3", year: "web page", kind: "from memory", part: "theory" },
  reliability: {
    title: "Documentation of the Python package reliability",
    year: "not known",
    kind: "printed",
    part: "theory",
  },
  openTurns: {
    title: "OpenTURNS benchmark set of reliability problems",
    year: "not known",
    kind: "printed",
    part: "theory",
  },
  quadrature: {
    title: "Definition of the quantity, by quadrature",
    year: "textbook",
    kind: "computed",
    part: "theory",
  },
  scholz: {
    title: "F. W. Scholz & M. A. Stephens, smoothness of paper",
    year: "1987",
    kind: "from memory",
    part: "theory",
  },
  en1990: {
    title: "EN 1990, Annex D, clause D7.2, table D1, as an open R function has it",
    year: "2002",
    kind: "second hand",
    part: "theory",
  },
  toleranceTable: {
    title: "Non-central t distribution, two ways; ISO 16269-6 for a known spread; Natrella's approximation",
    year: "textbook",
    kind: "computed",
    part: "theory",
  },
  cmhFactors: {
    title: "90/95 factors as CMH-17 defines them, exact values",
    year: "handbook 1G",
    kind: "computed",
    part: "theory",
  },
  jstat: { title: "jstat, statistics in JavaScript", year: "version 1.9.6", kind: "other program", part: "programs" },
  odex: {
    title: "ODEX of E. Hairer and G. Wanner, a general-purpose integrator, npm port",
    year: "version 2.0.4",
    kind: "other program",
    part: "programs",
  },
  lineProgram: {
    title: "An independent program for the same problems (another language, other authors, finer meshes)",
    year: "kept results",
    kind: "other program",
    part: "programs",
  },
} as const satisfies Readonly<Record<string, Source>>;

export type SourceKey = keyof typeof SOURCES;
