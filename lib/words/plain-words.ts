import type { TruckKind } from '../model/truck.ts';
import { groupDigits } from '../units/format-quantity.ts';

/** A count with its noun: "1 pallet", "2 000 pallets", "no pallets". */
export function counted(count: number, one: string, many = `${one}s`): string {
  if (count === 0) return `no ${many}`;
  return `${groupDigits(count)} ${count === 1 ? one : many}`;
}

/** A time for reading: "2026-03-02 06:30 UTC"; a date alone stays a date. */
export function instantWords(at: string): string {
  return at.length <= 10 ? at : `${at.slice(0, 10)} ${at.slice(11, 16)} UTC`;
}

/** First letter capital, full stop at the end. */
export function asSentence(clause: string): string {
  return `${clause.charAt(0).toUpperCase()}${clause.slice(1)}.`;
}

/** Trucks of a kind. */
export function truckKindWords(kind: TruckKind): string {
  switch (kind) {
    case 'counterbalance':
      return 'counterbalanced trucks';
    case 'reach':
      return 'reach trucks';
    case 'stacker':
      return 'stackers';
    case 'order-picker':
      return 'order pickers';
    case 'narrow-aisle':
      return 'narrow-aisle trucks';
  }
}
