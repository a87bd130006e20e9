/** The kinds of picture that are taken in, told by their first bytes, never by a name or what a browser says. */
export const PHOTO_TYPES = ['image/jpeg', 'image/png', 'image/webp'] as const;
export type PhotoType = (typeof PHOTO_TYPES)[number];

/** A picture that was taken in: its bytes without what says where, when and with what it was taken. */
export type Photo = { type: PhotoType; bytes: Uint8Array; widthPx: number; heightPx: number };

/** A camera of a phone makes 3 to 8 MB. */
export const MOST_PHOTO_BYTES = 10 * 1024 * 1024;
/** More than any phone makes; a small file that declares more would fill a reader's memory. */
export const MOST_PIXELS = 64_000_000;

export type PhotoRefused =
  | { is: 'empty' }
  | { is: 'too-large'; bytes: number; most: number }
  | { is: 'not-a-photo' }
  | { is: 'damaged'; type: PhotoType }
  | { is: 'too-many-pixels'; widthPx: number; heightPx: number };

/** A picture as one of the readers found it; null when its parts do not add up. */
export type ReadPhoto = Omit<Photo, 'type'> | null;
