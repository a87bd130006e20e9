'use client';

import { useState } from 'react';
import { postJson } from '@/app/_parts/post-json.ts';
import styles from '@/app/_parts/sign-in.module.css';
import type { Role } from '@/lib/model/permissions.ts';

type DemoRole = { role: Role; name: string; duty: string };

/** One button a role. The whole page is loaded anew afterwards, so that nothing of an earlier role stays. */
export function DemoRoles({ roles, next }: { roles: readonly DemoRole[]; next: string }) {
  const [fault, setFault] = useState<string | null>(null);
  const [busy, setBusy] = useState(false);
  async function enter(role: Role) {
    setBusy(true);
    const refused = await postJson('/api/auth/demo-sign-in', { role });
    if (refused === null) return window.location.assign(next);
    setBusy(false);
    setFault(refused);
  }
  return (
    <>
      <ul className={styles.roles}>
        {roles.map(({ role, name, duty }) => (
          <li key={role}>
            <button type="button" disabled={busy} onClick={() => enter(role)}>
              {name[0]!.toUpperCase() + name.slice(1)}
              <span className="soft dense">{duty}</span>
            </button>
          </li>
        ))}
      </ul>
      <p className="fault" role="alert">
        {fault}
      </p>
    </>
  );
}
