import Link from 'next/link';
import { EmptyState } from '@/app/_parts/empty-state.tsx';

/** What every screen shows while the database holds no site. */
export function NoSite() {
  return (
    <EmptyState title="There is no site yet">
      <p>Read in a site file: its racks, trucks, loads and stock. Nothing can be judged before.</p>
      <Link href="/site" className="button button-main">
        Read in a site file
      </Link>
    </EmptyState>
  );
}
