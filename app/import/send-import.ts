import type { AskedImport, ImportAnswer } from '@/app/import/asked-import.ts';
import type { DryRun } from '@/app/import/dry-run.ts';

/** Sends the files of a dry run to be stored. `onSent`: the share of them that has left, 0 to 1. */
export function sendImport(run: DryRun, onSent: (share: number) => void): Promise<ImportAnswer> {
  const asked: AskedImport = {
    mode: run.mode,
    digest: run.digest,
    files: run.shown.map(({ file }) => ({
      name: file.name,
      choice: file.choice,
      mapping: file.state.mapping,
    })),
  };
  const form = new FormData();
  form.set('asked', JSON.stringify(asked));
  for (const { file } of run.shown) form.append('file', new Blob([file.bytes as BlobPart]), file.name);
  return new Promise((resolve, reject) => {
    const request = new XMLHttpRequest(); // fetch does not tell how much has left
    request.upload.onprogress = ({ loaded, total }) => onSent(total === 0 ? 0 : loaded / total);
    request.upload.onload = () => onSent(1);
    request.onerror = () =>
      reject(new Error('The server did not answer. Whether it stored the lists is not known.'));
    request.onload = () => {
      try {
        resolve(JSON.parse(request.responseText) as ImportAnswer);
      } catch {
        reject(
          new Error(
            request.status === 401
              ? 'You are signed out. Nothing was stored. Load the page again to sign in.'
              : `The server answered ${request.status}. Nothing is known to be stored.`,
          ),
        );
      }
    };
    request.open('POST', '/import/apply');
    request.send(form);
  });
}
