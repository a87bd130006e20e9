import { createHash } from 'node:crypto';
import { eq, sql } from 'drizzle-orm';
import type { Photo } from '../photo/photo.ts';
import { type BasedOn, conflictOf, refusedFor, type Saved } from './change-site.ts';
import type { ChangeWriter } from './change-writer.ts';
import type { Database } from './open-database.ts';
import { readRevision } from './read-site.ts';
import { readTrucks } from './rows/trucks.ts';
import { changes } from './tables/change-log.ts';
import { photos, platePhotos } from './tables/plate-photos.ts';

/** A photo as the change log and the screens name it: by its hash, without its bytes. */
export type PhotoFact = {
  hash: string;
  type: Photo['type'];
  widthPx: number;
  heightPx: number;
  bytes: number;
};

export type PlatePhoto = PhotoFact & {
  /** The plate's figures have been changed since the photo was put there. */
  isOlderThanPlate: boolean;
};

/** How many photos that are no truck's any more are kept, so that a change can be undone. */
export const FORMER_PHOTOS_KEPT = 50;

/**
 * The photo of a truck's plate, or null. A photo stays with its truck through every edit. When the truck was taken out
 * since, or its whole list exchanged, the truck of that id may be another one: then only if its plate reads the same.
 */
export function readPlatePhoto(db: Database, truck: string): PlatePhoto | null {
  const row = db.select().from(platePhotos).where(eq(platePhotos.truck, truck)).all()[0];
  const plate = plateText(db, truck);
  if (row === undefined || plate === null) return null;
  if (plate !== row.plate && mayBeAnother(db, truck, row.revision)) return null;
  const fact = photoFact(db, row.hash);
  return fact === null ? null : { ...fact, isOlderThanPlate: plate !== row.plate };
}

/** The picture itself. */
export function readPhoto(db: Database, hash: string): Photo | null {
  const row = db.select().from(photos).where(eq(photos.hash, hash)).all()[0];
  if (row === undefined) return null;
  const { hash: _, ...photo } = row;
  return photo;
}

/** Puts a photo to a truck's plate, in the place of the one it had. Part of a transaction of changeSite. */
export function putPlatePhoto(log: ChangeWriter, truck: string, photo: Photo, basedOn: BasedOn): Saved {
  const hash = createHash('sha256').update(photo.bytes).digest('hex');
  const row = { ...photo, hash, bytes: Buffer.from(photo.bytes) };
  log.db.insert(photos).values(row).onConflictDoNothing().run();
  return putPhotoOf(log, truck, hash, basedOn);
}

/** The same with a photo that is kept already. Null: it is not. */
export function putKeptPhoto(log: ChangeWriter, truck: string, hash: string): Saved | null {
  return photoFact(log.db, hash) === null ? null : putPhotoOf(log, truck, hash, null);
}

/** Takes the photo away from a truck. Part of a transaction of changeSite. */
export function dropPlatePhoto(log: ChangeWriter, truck: string, basedOn: BasedOn): Saved {
  const { db } = log;
  const before = readPhotoFact(db, truck);
  if (before === null) return { ok: true, revision: readRevision(db) };
  const conflict = conflictOf(db, basedOn, { noun: 'plate-photo', subject: truck, theirs: before });
  if (conflict !== null) return refusedFor(conflict);
  db.delete(platePhotos).where(eq(platePhotos.truck, truck)).run();
  return { ok: true, revision: log.record({ noun: 'plate-photo', subject: truck, before, after: null }) };
}

/** The photo of a truck as the change log writes it down; null for none. */
export function readPhotoFact(db: Database, truck: string): PhotoFact | null {
  const photo = readPlatePhoto(db, truck);
  if (photo === null) return null;
  const { isOlderThanPlate: _, ...fact } = photo;
  return fact;
}

function putPhotoOf(log: ChangeWriter, truck: string, hash: string, basedOn: BasedOn): Saved {
  const { db } = log;
  const before = readPhotoFact(db, truck);
  if (before?.hash === hash) return { ok: true, revision: readRevision(db) };
  const conflict = conflictOf(db, basedOn, { noun: 'plate-photo', subject: truck, theirs: before });
  if (conflict !== null) return refusedFor(conflict);
  const plate = plateText(db, truck);
  if (plate === null) throw new Error(`a photo for truck ${truck}, which is not there`);
  const after = photoFact(db, hash);
  const revision = log.record({ noun: 'plate-photo', subject: truck, before, after });
  db.insert(platePhotos)
    .values({ truck, hash, plate, revision })
    .onConflictDoUpdate({ target: platePhotos.truck, set: { hash, plate, revision } })
    .run();
  forgetOldPhotos(db);
  return { ok: true, revision };
}

function photoFact(db: Database, hash: string): PhotoFact | null {
  const { type, widthPx, heightPx } = photos;
  const bytes = sql<number>`length(${photos.bytes})`;
  const row = db
    .select({ type, widthPx, heightPx, bytes })
    .from(photos)
    .where(eq(photos.hash, hash))
    .all()[0];
  return row === undefined ? null : { hash, ...row };
}

function plateText(db: Database, truck: string): string | null {
  const found = readTrucks(db, truck)[0];
  return found === undefined ? null : JSON.stringify(found.plate);
}

function mayBeAnother(db: Database, truck: string, since: number): boolean {
  const gone = sql`SELECT 1 FROM ${changes} WHERE ${changes.id} > ${since} AND (${changes.wholeSite}
    OR (${changes.noun} = 'truck' AND ${changes.subject} = ${truck} AND ${changes.after} IS NULL)) LIMIT 1`;
  return db.values(gone).length > 0;
}

/** The rows of `photos` stand in the order in which they came. */
function forgetOldPhotos(db: Database): void {
  db.run(sql`DELETE FROM ${photos} WHERE ${photos.hash} NOT IN (SELECT hash FROM plate_photos)
    AND rowid NOT IN (SELECT rowid FROM photos WHERE hash NOT IN (SELECT hash FROM plate_photos)
      ORDER BY rowid DESC LIMIT ${FORMER_PHOTOS_KEPT})`);
}
