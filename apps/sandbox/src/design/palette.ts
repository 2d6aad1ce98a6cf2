/** The colours of tokens.css as values, for what draws on a canvas and cannot read CSS. */
export type Theme = "light" | "dark";

const LIGHT = {
  paper: "#faf8f3",
  raised: "#ffffff",
  ink: "#1d2226",
  softInk: "#59636b",
  rule: "#e2ddd2",
  edge: "#857f72",
  accent: "#0b5d6b",
  onAccent: "#ffffff",
  accentWash: "#e3eeee",
  holds: "#0072b2",
  holdsInk: "#00619a",
  thin: "#e69f00",
  thinInk: "#855800",
  fails: "#d55e00",
  failsInk: "#ad4500",
  lineMain: "#0b5d6b",
  lineBackup: "#8a4a7d",
  lineLeash: "#1d2226",
  lineConnection: "#6d6a1e",
  ghost: "#9aa1a5",
};
export type Palette = Readonly<typeof LIGHT>;
const DARK: Palette = {
  paper: "#14191c",
  raised: "#1c2327",
  ink: "#eef0ec",
  softInk: "#a5b0b3",
  rule: "#2c363b",
  edge: "#728087",
  accent: "#63c5d2",
  onAccent: "#10191b",
  accentWash: "#1d3338",
  holds: "#56b4e9",
  holdsInk: "#7cc4ee",
  thin: "#e69f00",
  thinInk: "#f0b43c",
  fails: "#e8722a",
  failsInk: "#ff9459",
  lineMain: "#63c5d2",
  lineBackup: "#d59ac8",
  lineLeash: "#eef0ec",
  lineConnection: "#c9c566",
  ghost: "#66737a",
};
export const PALETTES: Readonly<Record<Theme, Palette>> = { light: LIGHT, dark: DARK };
