/** What no fact of the site speaks of, and so no verdict can: the person at the truck looks at it. */
export const NOT_JUDGED: readonly string[] = [
  'The floor under the wheels: slope, joints, holes, wet or ice; dock plates and lorry beds.',
  'The pallet and the load on it: broken boards, loose wrap, liquids that move, goods that lean or overhang.',
  'How the truck is driven: speed, travel with the load raised, tilt, braking, side pull.',
  'Sight, lighting, and people on foot in and beside the aisle.',
  'Tyres, hydraulics, chains and forks beyond what the check before the shift found.',
  'Whether the rack stands as its notice describes: locks, anchors, changed beam heights, fresh damage.',
];
