import { subscribe } from 'node:diagnostics_channel';
import type { IncomingMessage } from 'node:http';

const held = globalThis as typeof globalThis & { tinewiseNotesCallers?: true };

/**
 * From now on the caller's own network address is appended to X-Forwarded-For before anything reads a request, as a
 * proxy would: what stands last there cannot be made up by the caller. Next hands requests on without their socket.
 */
export function noteCallers(): void {
  if (held.tinewiseNotesCallers) return;
  held.tinewiseNotesCallers = true;
  subscribe('http.server.request.start', noteCaller);
}

/** Node publishes this before it hands the request on. */
function noteCaller(message: unknown): void {
  const { request } = message as { request: IncomingMessage };
  const told = request.headers['x-forwarded-for'];
  const own = request.socket.remoteAddress ?? 'unknown';
  request.headers['x-forwarded-for'] = told === undefined ? own : `${String(told)}, ${own}`;
}
