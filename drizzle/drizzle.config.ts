import { defineConfig } from 'drizzle-kit';

// Paths are read from the folder in which drizzle-kit is started: the root, by `npm run db:generate -- --name <what>`.
export default defineConfig({ dialect: 'sqlite', schema: './lib/store/tables', out: './drizzle' });
