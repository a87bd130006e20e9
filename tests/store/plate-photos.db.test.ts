import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Photo } from '../../lib/photo/photo.ts';
import { readChanges } from '../../lib/store/change-log.ts';
import { importSite } from '../../lib/store/import-site.ts';
import { closeDatabase, type Database, openDatabase } from '../../lib/store/open-database.ts';
import { FORMER_PHOTOS_KEPT, readPhoto, readPlatePhoto } from '../../lib/store/plate-photos.ts';
import { readRevision, readSite } from '../../lib/store/read-site.ts';
import { revertChange } from '../../lib/store/revert-change.ts';
import { type PhotoChange, saveLoadForm, saveTruckForm } from '../../lib/store/save-form.ts';
import { removeTruck, saveTruck } from '../../lib/store/save-site.ts';
import { makeLoad, makeSite, makeTruck } from '../site-builder.ts';

const OFFICER = { who: 'A safety officer', at: '2026-03-02T06:30:00Z' };
const OTHER = { who: 'Another', at: '2026-03-02T07:00:00Z' };
const reach = makeTruck();
const KEEP: PhotoChange = { kind: 'keep' };
const photoOf = (byte: number): Photo => ({
  type: 'image/jpeg',
  bytes: Uint8Array.of(0xff, 0xd8, byte, byte >> 8),
  widthPx: 4,
  heightPx: 3,
});
const put = (byte: number): PhotoChange => ({ kind: 'put', photo: photoOf(byte) });

let db: Database;
beforeEach(() => {
  db = openDatabase(':memory:');
  importSite(db, makeSite(), OFFICER);
});
afterEach(() => closeDatabase(db));

const save = (photo: PhotoChange, more: Partial<typeof reach> = {}, basedOn = readRevision(db)) =>
  saveTruckForm(db, { isNew: false, truck: { ...reach, ...more }, photo }, OFFICER, basedOn);
const hashNow = () => readPlatePhoto(db, 'reach-1')?.hash ?? null;

describe('the photo of a plate', () => {
  it('is kept with the truck in one change of the log, and read back byte for byte', () => {
    expect(save(put(1), { name: 'New name' })).toEqual({ ok: true, revision: 3 });
    const shown = readPlatePhoto(db, 'reach-1')!;
    expect(shown).toMatchObject({
      type: 'image/jpeg',
      widthPx: 4,
      heightPx: 3,
      bytes: 4,
      isOlderThanPlate: false,
    });
    expect(Uint8Array.from(readPhoto(db, shown.hash)!.bytes)).toEqual(photoOf(1).bytes);
    const [second, first] = readChanges(db, { limit: 2 });
    expect(second).toMatchObject({
      noun: 'plate-photo',
      subject: 'reach-1',
      kind: 'add',
      before: null,
      batch: 2,
    });
    expect(first).toMatchObject({ noun: 'truck', batch: 2 });
    expect(JSON.stringify(second!.after)).not.toContain('"data"'); // no bytes in the log
  });

  it('is no part of the site: the site file stays what it was', () => {
    save(put(1));
    expect(readSite(db)).toEqual(makeSite());
  });

  it('stays with its truck through every other save, and says when the plate was changed after it', () => {
    save(put(1));
    saveTruck(db, { ...reach, name: 'Other' }, OFFICER);
    expect(readPlatePhoto(db, 'reach-1')).toMatchObject({ isOlderThanPlate: false });
    saveTruck(db, { ...reach, plate: { verticalLoadCentreMm: null, ratings: [] } }, OFFICER);
    expect(readPlatePhoto(db, 'reach-1')).toMatchObject({ isOlderThanPlate: true });
  });

  it('is replaced and taken away, each a change that can be undone', () => {
    save(put(1));
    const first = hashNow();
    const replaced = save(put(2));
    const second = hashNow();
    expect(second).not.toBe(first);
    const dropped = save({ kind: 'drop' });
    expect(hashNow()).toBeNull();
    expect(readChanges(db, { limit: 1 })[0]).toMatchObject({
      noun: 'plate-photo',
      kind: 'remove',
      after: null,
    });
    if (!dropped.ok || !replaced.ok) throw new Error('not saved');
    expect(revertChange(db, dropped.revision, OTHER).ok).toBe(true);
    expect(hashNow()).toBe(second);
    expect(revertChange(db, replaced.revision, OTHER).ok).toBe(true);
    expect(hashNow()).toBe(first);
  });

  it('that is the same or was not there is no change', () => {
    save(put(1));
    const before = readRevision(db);
    expect(save(put(1))).toEqual({ ok: true, revision: before });
    save({ kind: 'drop' });
    const after = readRevision(db);
    expect(save({ kind: 'drop' })).toEqual({ ok: true, revision: after });
  });

  it('is a conflict when somebody else has put in another since, and then nothing of the form is stored', () => {
    const basedOn = readRevision(db);
    save(put(1));
    const late = save(put(2), {}, basedOn);
    expect(late).toMatchObject({ ok: false, conflict: { noun: 'plate-photo', subject: 'reach-1' } });
    const gone = saveTruckForm(db, { isNew: false, truck: reach, photo: { kind: 'drop' } }, OTHER, basedOn);
    expect(gone.ok).toBe(false);
    expect(readChanges(db, { limit: 9 })).toHaveLength(2);
  });

  it('comes back with a truck that is put back, and is not shown for another truck of its id', () => {
    save(put(1));
    const removed = removeTruck(db, 'reach-1', OFFICER);
    expect(readPlatePhoto(db, 'reach-1')).toBeNull();
    if (!removed.ok) throw new Error('not removed');
    revertChange(db, removed.revision, OFFICER);
    expect(hashNow()).not.toBeNull();
    removeTruck(db, 'reach-1', OFFICER);
    saveTruck(db, { ...reach, plate: { verticalLoadCentreMm: null, ratings: [] } }, OFFICER);
    expect(hashNow()).toBeNull();
  });

  it('is not shown for a truck of the same id in another site, and is again when that is undone', () => {
    save(put(1));
    const other = { ...reach, plate: { verticalLoadCentreMm: 1, ratings: [] } };
    const revision = importSite(db, makeSite({ trucks: [other], checks: [] }), OTHER);
    expect(hashNow()).toBeNull();
    revertChange(db, revision, OTHER);
    expect(hashNow()).not.toBeNull();
  });

  it('is kept once for two trucks with the same picture', () => {
    save(put(1));
    const counter = makeSite().trucks[1]!;
    saveTruckForm(db, { isNew: false, truck: counter, photo: put(1) }, OFFICER, readRevision(db));
    expect(readPlatePhoto(db, 'counter-1')?.hash).toBe(hashNow());
    expect(db.$client.prepare('SELECT count(*) AS n FROM photos').all()).toMatchObject([{ n: 1 }]);
  });

  it('that nobody has any more is let go once newer ones have come, and then undoing says so', () => {
    save(put(1));
    const second = save(put(2));
    for (let byte = 3; byte <= FORMER_PHOTOS_KEPT + 3; byte += 1) save(put(byte));
    const rows = db.$client.prepare('SELECT count(*) AS n FROM photos').all();
    expect(rows).toMatchObject([{ n: FORMER_PHOTOS_KEPT + 1 }]);
    if (!second.ok) throw new Error('not saved');
    // the newest change can be undone; the second one is no longer what stands
    expect(revertChange(db, readRevision(db), OTHER).ok).toBe(true);
    expect(revertChange(db, second.revision, OTHER).ok).toBe(false);
  });
});

describe('a form', () => {
  it('for a new truck is refused while another has its id, and replaces nothing', () => {
    const saved = saveTruckForm(
      db,
      { isNew: true, truck: { ...reach, name: 'Mine' }, photo: put(1) },
      OFFICER,
      1,
    );
    expect(saved).toMatchObject({
      ok: false,
      refusals: [{ path: '$.trucks[0].id', expected: { is: 'unique' } }],
    });
    expect(readSite(db)).toEqual(makeSite());
    expect(hashNow()).toBeNull();
  });

  it('for a new truck adds it with its photo, and one undoing takes both away', () => {
    const truck = makeTruck({ id: 'reach-2' });
    const saved = saveTruckForm(db, { isNew: true, truck, photo: put(7) }, OFFICER, 1);
    if (!saved.ok) throw new Error('not saved');
    expect(readPlatePhoto(db, 'reach-2')).not.toBeNull();
    expect(revertChange(db, saved.revision, OTHER).ok).toBe(true);
    expect(readPlatePhoto(db, 'reach-2')).toBeNull();
    expect(readSite(db)).toEqual(makeSite());
  });

  it('never changes a hold: neither puts one on nor lets a truck go', () => {
    const hold = { since: '2026-03-02', reason: 'Chain stretched' };
    saveTruck(db, { ...reach, hold }, OFFICER);
    save(KEEP, { name: 'Renamed', hold: null });
    expect(readSite(db)!.trucks[0]).toEqual({ ...reach, name: 'Renamed', hold });
    saveTruck(db, reach, OFFICER);
    save(KEEP, { name: 'Renamed', hold });
    expect(readSite(db)!.trucks[0]).toEqual({ ...reach, name: 'Renamed' });
  });

  it('for a truck that somebody else took away is a conflict, not an addition', () => {
    const basedOn = readRevision(db);
    removeTruck(db, 'reach-1', OTHER);
    expect(save(KEEP, { name: 'Mine' }, basedOn)).toMatchObject({ ok: false, conflict: { theirs: null } });
  });

  it('for a truck that never was is refused', () => {
    const saved = saveTruckForm(db, { isNew: false, truck: makeTruck({ id: 'x' }), photo: KEEP }, OFFICER, 1);
    expect(saved).toMatchObject({ ok: false, refusals: [{ expected: { is: 'id-in' } }] });
    expect(readSite(db)).toEqual(makeSite());
  });

  it('for a load adds, changes, and answers a conflict', () => {
    const load = makeLoad({ id: 'new', grossKg: 500 });
    expect(saveLoadForm(db, { isNew: true, load }, OFFICER, 1)).toEqual({ ok: true, revision: 2 });
    expect(saveLoadForm(db, { isNew: true, load }, OFFICER, 2)).toMatchObject({ ok: false });
    expect(saveLoadForm(db, { isNew: false, load: { ...load, grossKg: 501 } }, OTHER, 2).ok).toBe(true);
    const late = saveLoadForm(db, { isNew: false, load: { ...load, grossKg: 502 } }, OFFICER, 2);
    expect(late).toMatchObject({ ok: false, conflict: { by: 'Another', theirs: { grossKg: 501 } } });
  });
});
