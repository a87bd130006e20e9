import { type Encoding, FileRefused } from './table.ts';

/**
 * The bytes of a text file as text, and how they were understood.
 *
 * A byte order mark decides (UTF-8, UTF-16 in either order). Without one: UTF-8 where the bytes are valid UTF-8, else
 * windows-1252, which `guessed` marks because no byte can contradict it. A text with NUL characters is refused as binary.
 */
export function decodeText(bytes: Uint8Array): { text: string; encoding: Encoding; guessed: boolean } {
  const mark = markedEncoding(bytes);
  const { encoding, guessed } = mark ?? unmarkedEncoding(bytes);
  const text = decode(bytes, encoding);
  if (text.includes('\0')) throw new FileRefused({ why: 'binary' });
  return { text, encoding, guessed };
}

function markedEncoding(bytes: Uint8Array): { encoding: Encoding; guessed: boolean } | null {
  const [a, b, c] = bytes;
  if (a === 0xef && b === 0xbb && c === 0xbf) return { encoding: 'utf-8', guessed: false };
  if (a === 0xff && b === 0xfe) return { encoding: 'utf-16le', guessed: false };
  if (a === 0xfe && b === 0xff) return { encoding: 'utf-16be', guessed: false };
  return null;
}

function unmarkedEncoding(bytes: Uint8Array): { encoding: Encoding; guessed: boolean } {
  try {
    new TextDecoder('utf-8', { fatal: true }).decode(bytes);
    return { encoding: 'utf-8', guessed: false };
  } catch {
    return { encoding: 'windows-1252', guessed: true };
  }
}

function decode(bytes: Uint8Array, encoding: Encoding): string {
  try {
    const text = new TextDecoder(encoding, { fatal: true }).decode(bytes);
    return encoding === 'windows-1252' ? text.replace(/[\u0080-\u009f]/g, windows1252) : text;
  } catch {
    throw new FileRefused({ why: 'damaged', detail: `not valid ${encoding}` });
  }
}

// Bytes 0x80 to 0x9F by the WHATWG encoding standard's index. Some runtimes decode windows-1252 as ISO 8859-1, which has
// control characters there; where the runtime is right, only the five that windows-1252 leaves open are left.
const UPPER_BYTES = '€\u0081‚ƒ„…†‡ˆ‰Š‹Œ\u008dŽ\u008f\u0090‘’“”•–—˜™š›œ\u009džŸ';

function windows1252(character: string): string {
  return UPPER_BYTES[character.charCodeAt(0) - 0x80]!;
}
