import type { ForkArmFault } from '../check/walk-round/fork-arm-wear.ts';
import type { RetestRule } from '../check/walk-round/gas-cylinder.ts';
import type { ChainState } from '../check/walk-round/lift-chain.ts';

/** Said over every measurement of a truck. */
export const WEAR_CAUTIONS: readonly string[] = [
  'Within these limits is not fit for service. Cracks, worn hooks, faulty locks, weld, rust, uneven chains, leaks, dents and fire damage take a truck or cylinder out of service whatever is measured.',
  'Nothing is kept here. A truck that must not be used is put on hold, and a walk round is recorded, on the truck’s own page.',
];

export function forkArmFaultWords({ what, measured, limit, unit }: ForkArmFault): string {
  const sizes = `${short(measured)} ${unit === 'mm' ? 'mm' : '°'}, limit ${short(limit)} ${unit === 'mm' ? 'mm' : '°'}`;
  switch (what) {
    case 'thickness':
      return `worn down: ${sizes}`;
    case 'tips':
      return `tips at different heights: ${sizes}`;
    case 'bow':
      return `bowed: ${sizes}`;
    case 'angle':
      return `blade and shank opened: ${sizes}`;
  }
}

export function chainStateWords(state: ChainState): string {
  switch (state) {
    case 'good':
      return 'below 2 %: in order';
    case 'plan-replacement':
      return '2 % or more: plan its replacement';
    case 'replace':
      return '3 % or more: take the truck out of service and replace it';
  }
}

export function retestRuleWords(rule: RetestRule): string {
  switch (rule) {
    case 'us-external-visual':
      return 'US, external visual (stamp with E)';
    case 'us-proof-pressure':
      return 'US, proof pressure';
    case 'us-volumetric-expansion':
      return 'US, volumetric expansion';
    case 'australia':
      return 'Australia';
    case 'new-zealand':
      return 'New Zealand';
    case 'europe':
      return 'Europe';
    case 'unknown':
      return 'Not known';
  }
}

function short(value: number): number {
  return Math.round(value * 100) / 100;
}
