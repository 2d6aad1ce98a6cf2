let known: boolean | undefined;

/** Whether the browser can draw in space; asked once, the trial canvas is given back. */
export function hasWebGL(): boolean {
  known ??= tryWebGL();
  return known;
}

function tryWebGL(): boolean {
  try {
    const context = document.createElement("canvas").getContext("webgl2");
    context?.getExtension("WEBGL_lose_context")?.loseContext();
    return context !== null;
  } catch {
    return false;
  }
}
