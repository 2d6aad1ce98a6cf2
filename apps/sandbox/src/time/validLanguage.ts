/**
 * A browser may name a language that is none ("en-US@posix"). The plots ask for number words in it as soon as they are loaded, which
 * throws: then they are told English. Loaded before them.
 */
try {
  new Intl.NumberFormat(globalThis.navigator?.language);
} catch {
  Object.defineProperty(navigator, "language", { value: "en", configurable: true });
}
