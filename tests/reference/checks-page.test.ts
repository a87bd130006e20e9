import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { renderChecksPage } from './checks-page.ts';

const page = fileURLToPath(new URL('../../docs/checks.md', import.meta.url));

describe('docs/checks.md', () => {
  it('says what the registry of checks says (CHECKS_PAGE=write writes it anew)', () => {
    const rendered = renderChecksPage();
    if (process.env.CHECKS_PAGE === 'write') writeFileSync(page, rendered);
    expect(readFileSync(page, 'utf8')).toBe(rendered);
  });
});
