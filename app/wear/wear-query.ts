import type { RawQuery } from '@/app/_parts/lift-query.ts';
import { measureReader, typedText } from '@/app/_parts/typed-measures.ts';
import type { ForkArmMeasured } from '@/lib/check/walk-round/fork-arm-wear.ts';
import { RETEST_YEARS, type RetestRule } from '@/lib/check/walk-round/gas-cylinder.ts';
import { cameAs, nearestTo, type Refusal } from '@/lib/model/refusal.ts';
import type { SiteIndex } from '@/lib/model/site-index.ts';
import type { Truck } from '@/lib/model/truck.ts';

export type WearQuery = {
  truck: Truck | null;
  forks: ForkArmMeasured;
  chain: { pitchMm: number; pinsCounted: number; measuredMm: number } | null;
  cylinder: { stamped: string; rule: RetestRule } | null;
  dent: { depthMm: number; meanDiameterMm: number; onWeld: boolean } | null;
  refused: readonly Refusal[];
};

export const RETEST_RULES = Object.keys(RETEST_YEARS) as RetestRule[];

/**
 * Which measurements of a truck does this address give? truck; heel-new, heel, blade (else the truck's fork length),
 * tips, bow, angle; pitch, pins, chain; stamp (YYYY-MM) and rule; dent, dent-width and weld (yes). What cannot be read, or cannot be so, is refused by
 * name; what was not measured is left out.
 */
export function readWearQuery(index: SiteIndex, raw: RawQuery): WearQuery {
  const { read, refused } = measureReader(raw);
  const id = typedText(raw, 'truck');
  const truck = id === undefined ? null : (index.trucks.get(id) ?? null);
  if (id !== undefined && truck === null) {
    const nearest = nearestTo(id, index.trucks.keys());
    refused.push({
      path: '$.truck',
      came: cameAs(id),
      expected: { is: 'id-in', list: 'the trucks of this site', nearest },
    });
  }
  const above = (name: string, value: number | null) => {
    if (value === 0) refused.push({ path: `$.${name}`, came: '0', expected: { is: 'above', limit: 0 } });
    return value === 0 ? null : value;
  };
  const originalMm = above('heel-new', read('heel-new', 'length'));
  const nowMm = read('heel', 'length');
  const bladeMm = above('blade', read('blade', 'length')) ?? truck?.forks.lengthMm ?? null;
  const tipsMm = read('tips', 'length');
  const bowMm = read('bow', 'length');
  const angleDeg = read('angle', 'number');
  const depthMm = read('dent', 'length');
  const widthMm = above('dent-width', read('dent-width', 'length'));
  return {
    truck,
    forks: {
      ...(originalMm === null || nowMm === null ? {} : { thickness: { originalMm, nowMm } }),
      ...(bladeMm === null ? {} : { bladeLengthMm: bladeMm }),
      ...(tipsMm === null ? {} : { tipDifferenceMm: tipsMm }),
      ...(bowMm === null ? {} : { bowMm }),
      ...(angleDeg === null ? {} : { angleDeg }),
    },
    chain: chainOf(),
    cylinder: cylinderOf(),
    dent:
      depthMm === null || widthMm === null
        ? null
        : { depthMm, meanDiameterMm: widthMm, onWeld: typedText(raw, 'weld') === 'yes' },
    refused,
  };

  function chainOf(): WearQuery['chain'] {
    const pitchMm = above('pitch', read('pitch', 'length'));
    const pinsCounted = read('pins', 'number');
    const measuredMm = read('chain', 'length');
    if (pinsCounted !== null && !(Number.isInteger(pinsCounted) && pinsCounted >= 2)) {
      refused.push({
        path: '$.pins',
        came: String(pinsCounted),
        expected: { is: 'text', rule: 'a whole number from 2' },
      });
      return null;
    }
    if (pitchMm === null || pinsCounted === null || measuredMm === null) return null;
    const newMm = pitchMm * (pinsCounted - 1);
    if (measuredMm < newMm) {
      refused.push({ path: '$.chain', came: String(measuredMm), expected: { is: 'at-least', limit: newMm } });
      return null;
    }
    return { pitchMm, pinsCounted, measuredMm };
  }

  function cylinderOf(): WearQuery['cylinder'] {
    const stamped = typedText(raw, 'stamp');
    const ruleText = typedText(raw, 'rule');
    const rule = RETEST_RULES.find((each) => each === (ruleText ?? 'unknown'));
    if (rule === undefined) {
      refused.push({
        path: '$.rule',
        came: cameAs(ruleText),
        expected: { is: 'one-of', values: RETEST_RULES },
      });
    }
    if (stamped === undefined || rule === undefined) return null;
    if (!/^\d{4}-(0[1-9]|1[0-2])$/.test(stamped)) {
      refused.push({
        path: '$.stamp',
        came: cameAs(stamped),
        expected: { is: 'text', rule: 'a month such as 2021-06' },
      });
      return null;
    }
    return { stamped, rule };
  }
}
