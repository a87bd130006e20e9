import 'server-only';
import type { ReactNode } from 'react';
import { requirePermission } from '@/app/_parts/require-permission.ts';
import { may, type Permission } from '@/lib/model/permissions.ts';
import { notAllowedSentence } from '@/lib/words/people.ts';

/** Shows what is for those who may do this; the others read who may. The server refuses them in any case. */
export async function Allowed({ what, children }: { what: Permission; children: ReactNode }) {
  const { role } = await requirePermission('read');
  return may(role, what) ? children : <p className="soft">{notAllowedSentence(what, role)}</p>;
}
