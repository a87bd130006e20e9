'use server';

import { revalidatePath } from 'next/cache';
import { cookies } from 'next/headers';
import { requirePermission } from '@/app/_parts/require-permission.ts';
import { UNITS_COOKIE, unitsOfCookie } from '@/app/_parts/units-cookie.ts';

const YEAR_S = 365 * 24 * 3600;

/** Remembers the units to show. The address, and so what is being looked at, does not change. */
export async function chooseUnits(form: FormData): Promise<void> {
  await requirePermission('read');
  const asked = form.get('units');
  const units = unitsOfCookie(typeof asked === 'string' ? asked : undefined);
  (await cookies()).set(UNITS_COOKIE, units, { path: '/', maxAge: YEAR_S, sameSite: 'lax', httpOnly: true });
  revalidatePath('/', 'layout');
}
