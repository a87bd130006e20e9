import { spawn } from 'node:child_process';
import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';

export const ROOT = dirname(dirname(fileURLToPath(import.meta.url)));

const NEXT = 'node_modules/next/dist/bin/next';
const running = new Set();
let stopping = false;

/** Starts a program in the root with our output as its own. Its process is stopped when ours is. */
export function start(command, args, env = {}, shell = false) {
  const child = spawn(command, args, {
    cwd: ROOT,
    env: { ...process.env, NEXT_TELEMETRY_DISABLED: '1', ...env },
    stdio: ['ignore', 'inherit', 'inherit'],
    shell,
  });
  running.add(child);
  child.on('exit', () => running.delete(child));
  return child;
}

/** Runs a program to its end: its exit code, 1 where it was killed or could not be started. */
export function run(command, args, env, shell) {
  return new Promise((resolve) => {
    const child = start(command, args, env, shell);
    child.on('error', (error) => {
      console.error(`${command} could not be started: ${error.message}`);
      resolve(1);
    });
    child.on('exit', (code) => resolve(stopping ? 130 : (code ?? 1)));
  });
}

export function runNode(args, env) {
  return run(process.execPath, args, env);
}

export function startNext(args, env) {
  return start(process.execPath, [NEXT, ...args], env);
}

export function runNext(args, env) {
  return runNode([NEXT, ...args], env);
}

export function runNpm(args) {
  const npm = process.env.npm_execpath;
  if (npm?.endsWith('.js') && npm.includes('npm')) return runNode([npm, ...args]);
  return process.platform === 'win32' ? run('npm.cmd', args, {}, true) : run('npm', args);
}

/** Ctrl-C, a closed terminal or a plain kill stops whatever we have started, then us; who does not go is made to. */
export function stopTogether() {
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) {
    process.on(signal, () => {
      stopping = true;
      for (const child of running) child.kill('SIGTERM');
      setTimeout(() => {
        for (const child of running) child.kill('SIGKILL');
      }, 5_000).unref();
      if (running.size === 0) process.exit(130);
    });
  }
}

export function isStopping() {
  return stopping;
}
