import { strToU8, zipSync } from 'fflate';
import { requirePermission } from '@/app/_parts/require-permission.ts';
import { type Exported, exportedOf, fileName } from '@/app/export/file-name.ts';
import { exportList } from '@/lib/import/export-lists.ts';
import { LIST_NAMES } from '@/lib/import/lists.ts';
import type { Site } from '@/lib/model/site.ts';
import { writeSiteText } from '@/lib/model/site-file.ts';
import { siteSnapshot } from '@/lib/store/server-database.ts';

/** The site file, a list as CSV, or all lists in a zip file, to be kept or read in again. */
export async function GET(
  _request: Request,
  { params }: { params: Promise<{ file: string }> },
): Promise<Response> {
  await requirePermission('read');
  const [snapshot, { file }] = await Promise.all([siteSnapshot(), params]);
  const asked = exportedOf(file);
  if (asked === null || snapshot === null)
    return new Response('There is nothing of this name.', { status: 404 });
  const { site } = snapshot;
  const { type, body } = bodyOf(site, asked);
  return new Response(body, {
    headers: {
      'content-type': type,
      'content-disposition': `attachment; filename="${fileName(site.site.name, new Date(), file)}"`,
      'cache-control': 'no-store',
    },
  });
}

function bodyOf(site: Site, asked: Exported): { type: string; body: BodyInit } {
  switch (asked.what) {
    case 'site':
      return { type: 'application/json; charset=utf-8', body: writeSiteText(site) };
    case 'list':
      return { type: 'text/csv; charset=utf-8', body: exportList(site, asked.list) };
    case 'all': {
      const files = LIST_NAMES.map((list) => [`${list}.csv`, strToU8(exportList(site, list))] as const);
      return { type: 'application/zip', body: zipSync(Object.fromEntries(files), { level: 6 }) as BodyInit };
    }
  }
}
