import { joinBytes, viewOf } from './bytes.ts';
import { asHeld, orientationAlone, orientationIn } from './orientation.ts';
import type { ReadPhoto } from './photo.ts';

/*
 * A JPEG is a row of segments, each with a marker and its length, and after each scan header the picture's data, in
 * which a byte 0xff is followed by 0 or by a restart marker (ITU-T T.81, annex B, from memory).
 */
const SOI = 0xd8;
const EOI = 0xd9;
const SOS = 0xda;
const APP0 = 0xe0;
const APP1 = 0xe1;
const APP2 = 0xe2;
const APP14 = 0xee;
const COM = 0xfe;

/**
 * The picture without its comments and application segments: place, time, camera, the small preview and whatever stands
 * behind its end. Kept are JFIF, the colour profile and Adobe's colour mark, without which colours change, and which way
 * up it is held, in an Exif segment that says nothing else.
 */
export function readJpeg(bytes: Uint8Array): ReadPhoto {
  const view = viewOf(bytes);
  const kept: Uint8Array[] = [bytes.subarray(0, 2)];
  let size: { widthPx: number; heightPx: number } | null = null;
  let orientation = 1;
  let hasScan = false;
  let at = 2;
  while (at + 2 <= bytes.length) {
    if (bytes[at] !== 0xff) return null;
    const marker = bytes[at + 1]!;
    if (marker === 0xff) {
      at += 1; // fill byte
      continue;
    }
    if (marker === EOI) {
      if (size === null || !hasScan) return null;
      const mark = orientation === 1 ? [] : [orientationSegment(orientation)];
      const [start, ...rest] = kept;
      return {
        bytes: joinBytes([start!, ...mark, ...rest, bytes.subarray(at, at + 2)]),
        ...asHeld(size, orientation),
      };
    }
    if (marker === SOI || marker === 0 || (marker >= 0xd0 && marker <= 0xd7) || at + 4 > bytes.length)
      return null;
    const length = view.getUint16(at + 2);
    const end = at + 2 + length;
    if (length < 2 || end > bytes.length) return null;
    const segment = bytes.subarray(at, end);
    if (isFrame(marker)) {
      if (length < 8) return null;
      size = { heightPx: view.getUint16(at + 5), widthPx: view.getUint16(at + 7) };
    }
    if (marker === APP1 && hasName(segment, EXIF))
      orientation = orientationIn(segment.subarray(10)) ?? orientation;
    if (isNeeded(marker, segment)) kept.push(segment);
    at = end;
    if (marker === SOS) {
      hasScan = true;
      const scanEnd = endOfScan(bytes, at);
      kept.push(bytes.subarray(at, scanEnd));
      at = scanEnd;
    }
  }
  return null; // no end: cut off
}

/** Frame headers, which tell the size: SOF0 to SOF15 without DHT, JPG and DAC. */
function isFrame(marker: number): boolean {
  return marker >= 0xc0 && marker <= 0xcf && marker !== 0xc4 && marker !== 0xc8 && marker !== 0xcc;
}

function isNeeded(marker: number, segment: Uint8Array): boolean {
  if (marker === COM) return false;
  if (marker < APP0 || marker > 0xef) return true;
  if (marker === APP0) return hasName(segment, 'JFIF\0');
  if (marker === APP2) return hasName(segment, 'ICC_PROFILE\0');
  return marker === APP14 && hasName(segment, 'Adobe');
}

function hasName(segment: Uint8Array, name: string): boolean {
  return [...name].every((letter, at) => segment[4 + at] === letter.charCodeAt(0));
}

/** The next marker that is neither a stuffed byte nor a restart. */
function endOfScan(bytes: Uint8Array, from: number): number {
  let at = from;
  for (;;) {
    at = bytes.indexOf(0xff, at);
    if (at < 0 || at + 1 >= bytes.length) return bytes.length;
    const next = bytes[at + 1]!;
    if (next !== 0 && next !== 0xff && !(next >= 0xd0 && next <= 0xd7)) return at;
    at += next === 0xff ? 1 : 2;
  }
}

const EXIF = 'Exif\0\0';

function orientationSegment(orientation: number): Uint8Array {
  const tiff = orientationAlone(orientation);
  const head = [
    0xff,
    APP1,
    0,
    2 + EXIF.length + tiff.length,
    ...[...EXIF].map((letter) => letter.charCodeAt(0)),
  ];
  return joinBytes([Uint8Array.from(head), tiff]);
}
