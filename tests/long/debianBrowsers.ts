/** Firefox and WebKit as Debian has them (`firefox-esr`; `webkit2gtk-driver` with `xvfb`): where they are, and how they are started. */
import { type ChildProcess, spawn } from "node:child_process";
import { existsSync } from "node:fs";

const FIREFOX = "/usr/bin/firefox-esr";
export const MINI_BROWSER = "/usr/lib/x86_64-linux-gnu/webkit2gtk-4.1/MiniBrowser";
export const WEBKIT_DRIVER = "/usr/bin/WebKitWebDriver";
const XVFB = "/usr/bin/Xvfb";

export const hasFirefox = existsSync(FIREFOX);
export const hasWebKit = [MINI_BROWSER, WEBKIT_DRIVER, XVFB].every((path) => existsSync(path));
export const WITHOUT_FIREFOX = "Firefox is not installed here (Debian: firefox-esr)";
export const WITHOUT_WEBKIT = "WebKit is not installed here (Debian: webkit2gtk-driver and xvfb)";

export interface Started {
  /** Ends the program and all that it started. */
  stop(): void;
}

/** Starts a program in a process group of its own. `onText`: gets what it writes. */
export function start(
  command: string,
  args: readonly string[],
  env: NodeJS.ProcessEnv = {},
  onText?: (text: string) => void,
): Started {
  const stdio = onText ? ("pipe" as const) : ("ignore" as const);
  const program = spawn(command, args, { env: { ...process.env, ...env }, stdio, detached: true });
  for (const stream of [program.stdout, program.stderr])
    stream?.on("data", (part: Buffer) => onText?.(part.toString()));
  return {
    stop() {
      if (isRunning(program)) process.kill(-program.pid!, "SIGKILL");
    },
  };
}

const isRunning = ({ pid, exitCode, signalCode }: ChildProcess): boolean =>
  pid !== undefined && exitCode === null && signalCode === null;

/** Firefox without a window. `profile`: an empty folder of its own. */
export const startFirefox = (profile: string, args: readonly string[]): Started =>
  start(FIREFOX, ["--headless", "--no-remote", "--profile", profile, ...args]);

/** A program of WebKit's on a screen that nobody sees. `language`: of the system, and so of the browser. */
export async function startWebKit(
  command: string,
  args: readonly string[],
  language = "en_US.UTF-8",
  onText?: (text: string) => void,
): Promise<Started> {
  // It takes a free number and writes it down.
  const screen = spawn(XVFB, ["-displayfd", "3", "-screen", "0", "1440x900x24", "-nolisten", "tcp"], {
    stdio: ["ignore", "ignore", "ignore", "pipe"],
  });
  const display = await new Promise<string>((resolve, reject) => {
    screen.stdio[3]!.once("data", (part: Buffer) => resolve(`:${part.toString().trim()}`));
    screen.once("exit", () => reject(new Error("Xvfb did not start")));
  });
  const env = { DISPLAY: display, LANG: language, LC_ALL: language, LIBGL_ALWAYS_SOFTWARE: "1" };
  const program = start(command, args, env, onText);
  return {
    stop() {
      program.stop();
      // Asked, not forced: it takes its lock along.
      screen.kill("SIGTERM");
    },
  };
}
