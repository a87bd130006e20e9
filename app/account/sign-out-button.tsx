'use client';

import { useState } from 'react';
import { postJson } from '@/app/_parts/post-json.ts';

export function SignOutButton() {
  const [fault, setFault] = useState<string | null>(null);
  async function signOut() {
    const refused = await postJson('/api/auth/sign-out', {});
    if (refused === null) window.location.assign('/sign-in');
    else setFault(refused);
  }
  return (
    <>
      <button type="button" onClick={signOut}>
        Sign out
      </button>
      <p className="fault" role="alert">
        {fault}
      </p>
    </>
  );
}
