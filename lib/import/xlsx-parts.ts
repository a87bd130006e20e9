import { type UnzipFileInfo, unzipSync } from 'fflate';
import { SaxesParser } from 'saxes';
import { FileRefused, type ReadLimits } from './table.ts';

/** The parts of a spreadsheet file (ECMA-376, an OPC zip package) by name, unzipped one call at a time within one budget. */
export type Parts = { read(name: string): Uint8Array | null };

/**
 * Opens the zip. What unzipping may cost is decided from the sizes that the zip's directory declares, before a byte is
 * unzipped; the unzipper never writes past a declared size, so a directory that lies gives a part cut short (which the
 * strict XML reader refuses as damaged), not memory that fills up.
 */
export function openParts(bytes: Uint8Array, limits: ReadLimits): Parts {
  let spent = 0;
  return {
    read(name) {
      const found = unzip(bytes, (info) => {
        if (info.name !== name) return false;
        spent += info.originalSize;
        if (spent > limits.unzippedBytes) {
          throw new FileRefused({ why: 'unzipped-too-large', bytes: spent, limit: limits.unzippedBytes });
        }
        return true;
      });
      return found[name] ?? null;
    },
  };
}

function unzip(bytes: Uint8Array, filter: (info: UnzipFileInfo) => boolean): Record<string, Uint8Array> {
  try {
    return unzipSync(bytes, { filter });
  } catch (error) {
    if (error instanceof FileRefused) throw error;
    throw new FileRefused({ why: 'damaged', detail: (error as Error).message });
  }
}

export type XmlHandlers = {
  open(name: string, attributes: Record<string, string>): void;
  close?(name: string): void;
  text?(text: string): void;
  /** Called after each piece with the share that is done. */
  piece?(doneBytes: number, totalBytes: number): void;
};

const PIECE_BYTES = 1 << 20;

/**
 * Walks through one XML part, names without their namespace prefix. Strict: what is not well-formed is refused as
 * damaged. A document type is refused, so no entity of the file's own is ever expanded.
 */
export function walkXml(bytes: Uint8Array, handlers: XmlHandlers): void {
  const parser = new SaxesParser();
  parser.on('error', (error) => {
    throw new FileRefused({ why: 'damaged', detail: error.message });
  });
  parser.on('doctype', () => {
    throw new FileRefused({ why: 'damaged', detail: 'a document type in a spreadsheet part' });
  });
  parser.on('opentag', (tag) => handlers.open(bare(tag.name), tag.attributes as Record<string, string>));
  parser.on('closetag', (tag) => handlers.close?.(bare(tag.name)));
  if (handlers.text) parser.on('text', (text) => handlers.text?.(text));
  if (handlers.text) parser.on('cdata', (text) => handlers.text?.(text));
  const decoder = new TextDecoder(isUtf16(bytes) ? 'utf-16le' : 'utf-8');
  for (let at = 0; at < bytes.length; at += PIECE_BYTES) {
    parser.write(decoder.decode(bytes.subarray(at, at + PIECE_BYTES), { stream: true }));
    handlers.piece?.(Math.min(at + PIECE_BYTES, bytes.length), bytes.length);
  }
  parser.write(decoder.decode());
  parser.close();
}

function isUtf16(bytes: Uint8Array): boolean {
  return bytes[0] === 0xff && bytes[1] === 0xfe;
}

function bare(name: string): string {
  const colon = name.indexOf(':');
  return colon < 0 ? name : name.slice(colon + 1);
}
