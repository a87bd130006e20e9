import type { z } from 'zod';
import { cameAs, type Expected, jsonPath, nearestTo, type Refusal } from './refusal.ts';

type Issue = z.core.$ZodIssue;

/** Zod's issues on a raw value as refusals, one for each fault (an unknown key is a fault of its own). */
export function schemaRefusals(raw: unknown, issues: readonly Issue[], knownKeys: KnownKeys): Refusal[] {
  return issues.flatMap((issue) => {
    const value = valueAt(raw, issue.path);
    if (issue.code === 'unrecognized_keys') {
      return issue.keys.map((key) => ({
        path: jsonPath([...issue.path, key]),
        came: cameAs((value as Record<string, unknown>)[key]),
        expected: { is: 'known-key', nearest: nearestTo(key, knownKeys(issue.path)) } as const,
      }));
    }
    return [{ path: jsonPath(issue.path), came: cameAs(value), expected: expectedOf(issue, value) }];
  });
}

/** The keys that the schema knows at a path. */
export type KnownKeys = (path: readonly PropertyKey[]) => readonly string[];

function expectedOf(issue: Issue, value: unknown): Expected {
  switch (issue.code) {
    case 'invalid_type':
      if (value === undefined) return { is: 'present' };
      if (issue.expected === 'int') return { is: 'whole-number' };
      return { is: 'type', type: issue.expected };
    case 'too_small':
      if (issue.origin === 'string' || issue.origin === 'array') {
        return { is: 'length', from: Number(issue.minimum), to: null };
      }
      return issue.inclusive
        ? { is: 'at-least', limit: Number(issue.minimum) }
        : { is: 'above', limit: Number(issue.minimum) };
    case 'too_big':
      if (issue.origin === 'string' || issue.origin === 'array') {
        return { is: 'length', from: 0, to: Number(issue.maximum) };
      }
      return { is: 'at-most', limit: Number(issue.maximum) };
    case 'invalid_format':
      return { is: 'text', rule: issue.message };
    case 'invalid_value':
      return {
        is: 'one-of',
        values: issue.values.map((entry) => (typeof entry === 'number' ? entry : String(entry))),
      };
    case 'invalid_union':
      return expectedOfUnion(issue.errors.flat(), value);
    case 'custom':
      return { is: 'text', rule: issue.message };
    default:
      return { is: 'text', rule: issue.message };
  }
}

/** The unions of the model: a few literals, a time, or a size and "none". */
function expectedOfUnion(issues: readonly Issue[], value: unknown): Expected {
  if (value === undefined) return { is: 'present' };
  const literals = issues.flatMap((issue) => (issue.code === 'invalid_value' ? issue.values : []));
  if (literals.includes('none')) return { is: 'size-or-none' };
  if (literals.length > 0)
    return {
      is: 'one-of',
      values: literals.map((entry) => (typeof entry === 'number' ? entry : String(entry))),
    };
  return { is: 'time' };
}

function valueAt(raw: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (value, key) =>
      value === null || typeof value !== 'object' ? undefined : (value as Record<PropertyKey, unknown>)[key],
    raw,
  );
}
