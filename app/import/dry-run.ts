import { fetchJson } from '@/app/_parts/fetch-json.ts';
import type { SiteChanges } from '@/app/api/site/changes/route.ts';
import type { ReadyFile } from '@/app/import/import-file.ts';
import { planDigest } from '@/app/import/plan-digest.ts';
import { LIST_NAMES } from '@/lib/import/lists.ts';
import type { ImportMode, ImportPlan } from '@/lib/import/plan-import.ts';
import { applyChange } from '@/lib/model/apply-change.ts';
import type { Site } from '@/lib/model/site.ts';
import type { ImportProgress } from '@/workers/import-desk.ts';

export type ShownPlan = { file: ReadyFile; plan: Omit<ImportPlan, 'site'> };

/** What an import would do, list by list in the order in which they lean on one another. */
export type DryRun = {
  mode: ImportMode;
  shown: readonly ShownPlan[];
  applies: boolean;
  digest: string;
  revision: number;
};

export type FileProgress = {
  file: ReadyFile;
  stage: Parameters<ImportProgress>[0];
  done: number;
  total: number;
};

/** Files in the order in which their lists lean on one another; those of one list as they were chosen. */
export function inOrder(files: readonly ReadyFile[]): ReadyFile[] {
  const place = (file: ReadyFile) => LIST_NAMES.indexOf(file.state.mapping.list);
  return [...files].sort((a, b) => place(a) - place(b));
}

/**
 * The dry run of all files, each in its worker, on the site as the server has it now; each list is planned on what the
 * ones before it would leave, as the server does. Null when it was stopped. Throws when the site cannot be had.
 */
export async function dryRun(
  files: readonly ReadyFile[],
  mode: ImportMode,
  onProgress: (progress: FileProgress) => void,
): Promise<DryRun | null> {
  const { revision, site } = await fetchSite();
  const shown: ShownPlan[] = [];
  let now = site;
  for (const file of inOrder(files)) {
    onProgress({ file, stage: 'reading', done: 0, total: 1 });
    const reply = await file.client.plan(now, file.state.mapping, mode, (stage, done, total) =>
      onProgress({ file, stage, done, total }),
    );
    if (reply.kind === 'stopped') return null;
    const { site: after, ...plan } = reply.result;
    shown.push({ file, plan });
    now = after;
  }
  const applies = shown.every(({ plan }) => plan.applies);
  return { mode, shown, applies, digest: planDigest(shown.map(({ plan }) => plan)), revision };
}

/** The site as it stands: what the server sends whole may be some changes old, which it then sends one by one. */
async function fetchSite(): Promise<{ revision: number; site: Site }> {
  const whole = await fetchJson<{ revision: number; site: Site }>('/api/site');
  const { revision, changes } = await fetchJson<SiteChanges>(`/api/site/changes?since=${whole.revision}`);
  if (changes === null) throw new Error('the site is being changed in large part just now; try again');
  return { revision, site: changes.reduce(applyChange, whole.site) };
}
