import { cpus, loadavg, totalmem } from 'node:os';

export type Timing = { name: string; medianMs: number; leastMs: number; mostMs: number; firstMs: number };

/** Runs a task some times and says how long it took: the first run apart, then median, least and most of all runs. */
export async function measure(name: string, runs: number, task: () => unknown): Promise<Timing> {
  const times: number[] = [];
  for (let run = 0; run < runs; run += 1) {
    const start = performance.now();
    await task();
    times.push(performance.now() - start);
  }
  const rising = times.toSorted((a, b) => a - b);
  return {
    name,
    medianMs: rising[Math.floor(runs / 2)]!,
    leastMs: rising[0]!,
    mostMs: rising.at(-1)!,
    firstMs: times[0]!,
  };
}

/** One line of the report; `against`: the timing it is set beside. */
export function line(timing: Timing, against?: Timing): string {
  const ms = (value: number) => value.toFixed(value < 10 ? 2 : 0).padStart(8);
  const ratio = against === undefined ? '' : `  ${(timing.medianMs / against.medianMs).toFixed(1)} x`;
  return `  ${timing.name.padEnd(58)}${ms(timing.medianMs)} ms  (${ms(timing.leastMs).trim()} to ${ms(timing.mostMs).trim()}, first ${ms(timing.firstMs).trim()})${ratio}`;
}

/** What the figures were measured on. */
export function machine(): string {
  const all = cpus();
  return `${all.length} cores (${all[0]?.model.trim()}), ${Math.round(totalmem() / 2 ** 30)} GiB, Node ${process.version}, ${loadavg()[0]!.toFixed(1)} tasks at work as it began`;
}
