import { requirePermission } from '@/app/_parts/require-permission.ts';
import { askedImportSchema, type ImportAnswer } from '@/app/import/asked-import.ts';
import { takeIn } from '@/app/import/take-in.ts';
import { whoIs } from '@/lib/model/person.ts';
import { serverDatabase, siteSnapshot } from '@/lib/store/server-database.ts';
import { isFromOwnPage } from '@/lib/store/sign-in.ts';
import { StoreUnavailable } from '@/lib/store/transaction.ts';
import { unavailableSentence } from '@/lib/words/change.ts';

const STATUS = { done: 200, differs: 409, refused: 422 } as const satisfies Record<
  ImportAnswer['state'],
  number
>;

/** Stores the files of a dry run: a form with `asked` (JSON, see AskedImport) and a `file` for each of its files, in order. */
export async function POST(request: Request): Promise<Response> {
  const person = await requirePermission('import-lists');
  if (!isFromOwnPage(request.headers))
    return answer({ state: 'refused', message: 'This did not come from a page of this site.' });
  const form = await formOf(request);
  const asked = askedImportSchema.safeParse(jsonOrNull(form.get('asked')));
  const files = form.getAll('file').filter((file) => file instanceof File);
  if (!asked.success || files.length !== asked.data.files.length) {
    return answer({ state: 'refused', message: 'What was asked could not be read. Load the page again.' });
  }
  const snapshot = await siteSnapshot();
  if (snapshot === null)
    return answer({ state: 'refused', message: 'There is no site to read lists into yet.' });
  const bytes = await Promise.all(files.map(async (file) => new Uint8Array(await file.arrayBuffer())));
  const by = { actor: { who: whoIs(person), at: new Date().toISOString() }, role: person.role };
  try {
    return answer(await takeIn(serverDatabase(), snapshot, by, asked.data, bytes));
  } catch (error) {
    if (!(error instanceof StoreUnavailable)) throw error;
    return answer({ state: 'refused', message: unavailableSentence(error.reason) });
  }
}

function answer(body: ImportAnswer): Response {
  return Response.json(body, { status: STATUS[body.state], headers: { 'cache-control': 'no-store' } });
}

/** An empty one where what was sent is no form. */
async function formOf(request: Request): Promise<FormData> {
  try {
    return await request.formData();
  } catch {
    return new FormData();
  }
}

function jsonOrNull(text: FormDataEntryValue | null): unknown {
  try {
    return typeof text === 'string' ? JSON.parse(text) : null;
  } catch {
    return null;
  }
}
