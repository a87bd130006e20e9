import { Writable } from 'node:stream';
import { describe, expect, it } from 'vitest';
import { standardOutput } from '../../bin/commands/standard-output.ts';

describe('standard output as a sink', () => {
  it('holds at most one piece while the reader is behind, and loses nothing', async () => {
    let received = '';
    let most = 0;
    const slow = new Writable({
      decodeStrings: false,
      write(piece: string, _encoding, done) {
        most = Math.max(most, slow.writableLength);
        received += piece;
        setTimeout(done, 1);
      },
    });
    const sink = standardOutput(slow as unknown as NodeJS.WriteStream);
    let sent = '';
    for (let n = 0; n < 20_000; n++) {
      const text = `${n} ${'x'.repeat(90)}\n`;
      sent += text;
      const room = sink.write(text);
      if (room !== null) await room;
    }
    await sink.end();
    expect(received === sent).toBe(true);
    expect(most).toBeLessThan(70_000);
  });
});
