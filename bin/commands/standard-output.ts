const CHUNK_CHARACTERS = 1 << 16;

/** Text on its way to standard output: gathered into large pieces, held back while the reader is behind. */
export type TextSink = { write(text: string): Promise<void> | null; end(): Promise<void> };

/**
 * Standard output as a sink. `write` gives null where there is nothing to wait for, so that a loop over millions of
 * small pieces need not wait at each; a piece that is sent is waited for, so that memory holds one at a time. A reader
 * that goes away (EPIPE) ends the process quietly: nobody is listening.
 */
export function standardOutput(stream: NodeJS.WriteStream = process.stdout): TextSink {
  let held = '';
  stream.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code === 'EPIPE') process.exit(0);
    process.stderr.write(`Standard output: ${error.message}\n`);
    process.exit(1);
  });
  function send(): Promise<void> {
    const piece = held;
    held = '';
    return new Promise((resolve) => {
      stream.write(piece, (error) => {
        if (!error) resolve(); // on an error the handler above ends the process
      });
    });
  }
  return {
    write(text) {
      held += text;
      return held.length < CHUNK_CHARACTERS ? null : send();
    },
    end: send,
  };
}
