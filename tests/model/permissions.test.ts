import { describe, expect, it } from 'vitest';
import { CHANGE_NOUNS } from '../../lib/model/change.ts';
import {
  CHANGE_PERMISSION,
  isRole,
  may,
  PERMISSION_IDS,
  type Permission,
  ROLES,
  rolesThatMay,
} from '../../lib/model/permissions.ts';
import { notAllowedSentence, permissionWords, roleDuty, roleWords } from '../../lib/words/people.ts';

/** The whole table, written a second time: planner, shift lead, safety officer, administrator, viewer. */
const TABLE: Record<Permission, string> = {
  read: 'yes yes yes yes yes',
  'change-racks': 'yes no no no no',
  'change-loads': 'yes no no no no',
  'move-stock': 'yes yes no no no',
  plan: 'yes no no no no',
  'do-tasks': 'yes yes yes no no',
  'import-lists': 'yes no yes no no',
  'import-site': 'no no no yes no',
  'record-check': 'no yes yes no no',
  'hold-truck': 'no yes yes no no',
  'release-truck': 'no no yes no no',
  'record-inspection': 'no no yes no no',
  'change-frame-types': 'no no yes no no',
  'change-trucks': 'no no yes no no',
  'change-operators': 'no no yes no no',
  'set-policy': 'no no yes no no',
  'manage-people': 'no no no yes no',
  'back-up': 'no no no yes no',
};

const cells = PERMISSION_IDS.flatMap((what) =>
  TABLE[what].split(' ').map((answer, at) => ({ what, role: ROLES[at]!, expected: answer === 'yes' })),
);

describe('what each role may do', () => {
  it.each(cells)('$role: $what? $expected', ({ role, what, expected }) => {
    expect(may(role, what)).toBe(expected);
  });

  it('is said for every permission, by five answers', () => {
    expect(cells).toHaveLength(PERMISSION_IDS.length * 5);
    expect(Object.keys(TABLE).sort()).toEqual([...PERMISSION_IDS].sort());
  });

  it('leaves nothing that nobody may do', () => {
    expect(PERMISSION_IDS.filter((what) => rolesThatMay(what).length === 0)).toEqual([]);
  });

  it('lets the viewer read and nothing else', () => {
    expect(PERMISSION_IDS.filter((what) => may('viewer', what))).toEqual(['read']);
  });

  it('lets everybody who may put a truck on hold do so without whoever may release it', () => {
    expect(rolesThatMay('hold-truck')).toEqual(expect.arrayContaining([...rolesThatMay('release-truck')]));
    expect(may('shift-lead', 'hold-truck') && !may('shift-lead', 'release-truck')).toBe(true);
  });

  it('keeps people and facts apart: who gives roles changes no fact one by one', () => {
    const byAdministrator = PERMISSION_IDS.filter((what) => may('administrator', what));
    expect(byAdministrator.sort()).toEqual(['back-up', 'import-site', 'manage-people', 'read']);
  });
});

describe('a change of a fact', () => {
  it.each(CHANGE_NOUNS)('of the kind %s takes a permission of its own, more than reading', (noun) => {
    const permission = CHANGE_PERMISSION[noun];
    expect(PERMISSION_IDS).toContain(permission);
    expect(permission).not.toBe('read');
  });
});

describe('the words for roles', () => {
  it('say who may, and as what one is signed in', () => {
    expect(notAllowedSentence('move-stock', 'viewer')).toBe(
      'Only a planner or a shift lead may move stock; you are signed in as a viewer.',
    );
    expect(notAllowedSentence('do-tasks', 'administrator')).toBe(
      'Only a planner, a shift lead or a safety officer may carry out tasks; you are signed in as an administrator.',
    );
    expect(notAllowedSentence('set-policy', 'planner')).toBe(
      'Only a safety officer may set policy; you are signed in as a planner.',
    );
  });

  it('are there for each role and permission', () => {
    for (const role of ROLES) expect(`${roleWords(role)}: ${roleDuty(role)}`).toMatch(/^[a-z ]+: .{10,}$/);
    for (const what of PERMISSION_IDS) expect(permissionWords(what)).toMatch(/^[a-z]/);
  });

  it('are for roles only', () => {
    expect([...ROLES, 'owner', '', null, 7].map(isRole)).toEqual([
      ...ROLES.map(() => true),
      false,
      false,
      false,
      false,
    ]);
  });
});
