import Link from 'next/link';
import { EmptyState } from '@/app/_parts/empty-state.tsx';
import { currentlySignedIn } from '@/app/_parts/require-permission.ts';
import { roleWords } from '@/lib/words/people.ts';

/** Somebody is signed in whose role may not do this. Next asks for the default export. */
export default async function Forbidden() {
  const by = await currentlySignedIn();
  return (
    <EmptyState title="This is not for your role">
      <p>
        {by === null ? null : `You are signed in as ${by.person.name}, ${roleWords(by.person.role)}. `}
        Nothing was changed. An administrator can give you another role.
      </p>
      <Link href="/" className="button">
        To the overview
      </Link>
    </EmptyState>
  );
}
