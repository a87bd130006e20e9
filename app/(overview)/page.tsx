import { EmptyState } from '@/app/_parts/empty-state.tsx';

export default function OverviewPage() {
  return (
    <EmptyState title="No site yet">
      <p>Read a site file in on the Site screen.</p>
    </EmptyState>
  );
}
