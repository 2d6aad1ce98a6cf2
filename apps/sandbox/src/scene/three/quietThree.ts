import { setConsoleFunction } from "three";

/** react-three-fiber 9 still makes a THREE.Clock and so draws a deprecation warning that nobody here can act on. */
const KNOWN = "Clock: This module has been deprecated";

setConsoleFunction((kind: string, message: string, ...rest: unknown[]) => {
  if (message.includes(KNOWN)) return;
  if (kind === "error") console.error(message, ...rest);
  else if (kind === "warn") console.warn(message, ...rest);
});
