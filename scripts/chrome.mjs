// Finds a Chromium-family browser for the tests; installs Debian's when there is none and we may.
import { execFileSync, spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import { platform } from "node:os";

const PLACES = {
  linux: [
    "/usr/bin/chromium",
    "/usr/bin/chromium-browser",
    "/usr/bin/google-chrome-stable",
    "/usr/bin/google-chrome",
    "/snap/bin/chromium",
    "/usr/bin/microsoft-edge",
  ],
  darwin: [
    "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
    "/Applications/Chromium.app/Contents/MacOS/Chromium",
  ],
  win32: [
    "C:/Program Files/Google/Chrome/Application/chrome.exe",
    "C:/Program Files (x86)/Google/Chrome/Application/chrome.exe",
    "C:/Program Files (x86)/Microsoft/Edge/Application/msedge.exe",
  ],
};

/** Path of a browser on this machine, or undefined. CHROME_PATH wins; if it names nothing, that is an error. */
export function findChrome() {
  const named = process.env.CHROME_PATH;
  if (named) {
    if (existsSync(named)) return named;
    throw new Error(`CHROME_PATH is ${named}, and there is no such file`);
  }
  return (PLACES[platform()] ?? []).find((path) => existsSync(path));
}

/** Path of a browser, after installing Debian's Chromium when there is none and apt-get may be used. */
export function ensureChrome() {
  const found = findChrome();
  if (found) return found;
  if (platform() === "linux" && existsSync("/usr/bin/apt-get")) {
    const asRoot = process.getuid?.() === 0;
    const mayUseSudo = !asRoot && spawnSync("sudo", ["-n", "true"]).status === 0;
    if (asRoot || mayUseSudo) {
      const apt = (...args) =>
        execFileSync(asRoot ? "apt-get" : "sudo", asRoot ? args : ["-n", "apt-get", ...args], {
          stdio: ["ignore", 2, 2],
          env: { ...process.env, DEBIAN_FRONTEND: "noninteractive" },
        });
      apt("update", "-q");
      apt("install", "-y", "-q", "--no-install-recommends", "chromium");
      const installed = findChrome();
      if (installed) return installed;
    }
  }
  throw new Error("The browser tests need Chrome or Chromium. Install one, or set CHROME_PATH to its executable.");
}

export const CHROME_ARGS = [
  ...(process.getuid?.() === 0 ? ["--no-sandbox"] : []),
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
  "--use-angle=swiftshader",
  "--enable-unsafe-swiftshader",
  "--disable-gpu-rasterization",
  "--disable-accelerated-2d-canvas",
];

/** Without WebGL, and without a graphics library that only a scene in space is worth. */
export const FLAT_ARGS = [
  ...CHROME_ARGS.filter((argument) => !argument.includes("swiftshader")),
  "--disable-gpu",
  "--disable-software-rasterizer",
];
