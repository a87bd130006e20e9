'use client';

import { EmptyState } from '@/app/_parts/empty-state.tsx';

/** A bug, or a database that cannot be read: what happened, and what to do. Next asks for the default export. */
export default function ErrorScreen({
  error,
  reset,
}: {
  error: Error & { digest?: string };
  reset: () => void;
}) {
  return (
    <EmptyState title="This screen could not be drawn">
      <p>
        Nothing was changed. Until it works again, judge lifts by the truck's capacity plate and the rack's
        load notice.
      </p>
      <button type="button" className="button-main" onClick={reset}>
        Try again
      </button>
      <p className="soft dense">
        If it happens again, hand this to whoever keeps the program: {error.message}
        {error.digest === undefined ? '' : ` (${error.digest})`}
      </p>
    </EmptyState>
  );
}
