import Link from 'next/link';
import { EmptyState } from '@/app/_parts/empty-state.tsx';

export default function NotFound() {
  return (
    <EmptyState title="There is nothing at this address">
      <p>A location, truck or load may have been renamed or removed since the link was made.</p>
      <Link href="/" className="button">
        To the overview
      </Link>
      <Link href="/racks">Find a location in the racks</Link>
    </EmptyState>
  );
}
