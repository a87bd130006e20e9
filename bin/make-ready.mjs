import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { ROOT, runNext, runNode, runNpm } from './processes.mjs';

/** The oldest Node.js that Next 16 runs on. */
const OLDEST_NODE = [20, 9];

/** What a build is made from. Whatever else changes needs no new one. */
const BUILT_FROM = [
  'app',
  'lib',
  'workers',
  'public',
  'proxy.ts',
  'instrumentation.ts',
  'instrumentation-client.ts',
  'next.config.mjs',
  'tsconfig.json',
  'package-lock.json',
];

/** Is this Node.js, "20.9.0", new enough? */
export function nodeIsNewEnough(version) {
  const [major, minor] = version.split('.').map(Number);
  return major > OLDEST_NODE[0] || (major === OLDEST_NODE[0] && minor >= OLDEST_NODE[1]);
}

/** Leaves with a clear word when Node.js is too old. */
export function demandNode() {
  if (nodeIsNewEnough(process.versions.node)) return;
  console.error(
    `Tinewise needs Node.js ${OLDEST_NODE.join('.')} or newer; this is ${process.versions.node}. See https://nodejs.org.`,
  );
  process.exit(1);
}

/** Installs the packages of the lock file when they are missing or others stand there. */
export async function installWhenNeeded() {
  const lock = readJson(join(ROOT, 'package-lock.json'));
  const installed = readJson(join(ROOT, 'node_modules/.package-lock.json'));
  if (lock !== null && installed !== null && isInstalled(lock, installed)) return 0;
  console.log('Installing packages ...');
  return runNpm(['ci', '--include=dev', '--no-audit', '--no-fund']);
}

/** Does every package that the lock file demands stand there in its version? Optional ones may be for another machine. */
export function isInstalled(lock, installed) {
  return Object.entries(lock.packages).every(
    ([path, wanted]) =>
      path === '' ||
      wanted.optional ||
      wanted.devOptional ||
      wanted.link ||
      installed.packages[path]?.version === wanted.version,
  );
}

/** Builds the production server when there is no build, or when what it was made from has changed since. */
export async function buildWhenStale() {
  const dist = join(ROOT, process.env.NEXT_DIST_DIR ?? '.next');
  const mark = join(dist, 'built-from');
  const now = fingerprint(BUILT_FROM.map((name) => join(ROOT, name)));
  const isBuilt = existsSync(join(dist, 'BUILD_ID')) && existsSync(mark);
  if (isBuilt && readFileSync(mark, 'utf8') === now) return 0;
  console.log('Building ...');
  rmSync(mark, { force: true });
  const code = await runNext(['build']);
  // taken before the build: what changed while it ran makes the next start build again
  if (code === 0) writeFileSync(mark, now);
  return code;
}

/** One hash of all files at and under these paths, names and contents. What is not there counts as nothing. */
export function fingerprint(paths) {
  const hash = createHash('sha256');
  for (const path of paths.flatMap(filesAt)) {
    const content = readFileSync(path);
    hash.update(`${path.slice(ROOT.length)}\0${content.length}\0`).update(content);
  }
  return hash.digest('hex');
}

/** Makes the database or brings it up to date, and puts the demo site into a new one. */
export function prepareDatabase() {
  return runNode(['--import', 'tsx', 'bin/prepare.ts']);
}

/** Prints a one-time link to make the administrator, while there is nobody who could sign in. */
export function printFirstLink(address) {
  return runNode(['--import', 'tsx', 'bin/first-link.ts', address]);
}

function filesAt(path) {
  const found = statSync(path, { throwIfNoEntry: false });
  if (found === undefined) return [];
  if (!found.isDirectory()) return [path];
  return readdirSync(path)
    .sort()
    .flatMap((name) => filesAt(join(path, name)));
}

function readJson(path) {
  return existsSync(path) ? JSON.parse(readFileSync(path, 'utf8')) : null;
}
