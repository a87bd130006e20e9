import { Agent, type IncomingMessage, request } from 'node:http';
import { text } from 'node:stream/consumers';
import { createGunzip } from 'node:zlib';

export type Sample = { what: string; isEdit: boolean; ms: number };

type Answer = { status: number; location: string | null; body: string; cookies: string[] };

/** One person at a browser: a connection that stays open, a session, a change of their own that they undo and redo. */
export class Person {
  readonly #agent = new Agent({ keepAlive: true, maxSockets: 1 });
  readonly #port: number;
  readonly #samples: Sample[];
  #cookie = '';
  #change: number;
  #action: { name: string; value: string } | null = null;

  constructor(port: number, change: number, samples: Sample[]) {
    this.#port = port;
    this.#change = change;
    this.#samples = samples;
  }

  async signIn(role: string): Promise<void> {
    const body = JSON.stringify({ role });
    const answer = await this.#send('POST', '/api/auth/demo-sign-in', { body, type: 'application/json' });
    if (answer.status !== 204) throw new Error(`signing in was answered ${answer.status}: ${answer.body}`);
    this.#cookie = answer.cookies.map((cookie) => cookie.split(';')[0]).join('; ');
  }

  async read(what: string, path: string): Promise<string> {
    const start = performance.now();
    const answer = await this.#send('GET', path);
    if (answer.status !== 200) throw new Error(`${path} was answered ${answer.status}`);
    this.#samples.push({ what, isEdit: false, ms: performance.now() - start });
    return answer.body;
  }

  /** Undoes the person's last change by the form of its page, as a browser without scripts would: the new change's id. */
  async edit(): Promise<number> {
    const path = `/changes/${this.#change}`;
    this.#action ??= actionOf(await this.read('change page', path));
    const start = performance.now();
    const form = new FormData();
    form.set(this.#action.name, this.#action.value);
    form.set('change', String(this.#change));
    const encoded = new Response(form);
    const type = encoded.headers.get('content-type')!;
    const answer = await this.#send('POST', path, { body: Buffer.from(await encoded.arrayBuffer()), type });
    const made = /\/changes\/(\d+)$/.exec(answer.location ?? '');
    if (answer.status !== 303 || made === null || Number(made[1]) === this.#change) {
      throw new Error(
        `the edit was answered ${answer.status} ${answer.location}: ${answer.body.slice(0, 300)}`,
      );
    }
    this.#change = Number(made[1]);
    this.#samples.push({ what: 'edit', isEdit: true, ms: performance.now() - start });
    await this.read('change page', answer.location!);
    return this.#change;
  }

  leave(): void {
    this.#agent.destroy();
  }

  async #send(method: string, path: string, sent?: { body: string | Buffer; type: string }): Promise<Answer> {
    const origin = `http://127.0.0.1:${this.#port}`;
    const headers: Record<string, string> = { cookie: this.#cookie, origin, 'accept-encoding': 'gzip' };
    if (sent !== undefined) {
      headers['content-type'] = sent.type;
      headers['content-length'] = String(Buffer.byteLength(sent.body));
    }
    const response = await new Promise<IncomingMessage>((resolve, reject) => {
      const ask = request(
        { host: '127.0.0.1', port: this.#port, path, method, headers, agent: this.#agent },
        resolve,
      );
      ask.on('error', reject);
      ask.end(sent?.body);
    });
    const zipped = response.headers['content-encoding'] === 'gzip';
    const body = await text(zipped ? response.pipe(createGunzip()) : response);
    return {
      status: response.statusCode ?? 0,
      location: response.headers.location ?? null,
      body,
      cookies: response.headers['set-cookie'] ?? [],
    };
  }
}

/** The hidden field by which a form names its action. */
function actionOf(html: string): { name: string; value: string } {
  const name = /name="(\$ACTION_ID_[0-9a-f]+)"\/><input type="hidden" name="change"/.exec(html)?.[1];
  if (name === undefined) throw new Error('the page has no form for the edit');
  return { name, value: '' };
}
