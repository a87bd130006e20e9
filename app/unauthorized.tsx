import { EmptyState } from '@/app/_parts/empty-state.tsx';

/** The session has ended meanwhile. Next asks for the default export. */
export default function Unauthorized() {
  return (
    <EmptyState title="You are signed out">
      <p>Nothing was changed.</p>
      <a href="/sign-in" className="button button-main">
        Sign in
      </a>
    </EmptyState>
  );
}
