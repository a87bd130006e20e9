import { readdirSync, readFileSync, statSync } from 'node:fs';
import { builtinModules } from 'node:module';
import { dirname, join, relative, resolve, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const root = fileURLToPath(new URL('..', import.meta.url));

/** Which rooms a room may import from besides itself, and why it may no others. */
const MAY_IMPORT: Record<string, { from: string[]; why: string }> = {
  'lib/units': { from: [], why: 'units are the ground floor' },
  'lib/model': { from: ['lib/units'], why: 'the facts of a site know no rule, screen or table' },
  'lib/rack': {
    from: ['lib/units', 'lib/model'],
    why: 'rack sums are asked by the rules, never the other way',
  },
  'lib/check': {
    from: ['lib/units', 'lib/model', 'lib/rack'],
    why: 'the readable oracle must not lean on the fast engine or on words',
  },
  'lib/hand-pick': { from: ['lib/units', 'lib/model'], why: 'picks by hand know no truck' },
  'lib/grid': {
    from: ['lib/units', 'lib/model', 'lib/rack', 'lib/check'],
    why: 'the fast engine answers verdicts, nothing else',
  },
  'lib/plan': {
    from: ['lib/units', 'lib/model', 'lib/rack', 'lib/check', 'lib/grid'],
    why: 'plans are built on verdicts',
  },
  'lib/audit': {
    from: ['lib/units', 'lib/model', 'lib/rack', 'lib/check', 'lib/hand-pick', 'lib/grid'],
    why: 'findings are built on verdicts',
  },
  'lib/rack-shape': {
    from: ['lib/units', 'lib/model', 'lib/rack', 'lib/check', 'lib/grid'],
    why: 'what a change of the racks comes to is built on verdicts',
  },
  'lib/photo': { from: [], why: 'what a picture is made of knows no fact of a site' },
  'lib/entry': {
    from: ['lib/units', 'lib/model', 'lib/rack', 'lib/check', 'lib/grid', 'lib/audit', 'lib/rack-shape'],
    why: 'what is typed becomes facts, and what they come to is built on verdicts',
  },
  'lib/words': {
    from: [
      'lib/units',
      'lib/model',
      'lib/rack',
      'lib/check',
      'lib/hand-pick',
      'lib/grid',
      'lib/plan',
      'lib/audit',
      'lib/rack-shape',
      'lib/entry',
      'lib/photo',
      'lib/import',
    ],
    why: 'words speak of what the pure rooms found and know no screen',
  },
  'lib/report': {
    from: [
      'lib/units',
      'lib/model',
      'lib/rack',
      'lib/check',
      'lib/hand-pick',
      'lib/grid',
      'lib/plan',
      'lib/audit',
      'lib/words',
    ],
    why: 'a report prints what was found',
  },
  'lib/import': { from: ['lib/units', 'lib/model'], why: 'import turns cells into facts and judges nothing' },
  'lib/demo': { from: ['lib/units', 'lib/model'], why: 'the demo is facts only' },
  'lib/store': {
    from: ['lib/units', 'lib/model', 'lib/photo'],
    why: 'the store keeps facts and judges nothing',
  },
  workers: {
    from: [
      'lib/units',
      'lib/model',
      'lib/rack',
      'lib/check',
      'lib/hand-pick',
      'lib/grid',
      'lib/plan',
      'lib/audit',
      'lib/rack-shape',
      'lib/import',
    ],
    why: 'a worker is a doorway to pure rooms',
  },
};

/** Only these may touch a file, a process or the network: everything else under lib is handed its values. */
const MAY_USE_NODE = ['lib/store', 'lib/import'];

type Import = { file: string; names: string };

const code = ['lib', 'workers', 'app', 'bin'].flatMap((folder) => codeFiles(join(root, folder)));
const imports = code.flatMap(importsOf);

describe('the rooms of the house', () => {
  it('are found: the walk below looks at real code', () => {
    expect(code.length).toBeGreaterThan(20);
    expect(
      imports.some((entry) => roomOf(entry.file) === 'lib/check' && roomOf(resolved(entry)) === 'lib/model'),
    ).toBe(true);
  });

  it('import only from rooms below them', () => {
    const wrong = imports.flatMap((entry) => {
      const from = roomOf(entry.file);
      const to = roomOf(resolved(entry));
      const rule = MAY_IMPORT[from];
      if (to === null || rule === undefined || to === from || rule.from.includes(to)) return [];
      return [`${relative(root, entry.file)} imports ${entry.names}: ${rule.why}`];
    });
    expect(wrong).toEqual([]);
  });

  it('are all known: a new folder under lib gets its line in the table above', () => {
    const rooms = readdirSync(join(root, 'lib')).filter(
      (name) => codeFiles(join(root, 'lib', name)).length > 0,
    );
    expect(rooms.filter((name) => MAY_IMPORT[`lib/${name}`] === undefined)).toEqual([]);
  });

  it('do not reach for a file, a process or the network outside the store and the import', () => {
    const wrong = imports
      .filter((entry) => {
        const room = roomOf(entry.file);
        return room.startsWith('lib/') && !MAY_USE_NODE.includes(room);
      })
      .filter(({ names }) => names.startsWith('node:') || builtinModules.includes(names))
      .map(({ file, names }) => `${relative(root, file)} imports ${names}`);
    expect(wrong).toEqual([]);
  });

  it('read no clock and no chance outside the edges: time comes in as asOf, a seed as an argument', () => {
    const pure = code.filter((file) => {
      const room = roomOf(file);
      return room.startsWith('lib/') && !MAY_USE_NODE.includes(room);
    });
    const wrong = pure.filter((file) =>
      /\bDate\.now\(|\bnew Date\(\)|\bMath\.random\(|\bprocess\.env\b|\bperformance\.now\(/.test(
        readFileSync(file, 'utf8'),
      ),
    );
    expect(wrong.map((file) => relative(root, file))).toEqual([]);
  });

  it('keep SQLite and the ORM inside the store', () => {
    const wrong = imports
      .filter(({ names }) => /^(better-sqlite3|libsql|drizzle-orm)/.test(names))
      .filter(({ file }) => roomOf(file) !== 'lib/store')
      .map(({ file, names }) => `${relative(root, file)} imports ${names}`);
    expect(wrong).toEqual([]);
  });

  it('make sentences only in lib/words: no rule or grid file imports it', () => {
    const wrong = imports
      .filter((entry) => ['lib/check', 'lib/rack', 'lib/grid', 'lib/model'].includes(roomOf(entry.file)))
      .filter((entry) => roomOf(resolved(entry)) === 'lib/words');
    expect(wrong).toEqual([]);
  });

  it('have doorways of at most fifty lines for workers', () => {
    const wide = codeFiles(join(root, 'workers'))
      .filter((file) => file.endsWith('.worker.ts'))
      .filter((file) => readFileSync(file, 'utf8').trimEnd().split('\n').length > 50);
    expect(wide.map((file) => relative(root, file))).toEqual([]);
  });
});

function codeFiles(folder: string): string[] {
  if (!statSync(folder, { throwIfNoEntry: false })?.isDirectory()) return [];
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.(ts|tsx|mjs)$/.test(entry.name))
    .map((entry) => join(entry.parentPath ?? entry.path, entry.name));
}

function importsOf(file: string): Import[] {
  const text = readFileSync(file, 'utf8');
  const pattern =
    /(?:^|\n)\s*(?:import|export)\b[^'"`;]*?\bfrom\s*['"]([^'"]+)['"]|(?:^|\n)\s*import\s*['"]([^'"]+)['"]|\bimport\(\s*['"]([^'"]+)['"]\s*\)|new URL\(\s*['"](\.[^'"]+)['"]/g;
  return [...text.matchAll(pattern)].map((match) => ({
    file,
    names: match[1] ?? match[2] ?? match[3] ?? match[4]!,
  }));
}

function resolved(entry: Import): string | null {
  if (entry.names.startsWith('.')) return resolve(dirname(entry.file), entry.names);
  if (entry.names.startsWith('@/')) return resolve(root, entry.names.slice(2));
  return null;
}

/** `lib/<room>`, or the top-level folder. */
function roomOf(file: string): string;
function roomOf(file: string | null): string | null;
function roomOf(file: string | null): string | null {
  if (file === null) return null;
  const [top, room] = relative(root, file).split(sep);
  return top === 'lib' ? `lib/${room}` : top!;
}
