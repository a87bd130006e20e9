import type { Operator, TruckKind } from '../model/truck.ts';

function operator(id: string, name: string, ...held: [TruckKind, string | null][]): Operator {
  return { id, name, authorisations: held.map(([kind, expires]) => ({ kind, expires })) };
}

/** Who may drive what. One authorisation has run out (OPR-5), one ends within the month (OPR-2). */
export const DEMO_OPERATORS: readonly Operator[] = [
  operator(
    'OPR-1',
    'R. Quillman',
    ['counterbalance', '2028-03-31'],
    ['reach', '2028-03-31'],
    ['stacker', null],
    ['order-picker', '2027-11-30'],
    ['narrow-aisle', '2027-11-30'],
  ),
  operator('OPR-2', 'S. Ollerdine', ['narrow-aisle', '2026-10-02'], ['order-picker', '2027-05-14']),
  operator('OPR-3', 'H. Dunmallow', ['counterbalance', '2027-08-20']),
  operator('OPR-4', 'P. Astebury', ['counterbalance', '2029-01-15'], ['stacker', null]),
  operator('OPR-5', 'J. Farrowick', ['reach', '2026-08-31'], ['order-picker', '2028-02-29']),
  operator('OPR-6', 'B. Tanwater', ['stacker', '2027-02-01']),
  operator('OPR-7', 'M. Kestlewick', ['reach', '2028-06-30'], ['stacker', '2028-06-30']),
  operator('OPR-8', 'L. Brindlecombe'),
];
