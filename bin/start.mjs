// npm start: from a fresh checkout to a running Tinewise. Node's own modules only: nothing may be installed yet.
import { resolve } from 'node:path';
import { freePort } from './free-port.mjs';
import {
  buildWhenStale,
  demandNode,
  installWhenNeeded,
  prepareDatabase,
  printFirstLink,
} from './make-ready.mjs';
import { isStopping, ROOT, startNext, stopTogether } from './processes.mjs';

const USUAL_PORT = 4173;
const ANSWER_WITHIN_MS = 90_000;

const flags = new Set(process.argv.slice(2));
const unknown = [...flags].filter((flag) => flag !== '--dev' && flag !== '--prepare');
if (unknown.length > 0) {
  console.error(
    `Unknown: ${unknown.join(' ')}. Known: --dev (development server), --prepare (all but serve).`,
  );
  process.exit(1);
}
const isDev = flags.has('--dev');
const host = process.env.HOST || '127.0.0.1';

demandNode();
stopTogether();
process.env.TINEWISE_DATA = resolve(ROOT, process.env.TINEWISE_DATA || 'data');
process.env.TINEWISE_HOST = host; // the server offers the demo without a password to this machine alone

await demand(installWhenNeeded(), 'Installing failed.');
if (!isDev) await demand(buildWhenStale(), 'Building failed.');
await demand(prepareDatabase(), 'The database could not be made ready.');
if (!flags.has('--prepare')) await serve();

async function serve() {
  const port = await choosePort();
  const server = startNext([isDev ? 'dev' : 'start', '-H', host, '-p', String(port)]);
  server.on('exit', (code) => process.exit(isStopping() ? 0 : (code ?? 1)));
  const everywhere = host === '0.0.0.0' || host === '::';
  const address = `http://${everywhere ? '127.0.0.1' : host.includes(':') ? `[${host}]` : host}:${port}`;
  if (await answers(address)) {
    console.log(`\nTinewise is ready: ${address}\n`);
    await printFirstLink(process.env.TINEWISE_URL || address);
    return;
  }
  if (isStopping()) return;
  console.error(`No answer from ${address} within ${ANSWER_WITHIN_MS / 1000} s.`);
  server.kill('SIGTERM');
}

/** PORT where it is set, and then that or nothing; else the usual port or the next one that is free. */
async function choosePort() {
  const set = process.env.PORT;
  const first = set ? Number(set) : USUAL_PORT;
  if (!Number.isInteger(first) || first < 1 || first > 65_535) {
    console.error(`PORT is ${JSON.stringify(set)}; a number from 1 to 65535 was expected.`);
    process.exit(1);
  }
  const port = await freePort(host, first, set ? 1 : 50);
  if (port === null) {
    console.error(`Port ${first} on ${host} is taken or may not be used. Set PORT to another one.`);
    process.exit(1);
  }
  return port;
}

async function answers(address) {
  const end = Date.now() + ANSWER_WITHIN_MS;
  while (Date.now() < end && !isStopping()) {
    try {
      await fetch(address, { signal: AbortSignal.timeout(30_000) });
      return true;
    } catch {
      await new Promise((done) => setTimeout(done, 200));
    }
  }
  return false;
}

async function demand(work, failure) {
  const code = await work;
  if (isStopping()) process.exit(130);
  if (code === 0) return;
  console.error(failure);
  process.exit(1);
}
