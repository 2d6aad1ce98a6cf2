/**
 * What the page may load and do: everything from its own place, nothing in line, nothing evaluated but the engine's WebAssembly. The built page
 * says so itself, for hosts that send no headers; `vite preview` sends the headers too. SECURITY.md lists them for other hosts.
 */
const POLICY = {
  "default-src": "'self'",
  // The engine's kernel is WebAssembly, compiled from bytes in the script.
  "script-src": "'self' 'wasm-unsafe-eval'",
  // Pictures that the page draws itself, before they are saved or printed.
  "img-src": "'self' data: blob:",
  "object-src": "'none'",
  "base-uri": "'none'",
  "form-action": "'none'",
};

const written = (policy: Readonly<Record<string, string>>) =>
  Object.entries(policy)
    .map(([name, value]) => `${name} ${value}`)
    .join("; ");

/** For the page's own meta tag, which cannot say who may frame it. */
export const META_POLICY = written(POLICY);

export const HEADERS: Readonly<Record<string, string>> = {
  "Content-Security-Policy": written({ ...POLICY, "frame-ancestors": "'none'" }),
  "X-Content-Type-Options": "nosniff",
  "Referrer-Policy": "no-referrer",
  "Permissions-Policy": "camera=(), microphone=(), geolocation=(), payment=(), usb=(), serial=()",
  "Cross-Origin-Opener-Policy": "same-origin",
};
