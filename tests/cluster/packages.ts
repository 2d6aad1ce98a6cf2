/** Debian's packages that a test needs: installed where that is allowed, and said where it is not. */
import { spawnSync } from "node:child_process";

const PLACES = ["/usr/bin", "/usr/sbin", "/bin", "/sbin"];
export const searchPath = [process.env.PATH, ...PLACES].join(":");

const has = (program: string): boolean =>
  spawnSync("sh", ["-c", `command -v ${program}`], { env: { ...process.env, PATH: searchPath } }).status === 0;

/** Undefined when all programs are there, or were installed; else why not. */
export function missing(programs: readonly string[], packages: readonly string[]): string | undefined {
  const lacking = () => programs.filter((one) => !has(one));
  if (lacking().length === 0) return undefined;
  if (process.getuid?.() === 0 && has("apt-get")) {
    const env = { ...process.env, DEBIAN_FRONTEND: "noninteractive" };
    spawnSync("apt-get", ["update", "-qq"], { env });
    spawnSync("apt-get", ["install", "-y", "-qq", "--no-install-recommends", ...packages], { env });
  }
  const left = lacking();
  return left.length === 0 ? undefined : `SKIPPED: ${left.join(", ")} is not here (Debian: ${packages.join(", ")}).`;
}
