import { z } from 'zod';
import { KG_IN, type LengthUnit, type MassUnit, MM_IN } from '../units/scale-decimal.ts';
import { LIST_FACTS, LIST_NAMES } from './lists.ts';
import type { Table } from './table.ts';

export type Unit = LengthUnit | MassUnit;
export const UNITS = [...Object.keys(MM_IN), ...Object.keys(KG_IN)] as Unit[];

/** How a column writes numbers: its decimal mark and what stands between thousands ('' for nothing). */
export const numberStyleSchema = z.strictObject({
  decimal: z.enum(['.', ',']),
  group: z.enum(['', ',', '.', ' ', "'"]),
});
export type NumberStyle = z.infer<typeof numberStyleSchema>;

export const TIME_STYLES = ['iso', 'dmy', 'mdy'] as const;
export type TimeStyle = (typeof TIME_STYLES)[number];

/** Which fact a column gives and how its cells are to be read. Bound by the header's text, so columns may move. */
export const columnUseSchema = z.strictObject({
  header: z.string(),
  /** Which one, where several columns have the same header; 0 is the first from the left. */
  nth: z.int().min(0).default(0),
  fact: z.string(),
  unit: z.enum(UNITS).optional(),
  numbers: numberStyleSchema.optional(),
  times: z.enum(TIME_STYLES).optional(),
  /** What this column writes for a choice or a yes, where the words are its own: {"OK": "sound"}. */
  words: z.record(z.string(), z.string()).optional(),
});
export type ColumnUse = z.infer<typeof columnUseSchema>;

/** How a list's columns become facts: plain JSON, to be remembered under the header's signature. */
export const mappingSchema = z
  .strictObject({
    list: z.enum(LIST_NAMES),
    columns: z.array(columnUseSchema),
    /** Facts that no column gives, the same for every row: text as in a cell, lengths in mm, masses in kg. */
    constants: z.record(z.string(), z.string()).default({}),
    /** Cells that say "not known", compared without regard to case or blanks around them. */
    nullWords: z.array(z.string()).default([]),
    /** Whether blanks around names are dropped. Around ids and numbers they always are. */
    trim: z.boolean().default(true),
  })
  .superRefine((mapping, context) => {
    const known = new Set(LIST_FACTS[mapping.list].map((entry) => entry.fact));
    const used = [...mapping.columns.map((column) => column.fact), ...Object.keys(mapping.constants)];
    for (const [at, name] of used.entries()) {
      if (!known.has(name)) context.addIssue({ code: 'custom', message: `no such fact: ${name}` });
      if (used.indexOf(name) < at) context.addIssue({ code: 'custom', message: `given twice: ${name}` });
    }
  });
export type Mapping = z.infer<typeof mappingSchema>;

export const USUAL_NULL_WORDS = ['', '-', '--', 'n/a', 'na', '#n/a', 'unknown', 'null', 'tbc', '?'] as const;

/** The same for the same headers in any order and spelling of case, blanks and underscores: what a mapping is kept under. */
export function headerSignature(header: readonly string[]): string {
  return header
    .map((name) =>
      name
        .toLowerCase()
        .replace(/[\s_]+/g, ' ')
        .trim(),
    )
    .sort()
    .join('|');
}

/** Where in the table the column of a use stands, or -1 when the table has no such column. */
export function columnAt(table: Pick<Table, 'header'>, use: Pick<ColumnUse, 'header' | 'nth'>): number {
  let seen = 0;
  for (const [at, header] of table.header.entries()) {
    if (header === use.header && seen++ === use.nth) return at;
  }
  return -1;
}
