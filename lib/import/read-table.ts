import { readCsv } from './read-csv.ts';
import { FileRefused, READ_LIMITS, type ReadOptions, type TableReading } from './table.ts';

/**
 * Reads the bytes of a list, CSV or XLSX by what the bytes are and not by the file's name: the table, or why not.
 * The spreadsheet reader is loaded only when a spreadsheet comes.
 */
export async function readTable(
  bytes: Uint8Array,
  file: string,
  options: ReadOptions = {},
): Promise<TableReading> {
  const limits = options.limits ?? READ_LIMITS;
  try {
    if (bytes.length === 0) throw new FileRefused({ why: 'empty' });
    if (bytes.length > limits.fileBytes) {
      throw new FileRefused({ why: 'too-large', bytes: bytes.length, limit: limits.fileBytes });
    }
    if (startsWith(bytes, [0xd0, 0xcf, 0x11, 0xe0]))
      throw new FileRefused({ why: 'old-or-locked-spreadsheet' });
    if (startsWith(bytes, [0x50, 0x4b])) {
      const { readXlsx } = await import('./read-xlsx.ts');
      return { ok: true, table: readXlsx(bytes, file, options) };
    }
    return { ok: true, table: readCsv(bytes, file, options) };
  } catch (error) {
    if (error instanceof FileRefused) return { ok: false, refusal: error.refusal };
    throw error;
  }
}

function startsWith(bytes: Uint8Array, first: number[]): boolean {
  return first.every((byte, at) => bytes[at] === byte);
}
