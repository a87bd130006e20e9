import * as z from 'zod';
import { mappingSchema } from '@/lib/import/mapping.ts';

/** What a browser sends beside the files themselves: how each is read, and the digest of the dry run that was shown. */
export const askedImportSchema = z.strictObject({
  mode: z.enum(['all-or-nothing', 'good-rows-only']),
  digest: z.string(),
  files: z
    .array(
      z.strictObject({
        name: z.string().min(1).max(300),
        choice: z.strictObject({
          sheet: z.string().optional(),
          delimiter: z.string().min(1).max(1).optional(),
          headerRow: z.int().min(1).optional(),
        }),
        mapping: mappingSchema,
      }),
    )
    .min(1)
    .max(50),
});
export type AskedImport = z.input<typeof askedImportSchema>;

/** What became of an import. `differs`: the site has changed so that the dry run that was shown no longer holds. */
export type ImportAnswer =
  | { state: 'done'; revision: number; milliseconds: number; by: string; at: string }
  | { state: 'differs' }
  | { state: 'refused'; message: string };
