import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { expose } from 'comlink';
import { afterEach, describe, expect, it } from 'vitest';
import { auditSite } from '../../lib/audit/audit-site.ts';
import { indexSite } from '../../lib/model/site-index.ts';
import { AuditClient, type AuditWorker } from '../../workers/audit.client.ts';
import { auditDesk } from '../../workers/audit-desk.ts';
import { makeSite } from '../site-builder.ts';

setFlagsFromString('--expose-gc');
const clearMemory = runInNewContext('gc') as () => void;

/** Stands in for a thread: the real desk behind a message channel, with a count of starts and ends. */
class Threads {
  started = 0;
  ended = 0;
  last: AuditWorker | null = null;
  start = (): AuditWorker => {
    this.started += 1;
    const { port1, port2 } = new MessageChannel();
    expose(auditDesk, port2);
    this.last = Object.assign(port1, {
      terminate: () => {
        this.ended += 1;
        port1.close();
        port2.close();
      },
    }) as unknown as AuditWorker;
    return this.last;
  };
}

let threads = new Threads();
let client = new AuditClient(threads.start);

afterEach(() => {
  client.dispose();
  threads = new Threads();
  client = new AuditClient(threads.start);
});

const site = makeSite({ stock: [{ location: 'a1-1-1', load: 'crates' }], checks: [] });
const asked = { asOf: '2026-03-02T10:00:00Z' };
const audit = auditSite(indexSite(site), asked);

describe('an audit', () => {
  it('is answered as in one thread, and the worker stays warm for the next', async () => {
    expect(audit.findings.length).toBeGreaterThan(0);
    expect(await client.audit(site, asked)).toEqual({ kind: 'answered', audit });
    expect(await client.audit(site, asked)).toEqual({ kind: 'answered', audit });
    expect([threads.started, threads.ended]).toEqual([1, 0]);
  });

  it('tells how far it is, from little to all', async () => {
    const heard: number[] = [];
    await client.audit(site, asked, (done) => heard.push(done));
    await new Promise((resolve) => setTimeout(resolve, 20)); // progress comes by a port of its own
    expect(heard.length).toBeGreaterThan(5);
    expect(heard).toEqual(heard.toSorted((a, b) => a - b));
    expect(heard[0]).toBeLessThan(0.2);
    for (const done of heard) expect(done).toBeLessThanOrEqual(1);
  });

  it('keeps the ears of a warm worker open when memory is cleared between two', async () => {
    await client.audit(site, asked);
    for (let turn = 0; turn < 5; turn += 1) {
      clearMemory();
      await new Promise((resolve) => setTimeout(resolve, 5));
    }
    expect(await client.audit(site, asked)).toEqual({ kind: 'answered', audit });
  });

  it('gives way to a newer one, whose worker is another', async () => {
    const older = client.audit(site, { asOf: null });
    const newer = client.audit(site, asked);
    expect(await older).toEqual({ kind: 'superseded' });
    expect(await newer).toEqual({ kind: 'answered', audit });
    expect([threads.started, threads.ended]).toEqual([2, 1]);
  });

  it('ends as superseded when the client is disposed', async () => {
    const running = client.audit(site, asked);
    client.dispose();
    expect(await running).toEqual({ kind: 'superseded' });
    expect(threads.ended).toBe(1);
  });

  it('that breaks down is told, and the next one is answered', async () => {
    await expect(client.audit(site, { asOf: 'yesterday' })).rejects.toThrow('not an ISO 8601 time');
    expect(await client.audit(site, asked)).toEqual({ kind: 'answered', audit });
  });

  it('is told when the worker could not be loaded', async () => {
    const running = client.audit(site, asked);
    (threads.last as unknown as EventTarget).dispatchEvent(new Event('error'));
    await expect(running).rejects.toThrow('The audit worker stopped');
  });
});
