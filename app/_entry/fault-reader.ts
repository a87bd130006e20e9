import type { FaultOf } from '@/app/_entry/fields.tsx';
import type { SaveOutcome } from '@/app/_entry/use-save.ts';
import { type FieldFaults, isMissing } from '@/lib/entry/field-fault.ts';
import { fieldFaultSentence } from '@/lib/words/entry.ts';

/**
 * The sentence at each field: what the form itself finds, else what the server refused there. What is merely missing is
 * told once saving was tried. `first`: the field to go to.
 */
export function faultReader(
  faults: FieldFaults,
  outcome: SaveOutcome | null,
  list: 'trucks' | 'loads',
  wasTried: boolean,
): { fault: FaultOf; count: number; first: string | undefined } {
  const told = new Map<string, string>();
  for (const [field, fault] of faults)
    if (wasTried || !isMissing(fault)) told.set(field, fieldFaultSentence(fault));
  if (outcome?.state === 'refused')
    for (const refusal of outcome.refusals) {
      const field = refusal.path.replace(`$.${list}[0].`, '');
      if (!told.has(field)) told.set(field, fieldFaultSentence({ is: 'refused', refusal }));
    }
  return { fault: (field) => told.get(field) ?? null, count: told.size, first: [...told.keys()][0] };
}
