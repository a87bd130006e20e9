/** Next calls this once before it answers the first request. */
export async function register(): Promise<void> {
  if (process.env.NEXT_RUNTIME === 'nodejs') {
    const { noteCallers } = await import('@/app/_parts/note-callers.ts');
    noteCallers();
  }
}
