import { readJpeg } from './jpeg.ts';
import {
  MOST_PHOTO_BYTES,
  MOST_PIXELS,
  type Photo,
  type PhotoRefused,
  type PhotoType,
  type ReadPhoto,
} from './photo.ts';
import { readPng } from './png.ts';
import { readWebp } from './webp.ts';

const READERS: Record<PhotoType, (bytes: Uint8Array) => ReadPhoto> = {
  'image/jpeg': readJpeg,
  'image/png': readPng,
  'image/webp': readWebp,
};

/** Are these bytes a picture that may be kept? Its data is not decoded; everything around it is gone through and thinned out. */
export function acceptPhoto(
  bytes: Uint8Array,
): { ok: true; photo: Photo } | { ok: false; why: PhotoRefused } {
  if (bytes.length === 0) return { ok: false, why: { is: 'empty' } };
  if (bytes.length > MOST_PHOTO_BYTES)
    return { ok: false, why: { is: 'too-large', bytes: bytes.length, most: MOST_PHOTO_BYTES } };
  const type = sniffPhoto(bytes);
  if (type === null) return { ok: false, why: { is: 'not-a-photo' } };
  const read = READERS[type](bytes);
  if (read === null || read.widthPx === 0 || read.heightPx === 0)
    return { ok: false, why: { is: 'damaged', type } };
  const { widthPx, heightPx } = read;
  if (widthPx * heightPx > MOST_PIXELS)
    return { ok: false, why: { is: 'too-many-pixels', widthPx, heightPx } };
  return { ok: true, photo: { type, ...read } };
}

/** What kind of picture do the first bytes say this is? null for anything else. */
export function sniffPhoto(bytes: Uint8Array): PhotoType | null {
  if (begins(bytes, [0xff, 0xd8, 0xff])) return 'image/jpeg';
  if (begins(bytes, [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a])) return 'image/png';
  const isRiff = begins(bytes, [0x52, 0x49, 0x46, 0x46]);
  return isRiff && begins(bytes.subarray(8), [0x57, 0x45, 0x42, 0x50]) ? 'image/webp' : null;
}

function begins(bytes: Uint8Array, with_: readonly number[]): boolean {
  return with_.every((byte, at) => bytes[at] === byte);
}
