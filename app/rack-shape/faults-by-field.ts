import type { ShapeRefusal } from '@/lib/rack-shape/shape-fault.ts';
import type { DisplayUnits } from '@/lib/units/format-quantity.ts';
import { shapeFaultSentence } from '@/lib/words/rack-shape.ts';

/** The first fault of each field in words. What is merely missing yet is told only where `all`. */
export function faultsByField(refusals: readonly ShapeRefusal[], units: DisplayUnits, all: boolean) {
  const faults = new Map<string, string>();
  for (const { field, fault } of refusals) {
    if (fault.is === 'missing' && !all) continue;
    if (!faults.has(field)) faults.set(field, shapeFaultSentence(fault, units));
  }
  return (field: string): string | null => faults.get(field) ?? null;
}
