import { crc32, deflateSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { acceptPhoto, sniffPhoto } from '../../lib/photo/accept-photo.ts';
import { joinBytes } from '../../lib/photo/bytes.ts';
import { MOST_PHOTO_BYTES } from '../../lib/photo/photo.ts';
import { photoRefusedSentence } from '../../lib/words/entry.ts';

const ascii = (text: string) => Uint8Array.from([...text].map((letter) => letter.charCodeAt(0)));
const bytes = (...parts: (number | number[] | Uint8Array | string)[]) =>
  joinBytes(
    parts.map((part) =>
      typeof part === 'string'
        ? ascii(part)
        : typeof part === 'number'
          ? Uint8Array.of(part)
          : Uint8Array.from(part),
    ),
  );
const holds = (whole: Uint8Array, text: string) => Buffer.from(whole).includes(Buffer.from(text));

/* JPEG, ITU-T T.81 annex B (from memory): marker, length that counts itself, body. */
const segment = (marker: number, body: Uint8Array) =>
  bytes(0xff, marker, (body.length + 2) >> 8, (body.length + 2) & 0xff, body);
const frame = (width: number, height: number) =>
  segment(0xc0, bytes(8, height >> 8, height & 0xff, width >> 8, width & 0xff, 1, 1, 0x11, 0));
const scan = bytes(segment(0xda, bytes(1, 1, 0, 0, 63, 0)), 'data', 0xff, 0x00, 'more', 0xff, 0xd0, 'rest');
/** Exif 2.3 (from memory): TIFF with its byte order, a directory of one entry (orientation) and a text behind it. */
const exif = (orientation: number, isLittle: boolean) => {
  const short = (value: number) => (isLittle ? [value & 0xff, value >> 8] : [value >> 8, value & 0xff]);
  const long = (value: number) => (isLittle ? [...short(value), 0, 0] : [0, 0, ...short(value)]);
  return bytes(
    isLittle ? 'II' : 'MM',
    short(42),
    long(8),
    short(1),
    [...short(0x0112), ...short(3), ...long(1), ...short(orientation), 0, 0],
    long(0),
    'GPS 52.1 N',
  );
};
const jpeg = (...segments: Uint8Array[]) => bytes(0xff, 0xd8, ...segments, frame(40, 30), scan, 0xff, 0xd9);

const chunk = (name: string, body: Uint8Array) => {
  const named = bytes(name, body);
  const check = Buffer.alloc(4);
  check.writeUInt32BE(crc32(named));
  const length = Buffer.alloc(4);
  length.writeUInt32BE(body.length);
  return bytes(length, named, check);
};
const PNG_MARK = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];
const header = (width: number, height: number) => {
  const size = Buffer.alloc(8);
  size.writeUInt32BE(width, 0);
  size.writeUInt32BE(height, 4);
  return chunk('IHDR', bytes(size, [8, 0, 0, 0, 0]));
};
const png = (...more: Uint8Array[]) =>
  bytes(
    PNG_MARK,
    header(2, 2),
    ...more,
    chunk('IDAT', deflateSync(bytes(0, 1, 2, 0, 3, 4))),
    chunk('IEND', bytes()),
  );

/* WebP, RFC 9649: RIFF with chunks of even length, sizes little-endian. */
const riffChunk = (name: string, body: Uint8Array) =>
  bytes(name, [body.length & 0xff, body.length >> 8, 0, 0], body, ...(body.length % 2 ? [0] : []));
const webp = (...chunks: Uint8Array[]) => {
  const body = bytes('WEBP', ...chunks);
  return bytes('RIFF', [body.length & 0xff, body.length >> 8, 0, 0], body);
};
const vp8 = riffChunk('VP8 ', bytes([0, 0, 0, 0x9d, 0x01, 0x2a, 40, 0, 30, 0], 'data'));
const vp8x = (flags: number) => riffChunk('VP8X', bytes([flags, 0, 0, 0, 39, 0, 0, 29, 0, 0]));

function accepted(file: Uint8Array) {
  const reading = acceptPhoto(file);
  if (!reading.ok) throw new Error(JSON.stringify(reading.why));
  return reading.photo;
}

describe('a picture', () => {
  it.each([
    ['JPEG', jpeg(), 'image/jpeg', 40, 30],
    ['PNG', png(), 'image/png', 2, 2],
    ['WebP with loss', webp(vp8), 'image/webp', 40, 30],
    [
      'WebP without loss',
      webp(riffChunk('VP8L', bytes([0x2f, 39, 0x40, 7, 0], 'data'))),
      'image/webp',
      40,
      30,
    ],
    ['WebP with an extended header', webp(vp8x(0), vp8), 'image/webp', 40, 30],
  ])('that is a %s is known by its bytes, and its size read', (_name, file, type, widthPx, heightPx) => {
    expect(accepted(file)).toMatchObject({ type, widthPx, heightPx });
  });

  it.each([
    ['a page', ascii('<html><script>alert(1)</script></html>')],
    ['a drawing in text', ascii('<svg xmlns="http://www.w3.org/2000/svg"/>')],
    ['a GIF', ascii('GIF89a')],
    ['a PDF', ascii('%PDF-1.7')],
    ['a RIFF that is sound', bytes('RIFF', [4, 0, 0, 0], 'WAVE')],
    ['a JPEG that begins a byte late', bytes(0, jpeg())],
  ])('that is %s is none, whatever it is called', (_name, file) => {
    expect(sniffPhoto(file)).toBeNull();
    expect(acceptPhoto(file)).toEqual({ ok: false, why: { is: 'not-a-photo' } });
  });

  it.each([
    [MOST_PHOTO_BYTES - 1, 'damaged'],
    [MOST_PHOTO_BYTES, 'damaged'],
    [MOST_PHOTO_BYTES + 1, 'too-large'],
  ])('of %i bytes is judged: %s', (length, is) => {
    const file = new Uint8Array(length);
    file.set([0xff, 0xd8, 0xff]);
    const reading = acceptPhoto(file);
    expect(reading).toMatchObject({ ok: false, why: { is } });
    if (!reading.ok) expect(photoRefusedSentence(reading.why)).toMatch(/\.$/);
  });

  it.each([
    [8000, 7999, true],
    [8000, 8000, true],
    [8000, 8001, false],
  ])('that declares %i x %i pixels is kept: %s', (width, height, ok) => {
    const file = bytes(0xff, 0xd8, frame(width, height), scan, 0xff, 0xd9);
    expect(acceptPhoto(file).ok).toBe(ok);
  });

  it('that is empty says so', () => {
    expect(acceptPhoto(bytes())).toEqual({ ok: false, why: { is: 'empty' } });
  });

  it.each([
    ['JPEG', jpeg(segment(0xe0, bytes('JFIF\0', [1, 1, 0, 0, 1, 0, 1, 0, 0])))],
    ['PNG', png()],
    ['WebP', webp(vp8x(0), vp8)],
  ])('that is a %s cut off anywhere is damaged, and never read past its end', (_name, file) => {
    for (let length = 12; length < file.length; length += 1)
      expect(acceptPhoto(file.subarray(0, length)).ok).toBe(false);
  });

  it('of no width is damaged', () => {
    expect(acceptPhoto(bytes(0xff, 0xd8, frame(0, 30), scan, 0xff, 0xd9))).toMatchObject({
      why: { is: 'damaged' },
    });
  });

  it('that moves is not a photo', () => {
    expect(acceptPhoto(webp(vp8x(0x02), vp8))).toMatchObject({ why: { is: 'damaged' } });
  });
});

describe('what is kept of a picture', () => {
  it.each([true, false])(
    'of a JPEG leaves out place, comment, preview and what stands behind it (little-endian: %s)',
    (little) => {
      const file = bytes(
        jpeg(
          segment(0xe0, bytes('JFIF\0', [1, 1, 0, 0, 1, 0, 1, 0, 0])),
          segment(0xe1, bytes('Exif\0\0', exif(1, little))),
          segment(0xe1, ascii('http://ns.adobe.com/xap/1.0/\0GPS')),
          segment(0xe2, ascii('ICC_PROFILE\0colours')),
          segment(0xe2, ascii('MPF\0GPS')),
          segment(0xed, ascii('Photoshop GPS')),
          segment(0xfe, ascii('comment GPS')),
        ),
        'a film behind the picture, with GPS',
      );
      const { bytes: kept } = accepted(file);
      expect(holds(kept, 'GPS')).toBe(false);
      expect(holds(kept, 'JFIF')).toBe(true);
      expect(holds(kept, 'colours')).toBe(true);
      expect(kept.slice(-2)).toEqual(bytes(0xff, 0xd9));
      expect(accepted(kept).bytes).toEqual(kept); // nothing more to leave out
    },
  );

  it.each([
    [6, true],
    [6, false],
    [3, true],
    [8, false],
  ])('of a JPEG held as %i keeps which way up it is, and its size as it is seen', (orientation, little) => {
    const kept = accepted(jpeg(segment(0xe1, bytes('Exif\0\0', exif(orientation, little)))));
    expect(holds(kept.bytes, 'GPS')).toBe(false);
    const at = Buffer.from(kept.bytes).indexOf(Buffer.from([0x01, 0x12, 0, 3, 0, 0, 0, 1, 0]));
    expect(kept.bytes[at + 9]).toBe(orientation);
    const isLying = orientation >= 5;
    expect([kept.widthPx, kept.heightPx]).toEqual(isLying ? [30, 40] : [40, 30]);
    expect(accepted(kept.bytes)).toEqual(kept);
  });

  it('of a JPEG with a nonsense Exif is the picture as it stands', () => {
    const nonsense = bytes('Exif\0\0', 'II', [42, 0, 0xff, 0xff, 0xff, 0x7f], 'GPS');
    expect(accepted(jpeg(segment(0xe1, nonsense))).widthPx).toBe(40);
  });

  it('of a JPEG is its scans to the last bit', () => {
    expect(holds(accepted(jpeg()).bytes, 'data\u0000')).toBe(false);
    expect(Buffer.from(accepted(jpeg()).bytes).includes(Buffer.from(scan))).toBe(true);
  });

  it('of a PNG leaves out texts, times and Exif', () => {
    const file = bytes(
      png(
        chunk('tEXt', ascii('Location\0GPS')),
        chunk('eXIf', exif(1, true)),
        chunk('gAMA', bytes(0, 0, 1, 1)),
      ),
      'GPS behind it',
    );
    const { bytes: kept } = accepted(file);
    expect(holds(kept, 'GPS')).toBe(false);
    expect(holds(kept, 'gAMA')).toBe(true);
    expect(holds(kept, 'IEND')).toBe(true);
  });

  it('of a WebP leaves out Exif and XMP, and no longer announces them', () => {
    const file = webp(vp8x(0x0c), vp8, riffChunk('EXIF', exif(1, true)), riffChunk('XMP ', ascii('GPS')));
    const { bytes: kept } = accepted(file);
    expect(holds(kept, 'GPS')).toBe(false);
    expect(kept[20]).toBe(0); // flags
    expect(Buffer.from(kept).readUInt32LE(4)).toBe(kept.length - 8);
  });

  it('of a WebP on its side keeps that, as Exif alone', () => {
    const kept = accepted(webp(vp8x(0x08), vp8, riffChunk('EXIF', exif(6, false))));
    expect([kept.widthPx, kept.heightPx]).toEqual([30, 40]);
    expect(holds(kept.bytes, 'GPS')).toBe(false);
    expect(accepted(kept.bytes)).toEqual(kept);
  });
});
