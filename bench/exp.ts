import { readFileSync, writeFileSync } from "node:fs";
import { cpus } from "node:os";
import { isMainThread, parentPort, Worker, workerData } from "node:worker_threads";
import { readRig } from "@secondline/rig";
import {
  assessRig,
  classOf,
  demandsOn,
  eventBefore,
  executeRun,
  type GoodRun,
  type RunOrder,
  rigStrengths,
  Sampler,
  search,
  type WhatIf,
  whatIfKey,
} from "@secondline/scenarios";

const rigOf = (file: string) => {
  const r: any = readRig(readFileSync(file, "utf8"));
  return r.rig ?? r.value;
};
if (!isMainThread) {
  const rig = rigOf(workerData.file);
  const st = rigStrengths(rig, []);
  parentPort!.on("message", ({ id, order, chain }: any) => {
    let before: any;
    let out: any;
    for (const o of chain as RunOrder[]) {
      const g = executeRun(rig, st, { ...o, ...(before ? { before } : {}) });
      let s = g.next();
      while (!s.done) s = g.next();
      out = s.value;
      if (!out.ok) break;
      before = out;
    }
    parentPort!.postMessage({ id, out });
  });
} else {
  const [, , file, out, nRandom = "400", nDraws = "200", jobs = String(cpus().length)] = process.argv;
  const rig = rigOf(file!);
  const st = rigStrengths(rig, []);
  const workers = Array.from(
    { length: Number(jobs) },
    () => new Worker(new URL(import.meta.url), { workerData: { file } }),
  );
  let next = 0;
  const queue: any[] = [];
  const pend = new Map<number, any>();
  const idle = [...workers];
  const pump = () => {
    while (idle.length && queue.length) {
      const w = idle.pop()!;
      const j = queue.shift();
      pend.set(j.id, j);
      w.postMessage({ id: j.id, chain: j.chain });
    }
  };
  for (const w of workers)
    w.on("message", ({ id, out }: any) => {
      pend.get(id).resolve(out);
      pend.delete(id);
      idle.push(w);
      pump();
    });
  const go = (chain: RunOrder[]) =>
    new Promise<any>((resolve) => {
      queue.push({ id: next++, chain, resolve });
      pump();
    });
  const t0 = performance.now();
  const work = search(assessRig(rig), { accuracy: "standard" });
  let s = work.next();
  while (!s.done) s = work.next(await Promise.all(s.value.orders.map((o: any) => go([o]).then((r) => r))));
  const { outcome: o, demands } = s.value as any;
  const log: string[] = [];
  const say = (x: string) => {
    log.push(x);
    console.log(x);
  };
  say(
    `${rig.name} ${o.verdict} runs ${o.search.runs} events ${o.whatIfs.length} ${((performance.now() - t0) / 1000).toFixed(1)} s complete ${o.search.complete} ${JSON.stringify(o.reasons.slice(0, 8))}`,
  );
  for (const p of o.parts)
    for (const [c, x] of Object.entries<any>(p.byClass))
      say(
        `${p.id.padEnd(20)} ${c.padEnd(12)} ${p.verdict.padEnd(6)} r ${x.margin.toFixed(2)} ${x.marginInterval.map((v: number) => v.toFixed(2)).join("-")} E ${(x.demand / 1000).toFixed(2)} mid ${(x.middle / 1000).toFixed(2)} max ${(x.load / 1000).toFixed(2)} n ${x.runs} ${o.whatIfs[x.whatIf].key}`,
      );
  say(JSON.stringify(o.falls.leastFeet) + JSON.stringify(o.falls.deepest) + JSON.stringify(o.person));
  let seed = 12345;
  const rnd = () => {
    seed = (Math.imul(seed, 1103515245) + 12345) & 0x7fffffff;
    return ((seed >>> 8) % 1e6) / 1e6;
  };
  const near = Math.min(0.2, 3 / rig.span);
  const at = () => Number((near + (1 - 2 * near) * rnd()).toFixed(4));
  const randomEvent = (): WhatIf => {
    const k = rnd();
    if (k < 0.2 || !rig.backup) return { kind: "leashFall", at: at() };
    if (k < 0.85) {
      const c = rnd();
      const cutAt = c < 0.25 ? 0 : c < 0.5 ? 1 : Number(rnd().toFixed(4));
      const pose = (["hanging", "standing", "caught"] as const)[Math.floor(rnd() * 3)]!;
      return {
        kind: "mainFails",
        at: at(),
        cutAt,
        walker: pose,
        ...(pose === "caught" ? { late: Number((0.3 * rnd() - 0.15).toFixed(3)) } : {}),
      } as any;
    }
    const anchor = rnd() < 0.5 ? "A" : "B";
    const n = (anchor === "A" ? rig.anchorA : rig.anchorB).points.length;
    if (n < 2) return { kind: "leashFall", at: at() };
    return {
      kind: "legFails",
      anchor,
      leg: rnd() < 0.5 ? 0 : n - 1,
      walker: "caught",
      at: at(),
      late: Number((0.3 * rnd() - 0.15).toFixed(3)),
    } as any;
  };
  const sampler = new Sampler(rig, { seed: 777 });
  const chain = (event: WhatIf, draw: any): RunOrder[] => {
    const b = eventBefore(event);
    return [...(b ? chain(b, draw) : []), { event, draw, accuracy: "standard" } as RunOrder];
  };
  const share = (part: any, event: WhatIf, run: GoodRun) => {
    const d = demandsOn(
      part,
      [{ index: 0, event, runs: [run], deviates: [[]] }],
      part.id === "backup" ? st.backupLength : st.mainLength,
    )[0];
    return d?.load === undefined ? undefined : d.load / d.strength5;
  };
  const parts = st.parts.filter((p: any) => o.parts.some((q: any) => q.id === p.id));
  const randoms = Array.from({ length: Number(nRandom) }, randomEvent);
  const looked = await Promise.all(
    randoms.map(async (event) => ({ event, run: await go(chain(event, sampler.draws(event, 0, 1)[0]!.draw)) })),
  );
  say(
    `random events done ${((performance.now() - t0) / 1000).toFixed(0)} s, failed ${looked.filter((l) => !l.run.ok).length}`,
  );
  const need: any = { expected: rig.requiredFactor.value, afterFailure: rig.requiredAfterFailure };
  const top = (f: (l: any) => number, n: number) =>
    [...looked]
      .filter((l) => l.run.ok)
      .sort((a, b) => f(b) - f(a))
      .slice(0, n)
      .map((l) => l.event);
  const byRig = top(
    (l) => Math.max(...parts.map((p: any) => (share(p, l.event, l.run) ?? 0) * need[classOf(l.event)])),
    5,
  );
  const lowest = top((l) => l.run.drop, 2);
  const own = [
    ...new Map(
      o.parts
        .flatMap((p: any) => Object.values<any>(p.byClass))
        .filter((x: any) => x.required / x.margin > 1 / 3)
        .map((x: any) => [o.whatIfs[x.whatIf].key, o.whatIfs[x.whatIf].whatIf]),
    ).values(),
  ] as WhatIf[];
  const perPart = [
    ...new Map(
      parts
        .flatMap((p: any) =>
          ["expected", "afterFailure"].flatMap((c) =>
            top((l) => (classOf(l.event) === c ? (share(p, l.event, l.run) ?? 0) : 0), 1),
          ),
        )
        .map((e: any) => [whatIfKey(e), e]),
    ).values(),
  ] as WhatIf[];
  const sets: [string, WhatIf[]][] = [
    ["own", own],
    ["nominated", byRig],
    ["lowest", lowest],
    ["perPart", perPart.slice(0, 12)],
    ["random", randoms.slice(0, 10)],
  ];
  const done = new Map<string, any[]>();
  const summary: Record<string, number[]> = {};
  for (const [name, events] of sets)
    await Promise.all(
      events.map(async (event) => {
        const key = whatIfKey(event);
        if (done.has(key)) return;
        done.set(key, []);
        const draws = sampler.draws(event, 8, 8 + Number(nDraws));
        done.set(
          key,
          (await Promise.all(draws.map((d) => go(chain(event, d.draw))))).filter((r: any) => r.ok),
        );
      }),
    );
  const q95 = (v: number[]) => {
    const x = [...v].sort((a, b) => a - b);
    const h = 0.95 * (x.length - 1);
    const i = Math.floor(h);
    return x[i]! + (h - i) * ((x[i + 1] ?? x[i]!) - x[i]!);
  };
  for (const [name, events] of sets)
    for (const event of events) {
      const runs = done.get(whatIfKey(event))!;
      const c = classOf(event);
      const rows: string[] = [];
      for (const p of parts as any[]) {
        const mine = o.parts.find((q: any) => q.id === p.id).byClass[c];
        if (!mine) continue;
        const v = runs.map((r) => share(p, event, r) ?? 0);
        const E = 1 / mine.margin;
        const f = q95(v);
        const ratio = f / E;
        const ex = v.filter((x) => x > E).length / v.length;
        (summary[name] ??= []).push(ratio);
        const ownEvent = o.whatIfs[mine.whatIf].key === whatIfKey(event);
        if (ownEvent) (summary["at own worst"] ??= []).push(ratio);
        if (ratio > 1.03 || (ownEvent && need[c] * E > 1 / 3))
          rows.push(
            `${p.id} ${c} ${ownEvent ? "OWN" : ""} q95/E ${ratio.toFixed(3)} exceed ${(100 * ex).toFixed(1)}% r ${mine.margin.toFixed(2)} n ${mine.runs} [${mine.demandInterval.map((d: number) => (d / mine.demand).toFixed(2))}] worst ${o.whatIfs[mine.whatIf].key}`,
          );
      }
      const dd = q95(runs.map((r) => r.drop)) / o.falls.deepest.drop;
      if (dd > 1.0)
        rows.push(
          `drop q95/E ${dd.toFixed(3)} max ${(Math.max(...runs.map((r) => r.drop)) / o.falls.deepest.drop).toFixed(3)}`,
        );
      say(`${name} ${whatIfKey(event)} n ${runs.length}${rows.length ? "\n   " + rows.join("\n   ") : " ok"}`);
    }
  for (const [k, v] of Object.entries(summary))
    say(
      `SUMMARY ${rig.name} ${k}: ${v.length} ratios, max ${Math.max(...v).toFixed(3)}, over 1.03: ${v.filter((x) => x > 1.03).length}, over 1.08: ${v.filter((x) => x > 1.08).length}`,
    );
  say(`all ${((performance.now() - t0) / 1000).toFixed(0)} s`);
  writeFileSync(out!, log.join("\n"));
  for (const w of workers) w.terminate();
}
