import { describe, expect, it } from 'vitest';
import { guessMapping } from '../../lib/import/guess-mapping.ts';
import { HEADER_WORDS } from '../../lib/import/header-words.ts';
import { LIST_FACTS, LIST_NAMES, type ListName } from '../../lib/import/lists.ts';
import { columnAt, headerSignature, mappingSchema } from '../../lib/import/mapping.ts';
import { tableOf } from './list-of.ts';

/** Headers of our own making, with the facts and units that they should be taken for. */
const HEADERS: { list: ListName; text: string; facts: string[]; why: string }[] = [
  {
    why: 'an English list in inches and pounds',
    list: 'locations',
    text: 'LOCATION ID,Rack,Aisle No.,Bay,Lvl,Pos,Top of beam (in),Beam face (in),Beam capacity (lb),Bay width [in]\nA-1,R,1,B,1,1,60,5,5000,106\n',
    facts: [
      'location',
      'run',
      'aisle',
      'bay',
      'level',
      'position',
      'beamTopMm in',
      'beamHeightMm in',
      'pairCapacityKg lb',
      'bayClearWidthMm in',
    ],
  },
  {
    why: 'snake case in another order',
    list: 'locations',
    text: 'max_unit_load_kg;beam_top_mm;level;bay;run;aisle;location\n1;2;1;1;1;1;1\n',
    facts: ['maxUnitKg kg', 'beamTopMm mm', 'level', 'bay', 'run', 'aisle', 'location'],
  },
  {
    why: 'camel case with units at the end',
    list: 'locations',
    text: 'locationCode,beamTopMM,frameDepthCm,bayClearWidthM,Decking,levelCondition\nx,1,1,1,no,sound\n',
    facts: ['location', 'beamTopMm mm', 'frameDepthMm cm', 'bayClearWidthMm m', 'decked', 'levelCondition'],
  },
  {
    why: 'German headers',
    list: 'locations',
    text: 'Lagerplatz;Regal;Gang;Feld;Ebene;Platz;Fachlast kg;Feldlast kg\n1;1;1;1;1;1;1;1\n',
    facts: ['location', 'run', 'aisle', 'bay', 'level', 'position', 'pairCapacityKg kg', 'maxBayLoadKg kg'],
  },
  {
    why: 'trucks with a fleet number',
    list: 'trucks',
    text: 'Fleet No,Description,Truck type,Fuel,Max fork height (in),Lowered height (in),Free lift (in),Fork length (in)\n1,A,reach,electric,1,1,1,1\n',
    facts: [
      'id',
      'name',
      'kind',
      'power',
      'maxLiftMm in',
      'loweredMm in',
      'freeLiftMm in',
      'forks.lengthMm in',
    ],
  },
  {
    why: 'trucks, words turned round',
    list: 'trucks',
    text: 'Height extended mm\tmax lift height m\tunit no\tattachment\n1\t1\t1\tx\n',
    facts: ['extendedMm mm', 'maxLiftMm m', 'id', 'fittedAttachment'],
  },
  {
    why: 'a plate table',
    list: 'plateRatings',
    text: 'Unit,Height mm,LC mm,Rated capacity kg,Mast tilt\nx,1,1,1,vertical\n',
    facts: ['truck', 'liftHeightMm mm', 'loadCentreMm mm', 'capacityKg kg', 'mast'],
  },
  {
    why: 'a plate table in pounds, German',
    list: 'plateRatings',
    text: 'Stapler;Hubhöhe (ft);Lastschwerpunkt (in);Tragfähigkeit (lbs)\nx;1;1;1\n',
    facts: ['truck', 'liftHeightMm ft', 'loadCentreMm in', 'capacityKg lb'],
  },
  {
    why: 'loads with plain words',
    list: 'loads',
    text: 'SKU,Description,Gross weight (lb),Length (in),Width (in),Height (in),Family,Picks/week\nx,x,1,1,1,1,x,1\n',
    facts: ['id', 'name', 'grossKg lb', 'depthMm in', 'widthMm in', 'heightMm in', 'group', 'picksPerWeek'],
  },
  {
    why: 'loads in French, tonnes',
    list: 'loads',
    text: 'Référence;Désignation;Poids brut (t);Longueur (cm);Largeur (cm);Hauteur (cm)\nx;x;1,2;120;80;150\n',
    facts: ['id', 'name', 'grossKg t', 'depthMm cm', 'widthMm cm', 'heightMm cm'],
  },
  {
    why: 'stock, with columns that are no facts',
    list: 'stock',
    text: 'Owner;Bin;Article;Lot;Received\nx;x;x;x;x\n',
    facts: ['', 'location', 'load', '', ''],
  },
  {
    why: 'items',
    list: 'items',
    text: 'Qty,Weight each kg,Product,Pallet ID\n1,1,x,x\n',
    facts: ['count', 'massKg kg', 'name', 'load'],
  },
  {
    why: 'operators',
    list: 'operators',
    text: 'Badge\tDriver name\tLicence\tValid until\n1\tx\treach\t31/12/2026\n',
    facts: ['id', 'name', 'kind', 'expires'],
  },
  {
    why: 'checks',
    list: 'checks',
    text: 'Check date,Truck no,Operator,Pass/Fail,Remarks\n2026-03-02,x,x,pass,\n',
    facts: ['at', 'truck', 'by', 'result', 'defects'],
  },
  {
    why: 'frame types',
    list: 'frameTypes',
    text: 'Upright,Max gap (m),Capacity (t)\nx,1.5,9\n',
    facts: ['id', 'maxGapMm m', 'capacityKg t'],
  },
  {
    why: 'aisles',
    list: 'aisles',
    text: 'Aisle number,Clear aisle width (ft),Headroom (ft),Sprinkler deflector (ft)\n1,12,30,none\n',
    facts: ['id', 'clearWidthMm ft', 'overheadClearMm ft', 'sprinklerMm ft'],
  },
  {
    why: 'pallet types',
    list: 'palletTypes',
    text: 'Code,Length (in),Width (in),Empty weight (lb),Fork entry height (in)\nx,48,40,50,4\n',
    facts: ['id', 'depthMm in', 'widthMm in', 'tareKg lb', 'entryHeightMm in'],
  },
];

describe('the guess of which column is which fact', () => {
  it.each(HEADERS)('$why', ({ list, text, facts }) => {
    const table = tableOf(text);
    const { mapping, columns } = guessMapping(list, table);
    const said = table.header.map((_, at) => {
      const use = mapping.columns.find((entry) => columnAt(table, entry) === at);
      return use === undefined ? '' : `${use.fact}${use.unit === undefined ? '' : ` ${use.unit}`}`;
    });
    expect(said).toEqual(facts);
    expect(
      columns.every(({ fact, confidence }) => (fact === null ? confidence === 0 : confidence >= 0.6)),
    ).toBe(true);
    expect(mappingSchema.parse(JSON.parse(JSON.stringify(mapping)))).toEqual(mapping);
  });

  it('says whether the unit was stated or taken to be mm or kg', () => {
    const { columns } = guessMapping('loads', tableOf('SKU,Height,Gross weight (lb)\nx,1,1\n'));
    expect(columns.map(({ unit }) => unit)).toEqual([null, 'assumed', 'stated']);
  });

  it('says where a number or a date could be read in two ways', () => {
    const ambiguous = (text: string, list: ListName) =>
      guessMapping(list, tableOf(text)).columns.map((column) => column.ambiguous);
    expect(ambiguous('SKU,Height mm\nx,"1,200"\n', 'loads')).toEqual([false, true]);
    expect(ambiguous('SKU,Height mm\nx,"1,200"\ny,"1,200.5"\n', 'loads')).toEqual([false, false]);
    expect(ambiguous('Operator,Expires\nx,01/02/2026\n', 'operators')).toEqual([false, true]);
    expect(ambiguous('Operator,Expires\nx,01/02/2026\ny,13/02/2026\n', 'operators')).toEqual([false, false]);
  });

  it('lets the other columns, and then the delimiter, decide a mark that could be either', () => {
    const styleOf = (text: string) => guessMapping('loads', tableOf(text)).mapping.columns[1]!.numbers;
    expect(styleOf('SKU;Height mm\nx;1.200\n')).toEqual({ decimal: ',', group: '.' });
    expect(styleOf('SKU;Height mm;Width mm\nx;1.200;80.5\n')).toEqual({ decimal: '.', group: '' });
    expect(styleOf('SKU,Height mm\nx,"1,200"\n')).toEqual({ decimal: '.', group: ',' });
    expect(styleOf('SKU,Height mm,Width mm\nx,"1,200","80,5"\n')).toEqual({ decimal: ',', group: '' });
  });

  it('names what a new entry needs and no column gives', () => {
    expect(guessMapping('stock', tableOf('Bin,Lot\nx,x\n')).needed).toEqual(['load']);
    const { needed } = guessMapping(
      'locations',
      tableOf('Location,Run,Frame type of both,Frame condition of both\nx,x,x,x\n'),
    );
    expect(needed).not.toContain('leftFrameType');
    expect(needed).not.toContain('rightFrameCondition');
    expect(needed).toContain('aisle');
  });

  it('gives no fact twice and takes the better header', () => {
    const { mapping } = guessMapping('stock', tableOf('Location code,Location,Location,Load\nx,x,x,x\n'));
    expect(mapping.columns.map(({ header, nth, fact }) => [header, nth, fact])).toEqual([
      ['Location', 0, 'location'],
      ['Load', 0, 'load'],
    ]);
  });

  it('never takes a mass for a length by its unit', () => {
    expect(guessMapping('loads', tableOf('SKU,Height (kg)\nx,1\n')).columns[1]!.fact).toBeNull();
    expect(guessMapping('loads', tableOf('SKU,Weight (mm)\nx,1\n')).columns[1]!.fact).toBeNull();
  });
});

describe('a remembered mapping', () => {
  it('is kept under the same signature in any order and spelling', () => {
    expect(headerSignature(['Beam top (mm)', 'Location_ID', 'Level'])).toBe(
      headerSignature(['level', 'LOCATION  id', 'beam_top (mm)']),
    );
    expect(headerSignature(['Level', 'Bay'])).not.toBe(headerSignature(['Level', 'Run']));
  });

  it.each([
    ['an unknown fact', { list: 'stock', columns: [{ header: 'x', fact: 'bay' }] }],
    [
      'a fact given twice',
      { list: 'stock', columns: [{ header: 'x', fact: 'load' }], constants: { load: 'a' } },
    ],
    ['an unknown unit', { list: 'loads', columns: [{ header: 'x', fact: 'grossKg', unit: 'stone' }] }],
    ['an unknown key', { list: 'loads', columns: [], formula: '=1' }],
  ])('with %s is refused', (_, mapping) => {
    expect(mappingSchema.safeParse(mapping).success).toBe(false);
  });
});

describe('the table of header words', () => {
  it.each(LIST_NAMES)('of %s names only facts that the list has, and each word one fact only', (list) => {
    const facts = new Set(LIST_FACTS[list].map(({ fact }) => fact));
    expect(Object.keys(HEADER_WORDS[list]).filter((fact) => !facts.has(fact))).toEqual([]);
    const words = Object.values(HEADER_WORDS[list]).flat();
    expect(words.filter((word, at) => words.indexOf(word) !== at)).toEqual([]);
    expect(words.filter((word) => word !== word.toLowerCase())).toEqual([]);
  });
});
