import type { Load } from '../model/load.ts';
import { cameAs, type Expected } from '../model/refusal.ts';
import type { Truck } from '../model/truck.ts';
import type { Photo } from '../photo/photo.ts';
import { type BasedOn, changeSite, type Saved } from './change-site.ts';
import type { ChangeWriter } from './change-writer.ts';
import type { Database } from './open-database.ts';
import { dropPlatePhoto, putPlatePhoto } from './plate-photos.ts';
import type { Actor } from './rows/policy.ts';
import { readTrucks } from './rows/trucks.ts';
import { type Entry, putEntry, readOne, type Shelf, type ShelfList } from './save-entry.ts';
import { LOADS, TRUCKS } from './shelves.ts';

/*
 * Saves as forms mean them. A new entry is refused while another has its id, which a plain save would replace; a changed
 * one while there is none to change, unless it is somebody else who took it out: then the answer is the conflict.
 */

export type PhotoChange = { kind: 'keep' } | { kind: 'put'; photo: Photo } | { kind: 'drop' };

export type TruckForm = { isNew: boolean; truck: Truck; photo: PhotoChange };

/** A truck with the photo of its plate: both or neither. Its hold is not a form's to change: it stays as it stands. */
export function saveTruckForm(
  db: Database,
  { isNew, truck, photo }: TruckForm,
  actor: Actor,
  basedOn: BasedOn,
): Saved {
  return changeSite(db, actor, (log) => {
    const hold = readTrucks(db, truck.id)[0]?.hold ?? null;
    const saved = putForm(log, TRUCKS, { isNew, entry: { ...truck, hold } }, basedOn);
    if (!saved.ok || photo.kind === 'keep') return saved;
    return photo.kind === 'drop'
      ? dropPlatePhoto(log, truck.id, basedOn)
      : putPlatePhoto(log, truck.id, photo.photo, isNew ? null : basedOn);
  });
}

export function saveLoadForm(
  db: Database,
  { isNew, load }: { isNew: boolean; load: Load },
  actor: Actor,
  basedOn: BasedOn,
): Saved {
  return changeSite(db, actor, (log) => putForm(log, LOADS, { isNew, entry: load }, basedOn));
}

function putForm<List extends ShelfList>(
  log: ChangeWriter,
  shelf: Shelf<List>,
  { isNew, entry }: { isNew: boolean; entry: Entry<List> },
  basedOn: BasedOn,
): Saved {
  const stands = readOne(log.db, shelf, entry.id) !== null;
  if (isNew && stands) return refuseId(shelf, entry.id, { is: 'unique', firstAt: `$.${shelf.list}` });
  const saved = putEntry(log, shelf, entry, isNew ? null : basedOn);
  if (!isNew && !stands && saved.ok)
    return refuseId(shelf, entry.id, { is: 'id-in', list: `$.${shelf.list}`, nearest: null });
  return saved;
}

/** The path that a form knows: its fact stands alone in its list. */
function refuseId({ list }: { list: ShelfList }, id: string, expected: Expected): Saved {
  return { ok: false, refusals: [{ path: `$.${list}[0].id`, came: cameAs(id), expected }] };
}
