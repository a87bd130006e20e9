import { expose } from 'comlink';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { exportList } from '../../lib/import/export-lists.ts';
import { guessMapping } from '../../lib/import/guess-mapping.ts';
import { planImport } from '../../lib/import/plan-import.ts';
import { ImportClient, type ImportWorker } from '../../workers/import.client.ts';
import { createImportDesk } from '../../workers/import-desk.ts';
import { tableOf } from '../import/list-of.ts';
import { makeSite } from '../site-builder.ts';

/** Stands in for a thread: the real desk behind a message channel, with a count of starts and ends. */
class Threads {
  started = 0;
  ended = 0;
  #onError: ((event: Event) => void) | null = null;
  start = (): ImportWorker => {
    this.started += 1;
    const { port1, port2 } = new MessageChannel();
    expose(createImportDesk(), port2);
    const listen = port1.addEventListener.bind(port1);
    return Object.assign(port1, {
      addEventListener: (type: string, listener: (event: Event) => void) => {
        if (type === 'error') this.#onError = listener;
        else listen(type, listener as EventListener);
      },
      terminate: () => {
        this.ended += 1;
        port1.close();
        port2.close();
      },
    }) as unknown as ImportWorker;
  };
  fail(message: string): void {
    this.#onError?.(Object.assign(new Event('error'), { message }));
  }
}

let threads = new Threads();
let client = new ImportClient(threads.start);

afterEach(() => {
  client.dispose();
  threads = new Threads();
  client = new ImportClient(threads.start);
});

const site = makeSite({ stock: [{ location: 'a1-1-1', load: 'crates' }] });
const text = exportList(site, 'stock');
const bytes = new TextEncoder().encode(text);

async function done<T>(reply: Promise<{ kind: 'done'; result: T } | { kind: 'stopped' }>): Promise<T> {
  const got = await reply;
  if (got.kind === 'stopped') throw new Error('stopped');
  return got.result;
}

describe('the import worker', () => {
  it('reads, guesses and plans as the pure functions do, keeping the rows to itself', async () => {
    const opened = await done(client.open(bytes, 'list.csv'));
    expect(opened).toMatchObject({
      ok: true,
      opened: {
        rowCount: 1,
        header: ['Location', 'Load'],
        firstRows: [{ row: 2, cells: ['a1-1-1', 'crates'] }],
      },
    });
    const table = tableOf(text);
    const guess = await done(client.guess('stock'));
    expect(guess).toEqual(guessMapping('stock', table));
    const empty = { ...site, stock: [] };
    const plan = await done(client.plan(empty, guess.mapping, 'all-or-nothing'));
    expect(plan).toEqual(planImport(empty, 'stock', table, guess.mapping));
    expect(await done(client.rowsOf([2]))).toEqual(table);
    expect((await done(client.rowsOf([3]))).rows).toEqual([]);
    expect(threads).toMatchObject({ started: 1, ended: 0 });
  });

  it('tells how far it is', async () => {
    const heard: string[] = [];
    await done(client.open(bytes, 'list.csv', {}, (stage) => heard.push(stage)));
    const { mapping } = await done(client.guess('stock'));
    await done(client.plan(site, mapping, 'all-or-nothing', (stage) => heard.push(stage)));
    // Words of progress travel on a channel of their own and may come behind the answer.
    await vi.waitFor(() =>
      expect(heard).toEqual(['reading', 'reading', 'rows', 'rows', 'agreeing', 'agreeing']),
    );
  });

  it('hands on why a file was refused', async () => {
    expect(await done(client.open(new Uint8Array(), 'none.csv'))).toEqual({
      ok: false,
      refusal: { why: 'empty' },
    });
  });

  it('is ended by stop, and the next call has a new one read the file again', async () => {
    await done(client.open(bytes, 'list.csv'));
    const { mapping } = await done(client.guess('stock'));
    const planning = client.plan(site, mapping, 'all-or-nothing');
    client.stop();
    expect(await planning).toEqual({ kind: 'stopped' });
    expect(threads).toMatchObject({ started: 1, ended: 1 });
    expect((await done(client.plan(site, mapping, 'all-or-nothing'))).unchanged).toBe(1);
    expect(threads.started).toBe(2);
  });

  it('takes a newer file in place of the one that is being read', async () => {
    const older = client.open(bytes, 'older.csv');
    const newer = client.open(bytes, 'newer.csv');
    expect(await older).toEqual({ kind: 'stopped' });
    expect(await done(newer)).toMatchObject({ opened: { file: 'newer.csv' } });
  });

  it('that breaks fails what was asked of it, with the reason', async () => {
    const opening = client.open(bytes, 'list.csv');
    threads.fail('out of memory');
    await expect(opening).rejects.toThrow('out of memory');
  });

  it('without an open list says so', async () => {
    await expect(client.guess('stock')).rejects.toThrow('no list is open');
  });
});
