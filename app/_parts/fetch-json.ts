/**
 * JSON from an address of ours. The site comes zipped, under the type of a zipped file: Next drops the content-encoding
 * that a handler sets, and zips the answer once more.
 */
export async function fetchJson<T>(address: string): Promise<T> {
  const response = await fetch(address);
  if (!response.ok || response.body === null) throw new Error(`the server answered ${response.status}`);
  const isZipped = response.headers.get('content-type') === 'application/gzip';
  const plain = isZipped
    ? new Response(response.body.pipeThrough(new DecompressionStream('gzip')))
    : response;
  return (await plain.json()) as T;
}
