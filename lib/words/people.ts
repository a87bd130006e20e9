import { type Permission, type Role, rolesThatMay } from '../model/permissions.ts';
import { PASSWORD_LENGTH, type PasswordFault } from '../model/person.ts';

const ROLE_WORDS: Record<Role, string> = {
  planner: 'planner',
  'shift-lead': 'shift lead',
  'safety-officer': 'safety officer',
  administrator: 'administrator',
  viewer: 'viewer',
};

export function roleWords(role: Role): string {
  return ROLE_WORDS[role];
}

/** What a role is for, in a line. */
export function roleDuty(role: Role): string {
  switch (role) {
    case 'planner':
      return 'racks, loads, stock, plans and lists read in';
    case 'shift-lead':
      return 'stock moves, walk-round checks, holds put on, tasks';
    case 'safety-officer':
      return 'policy, inspections, plates, trucks and drivers; takes holds off';
    case 'administrator':
      return 'people, backups and the site file';
    case 'viewer':
      return 'looks at everything, changes nothing';
  }
}

const DOING: Record<Permission, string> = {
  read: 'look at this',
  'change-racks': 'change racks',
  'change-loads': 'change loads',
  'move-stock': 'move stock',
  plan: 'make plans',
  'do-tasks': 'carry out tasks',
  'import-lists': 'read in lists',
  'import-site': 'read in a site file',
  'record-check': 'write down a check',
  'hold-truck': 'put a truck on hold',
  'release-truck': 'take a hold off',
  'record-inspection': 'write down an inspection',
  'change-frame-types': 'change frame types',
  'change-trucks': 'change trucks and plates',
  'change-operators': 'change drivers and their authorisations',
  'set-policy': 'set policy',
  'manage-people': 'see and change who signs in',
  'back-up': 'take a backup',
};

export function permissionWords(what: Permission): string {
  return DOING[what];
}

/** "Only a planner or a shift lead may move stock; you are signed in as a viewer." */
export function notAllowedSentence(what: Permission, role: Role): string {
  const roles = rolesThatMay(what).map(withArticle);
  const last = roles.pop()!;
  const who = roles.length === 0 ? last : `${roles.join(', ')} or ${last}`;
  return `Only ${who} may ${DOING[what]}; you are signed in as ${withArticle(role)}.`;
}

export function passwordFaultSentence(fault: PasswordFault): string {
  switch (fault) {
    case 'too-short':
      return `The password has fewer than ${PASSWORD_LENGTH.from} characters.`;
    case 'too-long':
      return `The password has more than ${PASSWORD_LENGTH.to} characters.`;
    case 'few-characters':
      return 'The password is made of fewer than 5 different characters.';
    case 'holds-name':
      return "The password holds the person's own name.";
  }
}

export const NOT_FROM_DEMO_SENTENCE =
  'People of the demo let nobody in. The one-time link that was printed when Tinewise started makes an administrator who can.';

export const PASSWORD_RULES = `At least ${PASSWORD_LENGTH.from} characters, 5 of them different, and not your own name. Several words in a row are good.`;

/** "Too many wrong tries. Try again in 12 minutes." */
export function tooManyTriesSentence(seconds: number): string {
  if (seconds < 90) return `Too many wrong tries. Try again in ${seconds} seconds.`;
  return `Too many wrong tries. Try again in ${Math.ceil(seconds / 60)} minutes.`;
}

function withArticle(role: Role): string {
  return role === 'administrator' ? 'an administrator' : `a ${ROLE_WORDS[role]}`;
}
