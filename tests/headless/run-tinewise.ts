import { spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';

export const CHECKOUT = fileURLToPath(new URL('../..', import.meta.url));
export const COMMAND_FILE = `${CHECKOUT}bin/tinewise.mjs`;

export type Ending = { code: number | null; stdout: string; stderr: string };

/** Runs the real command in a process of its own and waits for its end. */
export function runTinewise(args: readonly string[], input = '', cwd = CHECKOUT): Promise<Ending> {
  return runProcess(process.execPath, [COMMAND_FILE, ...args], input, cwd);
}

/** Runs a program with text on its standard input. */
export function runProcess(
  file: string,
  args: readonly string[],
  input: string,
  cwd: string,
): Promise<Ending> {
  return new Promise((resolve, reject) => {
    const child = spawn(file, args, { cwd, stdio: ['pipe', 'pipe', 'pipe'] });
    const pieces = { stdout: [] as Buffer[], stderr: [] as Buffer[] };
    child.stdout.on('data', (piece: Buffer) => pieces.stdout.push(piece));
    child.stderr.on('data', (piece: Buffer) => pieces.stderr.push(piece));
    child.on('error', reject);
    child.on('close', (code) => {
      const stdout = Buffer.concat(pieces.stdout).toString('utf8');
      resolve({ code, stdout, stderr: Buffer.concat(pieces.stderr).toString('utf8') });
    });
    child.stdin.on('error', () => {}); // it may end before it has read all
    child.stdin.end(input);
  });
}
