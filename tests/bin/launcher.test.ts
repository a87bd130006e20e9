import { mkdtempSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { count, tallyOfPlaywright, tallyOfVitest } from '../../bin/count-tests.mjs';
import { freePort } from '../../bin/free-port.mjs';
import { fingerprint, isInstalled, nodeIsNewEnough } from '../../bin/make-ready.mjs';

describe('Node.js', () => {
  it.each([
    ['18.20.8', false],
    ['20.8.1', false],
    ['20.9.0', true],
    ['20.20.2', true],
    ['22.0.0', true],
    ['100.1.0', true],
  ])('%s: is it new enough? %s', (version, expected) => {
    expect(nodeIsNewEnough(version)).toBe(expected);
  });
});

describe('the packages', () => {
  const lock = {
    packages: {
      '': { version: '0.1.0' },
      'node_modules/a': { version: '1.0.0' },
      'node_modules/a/node_modules/b': { version: '2.0.0', dev: true },
      'node_modules/for-another-machine': { version: '3.0.0', optional: true },
    },
  };
  const a = { 'node_modules/a': { version: '1.0.0' } };
  const b = { 'node_modules/a/node_modules/b': { version: '2.0.0' } };

  it.each([
    ['all there', { ...a, ...b }, true],
    ['one missing', a, false],
    ['one of another version', { ...b, 'node_modules/a': { version: '1.0.1' } }, false],
    ['one too many', { ...a, ...b, 'node_modules/c': { version: '1.0.0' } }, true],
  ])('%s', (_what, packages, expected) => {
    expect(isInstalled(lock, { packages })).toBe(expected);
  });
});

describe('the fingerprint of what a build is made from', () => {
  let folder: string;
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'tinewise-print-'));
    writeFileSync(join(folder, 'a.ts'), 'one');
    writeFileSync(join(folder, 'b.ts'), 'two');
  });
  afterEach(() => rmSync(folder, { recursive: true }));

  it('stays while nothing changes, and does not mind what is not there', () => {
    expect(fingerprint([folder])).toBe(fingerprint([folder, join(folder, 'nowhere')]));
  });

  it.each<[string, () => void]>([
    ['a file is written anew', () => writeFileSync(join(folder, 'a.ts'), 'onE')],
    ['a file is added, empty as it may be', () => writeFileSync(join(folder, 'c.ts'), '')],
    ['a file is gone', () => rmSync(join(folder, 'b.ts'))],
    ['a file has another name', () => renameSync(join(folder, 'b.ts'), join(folder, 'c.ts'))],
    [
      'a piece moves from one file to the next',
      () => {
        writeFileSync(join(folder, 'a.ts'), 'onet');
        writeFileSync(join(folder, 'b.ts'), 'wo');
      },
    ],
  ])('changes when %s', (_what, act) => {
    const before = fingerprint([folder]);
    act();
    expect(fingerprint([folder])).not.toBe(before);
  });
});

describe('the port', () => {
  it('is the next one that is free; only the wanted one when one try is given', async () => {
    const server = createServer();
    await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
    const { port } = server.address() as { port: number };
    expect(await freePort('127.0.0.1', port, 1)).toBeNull();
    expect(await freePort('127.0.0.1', port, 50)).toBeGreaterThan(port);
    await new Promise((done) => server.close(done));
    expect(await freePort('127.0.0.1', port, 1)).toBe(port);
  });
});

describe('the count of tests', () => {
  it('adds up what both reports say', () => {
    expect(
      count([
        { passed: 3, failed: 0 },
        { passed: 4, failed: 2 },
      ]),
    ).toEqual({ passed: 7, failed: 2 });
    expect(count([])).toEqual({ passed: 0, failed: 0 });
  });

  it('takes a file that broke down before its first test as one that failed', () => {
    const testResults = [
      { status: 'passed', assertionResults: [{ status: 'passed' }] },
      { status: 'failed', assertionResults: [{ status: 'passed' }, { status: 'failed' }] },
      { status: 'failed', assertionResults: [] },
    ];
    expect(tallyOfVitest({ numPassedTests: 2, numFailedTests: 1, testResults })).toEqual({
      passed: 2,
      failed: 2,
    });
  });

  it('takes a flaky browser test, and an error outside of all tests, as failed', () => {
    const stats = { expected: 5, unexpected: 1, flaky: 1, skipped: 0 };
    expect(tallyOfPlaywright({ stats, errors: [{}] })).toEqual({ passed: 5, failed: 3 });
  });
});
