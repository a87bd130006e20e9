import { requirePermission } from '@/app/_parts/require-permission.ts';
import { readPhoto } from '@/lib/store/plate-photos.ts';
import { serverDatabase } from '@/lib/store/server-database.ts';

/**
 * The photo of a plate by the hash of its bytes: what has this address never changes, so a browser may keep it for good,
 * though no cache between. Shown as a picture and as nothing else.
 */
export async function GET(
  _request: Request,
  { params }: { params: Promise<{ hash: string }> },
): Promise<Response> {
  await requirePermission('read');
  const { hash } = await params;
  const photo = /^[0-9a-f]{64}$/.test(hash) ? readPhoto(serverDatabase(), hash) : null;
  if (photo === null) return new Response('There is no such photo.', { status: 404 });
  return new Response(new Uint8Array(photo.bytes), {
    headers: {
      'content-type': photo.type,
      'cache-control': 'private, max-age=31536000, immutable',
      'content-disposition': 'inline; filename="capacity-plate"',
      'content-security-policy': "default-src 'none'; sandbox",
      'x-content-type-options': 'nosniff',
    },
  });
}
