#!/usr/bin/env node
// The headless command, straight from the sources: tsx strips the types as the modules load, nothing is built first.
import { fileURLToPath } from 'node:url';
import { register } from 'tsx/esm/api';

register({ tsconfig: fileURLToPath(new URL('../tsconfig.json', import.meta.url)) });
const { runTinewise } = await import('./tinewise.ts');
process.exitCode = await runTinewise(process.argv.slice(2));
