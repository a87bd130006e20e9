import { joinBytes, nameAt, viewOf } from './bytes.ts';
import { asHeld, orientationAlone, orientationIn } from './orientation.ts';
import type { ReadPhoto } from './photo.ts';

/** Flags of the extended header (RFC 9649): a picture that moves, Exif, XMP. */
const MOVES = 0x02;
const EXIF = 0x08;
const XMP = 0x04;
const KEPT = ['VP8X', 'VP8 ', 'VP8L', 'ALPH', 'ICCP'];

/** The picture without its XMP, and of its Exif only which way up it is held. One that moves is not a photo. */
export function readWebp(bytes: Uint8Array): ReadPhoto {
  const view = viewOf(bytes);
  if (bytes.length < 20) return null;
  const whole = 8 + view.getUint32(4, true);
  if (whole > bytes.length) return null;
  const kept: Uint8Array[] = [];
  let size: { widthPx: number; heightPx: number } | null = null;
  let hasData = false;
  let orientation = 1;
  for (let at = 12; at + 8 <= whole; ) {
    const name = nameAt(bytes, at);
    const length = view.getUint32(at + 4, true);
    const end = at + 8 + length + (length % 2);
    if (at + 8 + length > whole) return null;
    const chunk = bytes.slice(at, Math.min(end, whole));
    const body = viewOf(chunk.subarray(8));
    if (name === 'VP8X') {
      if (length < 10 || (chunk[8]! & MOVES) !== 0) return null;
      chunk[8] = chunk[8]! & ~(EXIF | XMP);
      size = { widthPx: 1 + uint24(chunk, 12), heightPx: 1 + uint24(chunk, 15) };
    }
    if (name === 'VP8 ') {
      if (length < 10 || uint24(chunk, 11) !== 0x2a019d) return null;
      size ??= { widthPx: body.getUint16(6, true) & 0x3fff, heightPx: body.getUint16(8, true) & 0x3fff };
    }
    if (name === 'VP8L') {
      if (length < 5 || chunk[8] !== 0x2f) return null;
      const bits = body.getUint32(1, true);
      size ??= { widthPx: 1 + (bits & 0x3fff), heightPx: 1 + ((bits >>> 14) & 0x3fff) };
    }
    if (name === 'EXIF') orientation = orientationIn(tiffOf(chunk.subarray(8, 8 + length))) ?? 1;
    if (name === 'VP8 ' || name === 'VP8L') hasData = true;
    if (KEPT.includes(name))
      kept.push(chunk.length % 2 === 0 ? chunk : joinBytes([chunk, new Uint8Array(1)]));
    at = end;
  }
  if (size === null || !hasData) return null;
  const first = kept[0]!;
  if (orientation > 1 && nameAt(first, 0) === 'VP8X') {
    first[8] = first[8]! | EXIF;
    const tiff = orientationAlone(orientation);
    const head = Uint8Array.from([0x45, 0x58, 0x49, 0x46, tiff.length, 0, 0, 0]);
    kept.push(joinBytes([head, tiff]));
  }
  const body = joinBytes(kept);
  const riff = bytes.slice(0, 12);
  viewOf(riff).setUint32(4, 4 + body.length, true);
  return { bytes: joinBytes([riff, body]), ...asHeld(size, orientation) };
}

function uint24(bytes: Uint8Array, at: number): number {
  return bytes[at]! | (bytes[at + 1]! << 8) | (bytes[at + 2]! << 16);
}

/** Some programs put the JPEG's own mark ahead of it. */
function tiffOf(exif: Uint8Array): Uint8Array {
  return nameAt(exif, 0) === 'Exif' ? exif.subarray(6) : exif;
}
