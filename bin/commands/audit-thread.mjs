// One thread of the audit: its own loader, since types are stripped by the thread that loads a module.
import { fileURLToPath } from 'node:url';
import { parentPort } from 'node:worker_threads';
import { register } from 'tsx/esm/api';

register({ tsconfig: fileURLToPath(new URL('../../tsconfig.json', import.meta.url)) });
const { auditFile } = await import('./audit-file.ts');
parentPort.on('message', async (task) => parentPort.postMessage(await auditFile(task)));
