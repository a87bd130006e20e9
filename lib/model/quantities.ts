import { z } from 'zod';

/** No length, mass or count of a warehouse is larger; a number past it is a slip of the keyboard or of the unit. */
export const LARGEST_NUMBER = 1e7;

/** A size: above zero, at most LARGEST_NUMBER. */
export const size = z.number().positive().max(LARGEST_NUMBER);

/** An amount that may be nothing: zero or more, at most LARGEST_NUMBER. */
export const amount = z.number().nonnegative().max(LARGEST_NUMBER);

/** Absent and null mean the same: the fact is not known. Read back as null. */
export function orNull<T extends z.ZodType>(schema: T) {
  return schema.nullable().default(null);
}

/** Half a character or a NUL comes back from a database or a file as another text, so neither is let in. */
const isWholeText = (text: string) => text.isWellFormed() && !text.includes('\0');
const WHOLE_TEXT = { error: 'a text without NUL and without half characters' };

/** An id: any text of 1 to 120 characters with no blank at either end. */
export const id = z
  .string()
  .min(1)
  .max(120)
  .regex(/^\S(?:.*\S)?$/, 'no blank at either end, on one line')
  .refine(isWholeText, WHOLE_TEXT);

/** A name or reason that a person reads: 1 to 500 characters, not only blanks. */
export const words = z
  .string()
  .min(1)
  .max(500)
  .regex(/\S/, 'not only blanks')
  .refine(isWholeText, WHOLE_TEXT);

/** A time, ISO 8601 in UTC ("2026-03-02T06:30:00Z"). A date alone stands for its first moment, so that an expiry is never late. */
export const instant = z.union([z.iso.datetime(), z.iso.date()]);

export type Instant = z.infer<typeof instant>;

/** Milliseconds since 1970 of an instant that lib/model has accepted. */
export function instantMs(at: Instant): number {
  return Date.parse(at.length === 10 ? `${at}T00:00:00Z` : at);
}

/** Surveyed height, "none" (surveyed: nothing there) or null (not surveyed). */
export const surveyedHeight = z
  .union([size, z.literal('none')])
  .nullable()
  .default(null);
