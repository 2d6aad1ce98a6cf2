import { execFileSync, spawnSync } from "node:child_process";
import {
  chmodSync,
  existsSync,
  linkSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { join } from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { bundle, demo, KEPT, scratch } from "./support/command.ts";

let entry: string;
beforeAll(async () => {
  entry = await bundle();
}, 60_000);

/** A command in a shell, where `secondline` is the command line. */
function shell(script: string, cwd = scratch()) {
  const program = `secondline() { "${process.execPath}" "${entry}" "$@"; }\n`;
  const { status, signal, stdout, stderr } = spawnSync("bash", ["-c", program + script], { cwd, encoding: "utf8" });
  return { status, signal, out: stdout, err: stderr };
}

const rig = demo("sound-rig.json");
const QUICK = `--set quick --accuracy quick ${KEPT.join(" ")}`;
const refused = (script: string, cwd?: string) => {
  const { status, out, err } = shell(script, cwd);
  expect(status).toBe(2);
  expect(out).toBe("");
  expect(err).not.toContain("    at ");
  expect(err.trim().split("\n")).toHaveLength(1);
  return err;
};

describe("the file that report writes is checked before anything is computed", () => {
  it("its folder must exist and may be written in", () => {
    expect(refused(`secondline report ${rig} --out no/where.html`)).toContain(
      "no/where.html: there is no such folder.",
    );
    expect(refused(`touch file; secondline report ${rig} --out file/x.html`)).toContain("is a file, not a folder");
    expect(refused(`secondline report ${rig} --out ${"x".repeat(300)}`)).toContain("this name is too long");
    expect(refused(`secondline report ${rig} --out ""`)).toContain("name the file to write");
  });

  it("it is neither a folder nor a device", () => {
    expect(refused(`mkdir dir; secondline report ${rig} --force --out dir`)).toContain("dir: this is a folder");
    expect(refused(`secondline report ${rig} --force --out /dev/null`)).toContain("not an ordinary file");
    expect(refused(`ln -s nowhere link; secondline report ${rig} --force --out link`)).toContain("leads nowhere");
  });

  it("it is not the input, by whatever name, even with --force", () => {
    const dir = scratch();
    const text = readFileSync(rig, "utf8");
    writeFileSync(join(dir, "rig.json"), text);
    symlinkSync("rig.json", join(dir, "link.json"));
    linkSync(join(dir, "rig.json"), join(dir, "same.json"));
    for (const name of ["rig.json", "./rig.json", "link.json", "same.json"])
      expect(refused(`secondline report rig.json --force --out ${name}`, dir)).toContain("this is the input rig.json");
    expect(readFileSync(join(dir, "rig.json"), "utf8")).toBe(text);
  });

  it("it is not overwritten without --force", () => {
    expect(refused(`echo old > r.html; secondline report ${rig} --out r.html`)).toContain("--force overwrites it");
  });

  // Root may write what may only be read.
  if (process.getuid?.() !== 0) {
    it("it is not overwritten when it may only be read", () => {
      const dir = scratch();
      writeFileSync(join(dir, "r.html"), "old");
      chmodSync(join(dir, "r.html"), 0o444);
      expect(refused(`secondline report ${rig} --force --out r.html`, dir)).toContain("you may not write here");
    });
  }
});

describe("the file that report writes", () => {
  it("replaces the old one whole, behind a link too, and keeps its permissions", () => {
    const dir = scratch();
    mkdirSync(join(dir, "kept"));
    writeFileSync(join(dir, "kept/r.html"), "old");
    chmodSync(join(dir, "kept/r.html"), 0o640);
    symlinkSync("kept/r.html", join(dir, "link.html"));
    expect(shell(`secondline report ${rig} ${QUICK} --force --out link.html`, dir).status).toBe(0);
    expect(readFileSync(join(dir, "kept/r.html"), "utf8")).toContain("</html>");
    expect(execFileSync("stat", ["-c", "%a", join(dir, "kept/r.html")], { encoding: "utf8" })).toBe("640\n");
    expect(readdirSync(dir)).toEqual(["kept", "link.html"]);
    expect(readdirSync(join(dir, "kept"))).toEqual(["r.html"]);
  });

  it("leaves the old one as it was when it does not fit, and nothing beside it", () => {
    const dir = scratch();
    writeFileSync(join(dir, "r.html"), "old");
    const { status, err } = shell(`ulimit -f 8; secondline report ${rig} ${QUICK} --force --out r.html`, dir);
    expect(status).toBe(2);
    expect(err).toContain("r.html: the file could not be written: the file would be larger than is allowed here.");
    expect(readFileSync(join(dir, "r.html"), "utf8")).toBe("old");
    expect(readdirSync(dir)).toEqual(["r.html"]);
  });

  it("is not written over one that has come there while it was computed", () => {
    const dir = scratch();
    // A pipe as the rig: it opens when the command reads it, which is after the check of the file to write.
    const script = `mkfifo rig; secondline report rig ${QUICK} --out r.html & exec 3> rig
      echo other > r.html; cat ${rig} >&3; exec 3>&-; wait $!`;
    const { status, err } = shell(script, dir);
    expect(err).toContain("--force overwrites it");
    expect(status).toBe(2);
    expect(readFileSync(join(dir, "r.html"), "utf8")).toBe("other\n");
    expect(readdirSync(dir)).toEqual(["r.html", "rig"]);
  });
});

describe("standard output", () => {
  it("that is closed by its reader ends quietly", () => {
    const { err, out } = shell(`secondline check ${rig} ${QUICK} | true; echo "\${PIPESTATUS[0]}"`);
    expect(err).toBe("");
    expect(out).toBe("0\n");
    expect(shell("secondline --help | true").err).toBe("");
  });

  if (existsSync("/dev/full")) {
    it("that is full is told, with exit status 2", () => {
      for (const command of [`check ${rig} ${QUICK}`, `validate ${rig}`, "--help"]) {
        const { status, err } = shell(`secondline ${command} > /dev/full`);
        expect(err).toBe("The output could not be written: no space is left on the device.\n");
        expect(status).toBe(2);
      }
    });
  }

  it("that takes a part only is told, not cut short without a word", () => {
    const { status, err } = shell(`ulimit -f 1; secondline check ${rig} ${QUICK} --json > part.json`);
    expect(err).toContain("The output could not be written: the file would be larger than is allowed here.");
    expect(status).toBe(2);
  });
});
