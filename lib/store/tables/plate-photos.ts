import { blob, integer, sqliteTable, text } from 'drizzle-orm/sqlite-core';
import { PHOTO_TYPES } from '../../photo/photo.ts';

/** Pictures by the hash of their bytes: the same one is kept once. */
export const photos = sqliteTable('photos', {
  hash: text('hash').primaryKey(),
  type: text('type', { enum: PHOTO_TYPES }).notNull(),
  widthPx: integer('width_px').notNull(),
  heightPx: integer('height_px').notNull(),
  bytes: blob('bytes', { mode: 'buffer' }).notNull(),
});

/**
 * The photo of a truck's plate. No reference to the truck: its row is taken out and put in again whenever it is saved.
 * `plate` is the plate as it was entered then, as JSON, and `revision` the change that put the photo there.
 */
export const platePhotos = sqliteTable('plate_photos', {
  truck: text('truck').primaryKey(),
  hash: text('hash')
    .notNull()
    .references(() => photos.hash),
  plate: text('plate').notNull(),
  revision: integer('revision').notNull(),
});
