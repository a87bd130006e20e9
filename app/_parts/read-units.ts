import 'server-only';
import { cookies } from 'next/headers';
import { UNITS_COOKIE, unitsOfCookie } from '@/app/_parts/units-cookie.ts';
import type { DisplayUnits } from '@/lib/units/format-quantity.ts';

/** Which units does this reader want figures shown in? Remembered in a cookie, so that the server's first page is right. */
export async function readUnits(): Promise<DisplayUnits> {
  return unitsOfCookie((await cookies()).get(UNITS_COOKIE)?.value);
}
