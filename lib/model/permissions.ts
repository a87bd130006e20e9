import type { ChangeNoun } from './change.ts';

/** What a person of the site may be. Everybody has one role. */
export const ROLES = ['planner', 'shift-lead', 'safety-officer', 'administrator', 'viewer'] as const;
export type Role = (typeof ROLES)[number];

/**
 * Who may do what. Whoever finds out that something is unsafe may stop it (a hold, a check); who may let it go again is
 * the safety officer alone, who also keeps the facts that verdicts rest on: plates, frame types, inspections, policy.
 */
export const PERMISSIONS = {
  /** every screen but those about people: facts, verdicts, reports, copies of the site file */
  read: ['planner', 'shift-lead', 'safety-officer', 'administrator', 'viewer'],
  /** aisles, runs, bays and levels, docks */
  'change-racks': ['planner'],
  /** pallet types and loads */
  'change-loads': ['planner'],
  /** a pallet comes, moves or goes */
  'move-stock': ['planner', 'shift-lead'],
  /** make a plan and release its moves */
  plan: ['planner'],
  /** carry out and tick off moves and other work on the floor */
  'do-tasks': ['planner', 'shift-lead', 'safety-officer'],
  /** rows from CSV files and spreadsheets, into whichever lists one may change */
  'import-lists': ['planner', 'safety-officer'],
  /** a site file takes the place of everything */
  'import-site': ['administrator'],
  /** the walk-round before the shift */
  'record-check': ['shift-lead', 'safety-officer'],
  'hold-truck': ['shift-lead', 'safety-officer'],
  'release-truck': ['safety-officer'],
  /** the condition of levels and frames */
  'record-inspection': ['safety-officer'],
  'change-frame-types': ['safety-officer'],
  /** trucks, their plates and attachments */
  'change-trucks': ['safety-officer'],
  /** drivers and what they are authorised for */
  'change-operators': ['safety-officer'],
  'set-policy': ['safety-officer'],
  /** who signs in, with which role; ends sessions */
  'manage-people': ['administrator'],
  /** whole copies of the database */
  'back-up': ['administrator'],
} as const satisfies Record<string, readonly Role[]>;

export type Permission = keyof typeof PERMISSIONS;
export const PERMISSION_IDS = Object.keys(PERMISSIONS) as Permission[];

/** May somebody of this role do this? */
export function may(role: Role, what: Permission): boolean {
  return rolesThatMay(what).includes(role);
}

export function rolesThatMay(what: Permission): readonly Role[] {
  return PERMISSIONS[what];
}

/** Which permission does a change of a fact of this kind take? A run's conditions alone take `record-inspection`. */
export const CHANGE_PERMISSION = {
  site: 'import-site',
  policy: 'set-policy',
  'pallet-type': 'change-loads',
  'frame-type': 'change-frame-types',
  aisle: 'change-racks',
  run: 'change-racks',
  dock: 'change-racks',
  truck: 'change-trucks',
  'plate-photo': 'change-trucks',
  operator: 'change-operators',
  load: 'change-loads',
  stock: 'move-stock',
  check: 'record-check',
} as const satisfies Record<ChangeNoun, Permission>;

export function isRole(value: unknown): value is Role {
  return ROLES.some((role) => role === value);
}
