import { eq } from 'drizzle-orm';
import type { Run } from '../model/racking.ts';
import { cameAs, type Expected } from '../model/refusal.ts';
import type { BasedOn } from './change-site.ts';
import { changeSite, conflictOf, refusedFor, type Saved } from './change-site.ts';
import type { ChangeWriter } from './change-writer.ts';
import type { Database } from './open-database.ts';
import type { Actor } from './rows/policy.ts';
import { dropEntry, putEntry, readOne } from './save-entry.ts';
import { dropStock, putStock, stockAt } from './save-stock.ts';
import { RUNS } from './shelves.ts';
import { runs } from './tables/racking.ts';

/**
 * A run as it is to be. `replaces`: the run that it takes the place of, null for a new one. `renamed`: locations that
 * get another id, what stands in them along with it. `takeOut`: pallets that go with their locations; a location
 * that goes while anything else stands there is refused.
 */
export type RunShape = {
  replaces: string | null;
  run: Run;
  renamed: readonly { from: string; to: string }[];
  takeOut: readonly { location: string; load: string }[];
};

/** Puts a run in the place of another, with new ids where they change, and moves the stock along: all of it or nothing. */
export function replaceRun(db: Database, shape: RunShape, actor: Actor, basedOn: BasedOn = null): Saved {
  return changeSite(db, actor, (log) => {
    const { replaces, run, renamed, takeOut } = shape;
    if (run.id !== replaces && readOne(db, RUNS, run.id) !== null)
      return refuse('$.runs', run.id, { is: 'unique', firstAt: '$.runs' });
    const late = replaces === null ? null : lateFor(log, replaces, basedOn);
    if (late !== null) return late;
    const taken = takePallets(log, takeOut, basedOn);
    if (!taken.ok) return taken;
    const moved: { to: string; load: string; ordinal: number }[] = [];
    for (const { from, to } of renamed) {
      const pallet = stockAt(db, from);
      if (pallet === null) continue;
      moved.push({ to, load: pallet.load, ordinal: pallet.ordinal });
      dropStock(log, from, null);
    }
    if (new Set(moved.map(({ to }) => to)).size < moved.length)
      return refuse('$.runs', run.id, { is: 'text', rule: 'one new id for each location' });
    const stood = replaces === null ? null : ordinalOf(db, replaces);
    if (replaces !== null && replaces !== run.id) {
      const dropped = dropEntry(log, RUNS, replaces, null);
      if (!dropped.ok) return dropped;
    }
    const back = stood === null ? undefined : { ordinal: stood, along: {} };
    let saved = putEntry(log, RUNS, run, null, back);
    for (const { to, load, ordinal } of moved) {
      if (!saved.ok) return saved;
      saved = putStock(log, { location: to, load }, null, ordinal);
    }
    return saved;
  });
}

/** Takes a run out of the site, with the pallets named; refused while any other stands in it. */
export function removeRunShape(
  db: Database,
  id: string,
  takeOut: RunShape['takeOut'],
  actor: Actor,
  basedOn: BasedOn = null,
): Saved {
  return changeSite(db, actor, (log) => {
    const late = lateFor(log, id, basedOn);
    if (late !== null) return late;
    const taken = takePallets(log, takeOut, basedOn);
    return taken.ok ? dropEntry(log, RUNS, id, null) : taken;
  });
}

/** The run is gone, or somebody else has changed it since it was read. */
function lateFor({ db }: ChangeWriter, id: string, basedOn: BasedOn): Saved | null {
  const theirs = readOne(db, RUNS, id);
  const conflict = conflictOf(db, basedOn, { noun: 'run', subject: id, theirs });
  if (conflict !== null) return refusedFor(conflict);
  return theirs === null ? refuse('$.runs', id, { is: 'id-in', list: '$.runs', nearest: null }) : null;
}

function takePallets(log: ChangeWriter, takeOut: RunShape['takeOut'], basedOn: BasedOn): Saved {
  let saved: Saved = { ok: true, revision: basedOn ?? 0 };
  for (const { location, load } of takeOut) {
    const stands = stockAt(log.db, location)?.load ?? null;
    if (stands !== load)
      return refuse('$.stock', stands ?? 'nothing', {
        is: 'text',
        rule: `${load} in ${location}, as it was seen`,
      });
    saved = dropStock(log, location, null);
    if (!saved.ok) return saved;
  }
  return saved;
}

function ordinalOf(db: Database, id: string): number | null {
  return db.select({ ordinal: runs.ordinal }).from(runs).where(eq(runs.id, id)).all()[0]?.ordinal ?? null;
}

function refuse(path: string, came: string, expected: Expected): Saved {
  return { ok: false, refusals: [{ path, came: cameAs(came), expected }] };
}
