import { viewOf } from './bytes.ts';

const ORIENTATION = 0x0112;

/** Which way up the picture is held, 1 to 8, as the first directory of its Exif says (a TIFF); null when it does not. */
export function orientationIn(tiff: Uint8Array): number | null {
  if (tiff.length < 10) return null;
  const view = viewOf(tiff);
  const isLittle = tiff[0] === 0x49;
  const first = view.getUint32(4, isLittle);
  if (first + 2 > tiff.length) return null;
  const count = view.getUint16(first, isLittle);
  for (let entry = 0; entry < count; entry += 1) {
    const at = first + 2 + 12 * entry;
    if (at + 12 > tiff.length) return null;
    if (view.getUint16(at, isLittle) !== ORIENTATION) continue;
    const value = view.getUint16(at + 8, isLittle);
    return value >= 1 && value <= 8 ? value : null;
  }
  return null;
}

/** An Exif that says which way up the picture is held, and nothing else. */
export function orientationAlone(orientation: number): Uint8Array {
  const head = [0x4d, 0x4d, 0, 42, 0, 0, 0, 8, 0, 1];
  const entry = [0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, orientation, 0, 0];
  return Uint8Array.from([...head, ...entry, 0, 0, 0, 0]);
}

/** From 5 on the picture lies on its side: its width is shown as its height. */
export function asHeld(size: { widthPx: number; heightPx: number }, orientation: number) {
  return orientation >= 5 ? { widthPx: size.heightPx, heightPx: size.widthPx } : size;
}
