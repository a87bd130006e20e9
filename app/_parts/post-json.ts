/** Sends data to an address of ours: null when all went well, else what went wrong in words. */
export async function postJson(path: string, body: unknown): Promise<string | null> {
  try {
    const answer = await fetch(path, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify(body),
    });
    if (answer.ok) return null;
    const { message } = (await answer.json()) as { message: string };
    return message;
  } catch {
    return 'The server did not answer. Try again.';
  }
}
