/** A Slurm of two nodes on this machine, with all its files in one folder; ended with the test. */
import { type ChildProcess, spawn, spawnSync } from "node:child_process";
import { chownSync, existsSync, mkdirSync, mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { hostname, tmpdir } from "node:os";
import { join } from "node:path";
import { searchPath } from "./packages.ts";

const host = hostname().split(".")[0]!;
/** Away from Slurm's own ports, beside which another one may run. */
const PORTS = { control: 17_817, node1: 17_001, node2: 17_002 };

const configuration = (folder: string, socket: string) => `ClusterName=test
SlurmctldHost=${host}
SlurmctldPort=${PORTS.control}
SlurmUser=root
AuthType=auth/munge
AuthInfo=socket=${socket}
ProctrackType=proctrack/pgid
TaskPlugin=task/none
SelectType=select/cons_tres
SelectTypeParameters=CR_Core
ReturnToService=2
MpiDefault=none
StateSaveLocation=${folder}/state
SlurmdSpoolDir=${folder}/spool.%n
SlurmdPidFile=${folder}/slurmd.%n.pid
SlurmctldPidFile=${folder}/slurmctld.pid
SlurmctldLogFile=${folder}/slurmctld.log
SlurmdLogFile=${folder}/slurmd.%n.log
NodeName=n1 NodeHostname=${host} Port=${PORTS.node1} CPUs=1 RealMemory=1000
NodeName=n2 NodeHostname=${host} Port=${PORTS.node2} CPUs=1 RealMemory=1000
PartitionName=all Nodes=n1,n2 Default=YES MaxTime=INFINITE State=UP
`;

export interface Slurm {
  readonly env: NodeJS.ProcessEnv;
  readonly stop: () => void;
}

export async function startSlurm(): Promise<Slurm> {
  const folder = mkdtempSync(join(tmpdir(), "secondline-slurm-"));
  for (const one of ["state", "spool.n1", "spool.n2"]) mkdirSync(join(folder, one));
  const munge = startMunge(folder);
  const file = join(folder, "slurm.conf");
  writeFileSync(file, configuration(folder, munge.socket));
  const env = { ...process.env, PATH: searchPath, SLURM_CONF: file };
  const begin = (program: string, ...args: string[]): ChildProcess =>
    spawn(program, ["-D", "-f", file, ...args], { env, stdio: "ignore" });
  const daemons = [munge.daemon, begin("slurmctld"), begin("slurmd", "-N", "n1"), begin("slurmd", "-N", "n2")];
  const stop = () => {
    for (const one of [...daemons].reverse()) one.kill("SIGTERM");
  };
  for (let tries = 0; tries < 120; tries++) {
    const { stdout } = spawnSync("sinfo", ["-h", "-o", "%T %D"], { env, encoding: "utf8" });
    if (stdout.trim() === "idle 2") return { env, stop };
    await new Promise((resolve) => setTimeout(resolve, 500));
  }
  stop();
  const log = join(folder, "slurmctld.log");
  throw new Error(`Slurm did not start: ${existsSync(log) ? readFileSync(log, "utf8").slice(-2000) : "no log"}`);
}

/** With a key and a socket of its own, run as root: it serves this test alone. */
function startMunge(folder: string): { readonly daemon: ChildProcess; readonly socket: string } {
  const own = join(folder, "munge");
  mkdirSync(own, { mode: 0o755 });
  const key = join(own, "key");
  writeFileSync(key, Buffer.from(Array.from({ length: 128 }, (_, i) => (i * 73 + 41) % 256)), { mode: 0o400 });
  chownSync(key, process.getuid!(), process.getgid!());
  const socket = join(own, "socket");
  const files = [`--key-file=${key}`, `--socket=${socket}`, `--pid-file=${join(own, "pid")}`];
  const logs = [`--log-file=${join(own, "log")}`, `--seed-file=${join(own, "seed")}`];
  const daemon = spawn("munged", ["--foreground", "--force", ...files, ...logs], {
    env: { ...process.env, PATH: searchPath },
    stdio: "ignore",
  });
  return { daemon, socket };
}
