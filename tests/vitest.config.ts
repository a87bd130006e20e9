import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const root = fileURLToPath(new URL('..', import.meta.url));

export default defineConfig({
  root,
  resolve: { alias: { '@': root.replace(/\/$/, ''), 'server-only': `${root}tests/server-only-stub.ts` } },
  test: {
    include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
    testTimeout: 120_000,
    coverage: { provider: 'v8', include: ['lib/**', 'workers/**'], reportsDirectory: 'coverage' },
  },
});
