import { joinBytes, nameAt, viewOf } from './bytes.ts';
import type { ReadPhoto } from './photo.ts';

/** What the picture needs to be shown in its colours (W3C PNG specification, from memory); texts, times and Exif are left out. */
const KEPT = [
  'IHDR',
  'PLTE',
  'IDAT',
  'IEND',
  'tRNS',
  'gAMA',
  'cHRM',
  'sRGB',
  'iCCP',
  'sBIT',
  'bKGD',
  'pHYs',
  'cICP',
];

/** The picture without its texts, times and Exif, and without whatever stands behind its end. */
export function readPng(bytes: Uint8Array): ReadPhoto {
  const view = viewOf(bytes);
  const kept: Uint8Array[] = [bytes.subarray(0, 8)];
  let size: { widthPx: number; heightPx: number } | null = null;
  let hasData = false;
  for (let at = 8; at + 12 <= bytes.length; ) {
    const length = view.getUint32(at);
    const name = nameAt(bytes, at + 4);
    const end = at + 12 + length;
    if (end > bytes.length) return null;
    if (at === 8) {
      if (name !== 'IHDR' || length !== 13) return null;
      size = { widthPx: view.getUint32(at + 8), heightPx: view.getUint32(at + 12) };
    }
    if (name === 'IDAT') hasData = true;
    if (KEPT.includes(name)) kept.push(bytes.subarray(at, end));
    if (name === 'IEND') return size === null || !hasData ? null : { bytes: joinBytes(kept), ...size };
    at = end;
  }
  return null;
}
