import { grossMass, type Load, type PalletType } from '../model/load.ts';

/** The same load as far as verdicts go, without its lists: short enough for an address whatever it is made of. */
export function leanLoad(load: Load, pallet: PalletType | null): Load {
  const gross = grossMass(load, pallet);
  return {
    ...load,
    name: load.id,
    items: null,
    grossKg: gross?.kg ?? null,
    massBasis: gross?.basis ?? load.massBasis,
    picksPerWeek: null,
    group: null,
    handPick: null,
  };
}
