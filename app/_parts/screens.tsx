import type { ReactElement } from 'react';
import { may, type Permission, type Role } from '@/lib/model/permissions.ts';

/** A screen that one goes to from everywhere. `bar`: shown in the bar always, on a wide screen only, or below "More". */
export type Screen = {
  href: string;
  label: string;
  bar: 'always' | 'wide' | 'never';
  needs: Permission;
  sign?: ReactElement;
};

/** Signs are line drawings on a 24 grid, of things that stand in the building. */
const SCREENS: readonly Screen[] = [
  {
    href: '/',
    label: 'Overview',
    bar: 'always',
    needs: 'read',
    sign: <path d="M3 5h18M3 11h18M3 17h18M6 5v14M18 5v14" />,
  },
  {
    href: '/racks',
    label: 'Racks',
    bar: 'always',
    needs: 'read',
    sign: <path d="M4 3v18M20 3v18M4 8h16M4 15h16M8 8V5h5v3M11 15v-4h6v4" />,
  },
  {
    href: '/which-truck',
    label: 'Which truck',
    bar: 'always',
    needs: 'read',
    sign: <path d="M6 3v15h13M6 13h9v-5H9M19 18v3" />,
  },
  {
    href: '/trucks',
    label: 'Trucks',
    bar: 'wide',
    needs: 'read',
    sign: <path d="M4 4v14M4 18h3M7 9h7l3 5v4H7zM9 21h1M15 21h1" />,
  },
  {
    href: '/loads',
    label: 'Loads',
    bar: 'wide',
    needs: 'read',
    sign: <path d="M4 16h16M6 19v-3M12 19v-3M18 19v-3M6 16V6h12v10M6 11h12" />,
  },
  {
    href: '/findings',
    label: 'Findings',
    bar: 'always',
    needs: 'read',
    sign: <path d="M5 3v18M5 4h13l-3 4 3 4H5M10 17h9M10 21h6" />,
  },
  {
    href: '/site',
    label: 'Site',
    bar: 'wide',
    needs: 'read',
    sign: <path d="M3 20V9l9-5 9 5v11M7 20v-8h10v8M7 16h10" />,
  },
  { href: '/rack-shape', label: 'Shape of racks', bar: 'never', needs: 'read' },
  { href: '/import', label: 'Read in lists', bar: 'never', needs: 'read' },
  { href: '/export', label: 'Take lists away', bar: 'never', needs: 'read' },
  { href: '/changes', label: 'Changes', bar: 'never', needs: 'read' },
  { href: '/hand-pick', label: 'Picks by hand', bar: 'never', needs: 'read' },
  { href: '/rack-advice', label: 'Rack steel', bar: 'never', needs: 'read' },
  { href: '/wear', label: 'Truck wear', bar: 'never', needs: 'read' },
  { href: '/people', label: 'People', bar: 'never', needs: 'manage-people' },
];

/** The screens that somebody of this role may look at. */
export function screensFor(role: Role): readonly Screen[] {
  return SCREENS.filter(({ needs }) => may(role, needs));
}

/** Is this path the screen or a page below it? */
export function isHere({ href }: Screen, path: string): boolean {
  return href === '/' ? path === '/' : path === href || path.startsWith(`${href}/`);
}
