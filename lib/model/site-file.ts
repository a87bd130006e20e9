import { z } from 'zod';
import { disagreements } from './facts-agree.ts';
import type { Refusal } from './refusal.ts';
import { repeatedKeys } from './repeated-keys.ts';
import { type KnownKeys, schemaRefusals } from './schema-refusals.ts';
import { type Site, siteSchema } from './site.ts';

export type SiteReading = { ok: true; site: Site } | { ok: false; refusals: Refusal[] };

/** Reads the text of a site file (JSON, `format: "tinewise-site"`, `version: 1`): the site, or every fault in it. */
export function readSiteText(text: string): SiteReading {
  const json = text.charCodeAt(0) === 0xfeff ? text.slice(1) : text;
  let raw: unknown;
  try {
    raw = JSON.parse(json);
  } catch (error) {
    return { ok: false, refusals: [{ path: '$', came: (error as Error).message, expected: { is: 'json' } }] };
  }
  const reading = readSite(raw);
  const repeated = repeatedKeys(json);
  if (repeated.length === 0) return reading;
  return { ok: false, refusals: repeated.concat(reading.ok ? [] : reading.refusals) };
}

/** Reads a site from a parsed value: the site, or every fault in it, those of the schema and those between facts. */
export function readSite(raw: unknown): SiteReading {
  const parsed = siteSchema.safeParse(raw);
  const untyped = parsed.success ? [] : schemaRefusals(raw, parsed.error.issues, knownKeys);
  const refusals = untyped.concat(disagreements(raw)); // not pushed as arguments: a broken list has a million faults
  if (parsed.success && refusals.length === 0) return { ok: true, site: parsed.data };
  return { ok: false, refusals };
}

/**
 * The site as the text of a site file: keys in the model's order, one entry of a list to a line so that two files can
 * be compared. Reading it back gives an equal site. Throws when the site is not one (a bug).
 */
export function writeSiteText(site: Site): string {
  const ordered = siteSchema.parse(site);
  const parts = Object.entries(ordered).map(([key, value]) => {
    if (!Array.isArray(value)) return `${JSON.stringify(key)}: ${JSON.stringify(value)}`;
    if (value.length === 0) return `${JSON.stringify(key)}: []`;
    return `${JSON.stringify(key)}: [\n${value.map((entry) => JSON.stringify(entry)).join(',\n')}\n]`;
  });
  return `{\n${parts.join(',\n')}\n}\n`;
}

/** The keys of the strict object that stands at a path of the site file. */
const knownKeys: KnownKeys = (path) => {
  let schema: unknown = siteSchema;
  for (const key of path) {
    schema = bare(schema);
    if (schema instanceof z.ZodArray) schema = schema.element;
    else if (schema instanceof z.ZodObject) schema = schema.shape[String(key)];
    else return [];
  }
  schema = bare(schema);
  return schema instanceof z.ZodObject ? Object.keys(schema.shape) : [];
};

/** The schema without its wrappers of null, absence and default. */
function bare(schema: unknown): unknown {
  let inner = schema;
  while (inner instanceof z.ZodNullable || inner instanceof z.ZodOptional || inner instanceof z.ZodDefault) {
    inner = inner.unwrap();
  }
  return inner;
}
