import { expose, releaseProxy } from 'comlink';
import { afterEach, describe, expect, it } from 'vitest';
import { answerGrid } from '../../lib/grid/answer-grid.ts';
import { compileSite } from '../../lib/grid/compile-site.ts';
import type { GridQuestion } from '../../lib/grid/question.ts';
import type { Site } from '../../lib/model/site.ts';
import { indexSite } from '../../lib/model/site-index.ts';
import { GridClient, type GridWorker } from '../../workers/grid.client.ts';
import { createGridDesk } from '../../workers/grid-desk.ts';
import {
  makeBay,
  makeContext,
  makeFrame,
  makeLevel,
  makeLoad,
  makeRun,
  makeSite,
  makeTruck,
} from '../site-builder.ts';

/** Stands in for a thread: the real desk behind a message channel, with a count of starts and ends. */
class Threads {
  started = 0;
  ended = 0;
  last: GridWorker | null = null;
  start = (): GridWorker => {
    this.started += 1;
    const { port1, port2 } = new MessageChannel();
    expose(createGridDesk(), port2);
    const worker = Object.assign(port1, {
      terminate: () => {
        this.ended += 1;
        port1.close();
        port2.close();
      },
    }) as unknown as GridWorker;
    this.last = worker;
    return worker;
  };
}

let threads = new Threads();
let client = new GridClient(threads.start);

afterEach(() => {
  client.dispose();
  threads = new Threads();
  client = new GridClient(threads.start);
});

const question = (grossKg: number): GridQuestion => ({
  load: { kind: 'one', load: makeLoad({ grossKg }) },
  trucks: ['reach-1', 'counter-1'],
  context: makeContext(),
});

const inOneThread = (site: Site, asked: GridQuestion) => answerGrid(compileSite(indexSite(site)), asked);

/** Enough locations for several slices: 16 levels of 1200 make three. */
function longSite(): Site {
  const levels = Array.from({ length: 16 }, (_, level) =>
    makeLevel('long', level, { locations: Array.from({ length: 1200 }, (_, i) => `${level}-${i}`) }),
  );
  const frames = [makeFrame({ id: 'f1' }), makeFrame({ id: 'f2' })];
  return makeSite({ runs: [makeRun({ bays: [makeBay('long', { levels })], frames })] });
}

describe('a question', () => {
  it('is answered as in one thread, with progress up to the whole', async () => {
    const site = longSite();
    await client.open(site);
    const heard: number[] = [];
    const reply = await client.ask(question(800), (done) => heard.push(done));
    expect(reply).toEqual({ kind: 'answered', answer: inOneThread(site, question(800)) });
    await expect.poll(() => heard.at(-1)).toBe(1);
    expect(heard).toHaveLength(3);
    expect(heard).toEqual([...heard].sort((a, b) => a - b));
  });

  it('gives way to a newer one: the older resolves as superseded, stops, and is heard no more', async () => {
    const site = longSite();
    await client.open(site);
    const heard: number[] = [];
    const older = client.ask(question(800), (done) => heard.push(done));
    const newer = client.ask(question(1100));
    expect(await older).toEqual({ kind: 'superseded' });
    expect(await newer).toEqual({ kind: 'answered', answer: inOneThread(site, question(1100)) });
    expect(heard).toEqual([]);
    expect(threads.started).toBe(1);
  });

  it('is given up by the desk itself between slices', async () => {
    const desk = createGridDesk();
    desk.open(longSite());
    const shares: number[] = [];
    const progress = Object.assign((done: number) => shares.push(done), { [releaseProxy]: () => {} });
    const older = desk.ask(question(800), progress as never);
    const newer = desk.ask(question(1100), Object.assign(() => {}, { [releaseProxy]: () => {} }) as never);
    expect(await older).toBeNull();
    expect(await newer).not.toBeNull();
    expect(shares).toHaveLength(1);
  });

  it('rejects when the desk throws, and the client goes on', async () => {
    await client.open(makeSite());
    await expect(client.ask({ ...question(800), trucks: ['none'] })).rejects.toThrow('no truck none');
    expect((await client.ask(question(800))).kind).toBe('answered');
  });

  it('rejects when no site is open', async () => {
    await expect(client.ask(question(800))).rejects.toThrow('no site is open');
  });
});

describe('a site', () => {
  it('is replaced by its newer version in the same worker', async () => {
    await client.open(makeSite());
    const newer = makeSite({ trucks: [makeTruck({ maxLiftMm: 1000 }), makeTruck({ id: 'counter-1' })] });
    await client.open(newer);
    const reply = await client.ask(question(800));
    expect(reply).toEqual({ kind: 'answered', answer: inOneThread(newer, question(800)) });
    expect([threads.started, threads.ended]).toEqual([1, 0]);
  });

  it('that is opened while a question is being answered ends the worker and what it was asked', async () => {
    await client.open(longSite());
    const older = client.ask(question(800));
    await client.open(makeSite());
    expect(await older).toEqual({ kind: 'superseded' });
    expect([threads.started, threads.ended]).toEqual([2, 1]);
    expect(await client.ask(question(800))).toEqual({
      kind: 'answered',
      answer: inOneThread(makeSite(), question(800)),
    });
  });

  it('can be edited, and the last question is answered again', async () => {
    await client.open(makeSite());
    await client.ask(question(800));
    const truck = makeTruck({ maxLiftMm: 1000 });
    const reply = await client.edit({ kind: 'truck', truck });
    const after = makeSite();
    after.trucks[0] = truck;
    expect(reply).toEqual({ kind: 'answered', answer: inOneThread(after, question(800)) });
    await client.open(makeSite());
    await expect(client.edit({ kind: 'truck', truck })).rejects.toThrow('no question has been answered');
  });
});

describe('the end', () => {
  it('ends the worker and resolves what is still being asked as superseded', async () => {
    await client.open(longSite());
    const asked = client.ask(question(800));
    client.dispose();
    expect(await asked).toEqual({ kind: 'superseded' });
    expect(threads.ended).toBe(1);
  });

  it('of a worker that fails to load rejects what it was asked; the next opening starts another', async () => {
    const opening = client.open(makeSite());
    threads.last!.addEventListener('error', () => {});
    (threads.last as unknown as EventTarget).dispatchEvent(
      Object.assign(new Event('error'), { message: 'not found' }),
    );
    await expect(opening).rejects.toThrow('The grid worker stopped: not found');
    expect(await client.open(makeSite())).toBe(true);
    expect(threads.started).toBe(2);
  });
});
