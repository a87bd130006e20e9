import { createServer } from 'node:net';

/** The first free port from `first` on, at most `tries` of them looked at; null when none is free. */
export async function freePort(host, first, tries) {
  for (let port = first; port < first + tries; port++) {
    if (await isFree(host, port)) return port;
  }
  return null;
}

function isFree(host, port) {
  return new Promise((resolve) => {
    const server = createServer();
    server.once('error', () => resolve(false));
    server.listen(port, host, () => server.close(() => resolve(true)));
  });
}
