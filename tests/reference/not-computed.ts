/** Published figures that were looked up and that no part of the program reckons, and why not. */
export const NOT_COMPUTED: readonly { what: string; source: string; why: string }[] = [
  {
    what: 'Standard load centre by rated capacity (400, 500, 600 mm); 600 mm for trucks with forks for 1165 mm pallets',
    source: 'ISO 22915-1; AS 2359.1:1995 14.4',
    why: 'every rating states its own load centre; a standard one would stand in for a fact that is missing',
  },
  {
    what: 'Sideways offset of the load (100 to 350 mm by capacity)',
    source: 'ISO 22915-20:2023, ISO 22915-10',
    why: 'the facts of a load hold no sideways offset; loads are taken as centred',
  },
  {
    what: 'Stability tests, slopes, tipping load, wheel reactions, combined centre of gravity',
    source: 'ISO 22915-2; 29 CFR 1910.178 App. A; textbook statics',
    why: "a plate already rests on the maker's tests; the truck's own mass and centre are not among its facts",
  },
  {
    what: 'Axle loads, share of the drive axle, load categories of trucks, floor loads by class',
    source: 'UFC 3-320-06A; EN 1991-1-1; Japanese building guide',
    why: 'no floor capacity and no truck mass is among the facts',
  },
  {
    what: 'Fork extensions (60 % and 150 % rules), proof load of a repaired arm',
    source: 'AS 2359.15:2005 6.1; ANSI B56.1-2005 7.39.1; ISO 5057',
    why: 'extensions are not modelled: a fitted one is an attachment and needs its own plate rating; proof loading is workshop work',
  },
  {
    what: 'Gangway widths (1.00, 1.50, +0.40 m)',
    source: 'ASR A1.8',
    why: 'gangways are not modelled, only the aisles that trucks stack from',
  },
  {
    what: 'Clearance of 100 mm where the operator rises with the load',
    source: 'AS 4084:2012',
    why: 'where the operator rides is not a fact of the truck; the larger figure is used',
  },
  {
    what: 'Impact allowance of 25 % on one unit load, placement and accidental loads, few-bay derating, breaking safety',
    source: 'ANSI MH16.1; EN 15512; DGUV 208-043 and 208-061',
    why: "they are in the notice already; using them again would second-guess the rack's designer",
  },
  {
    what: 'In-rack sprinklers, flue spaces, roof clearances of EN 12845',
    source: 'NFPA 13; EN 12845',
    why: 'only the height under ceiling sprinklers is surveyed; the clearance is a policy value',
  },
  {
    what: 'Rated loads of pallets by distribution, masses of pallet types',
    source: 'EN 13698-1; AS 4068',
    why: 'a pallet type states its own tare; its strength is not among the facts',
  },
  {
    what: 'Intervals of rack inspection and truck examination, repair time of amber damage',
    source: 'EN 15635; 29 CFR 1910.178(q)(7); LOLER',
    why: 'duties of people; the program keeps the result of a check and its age by policy',
  },
  {
    what: 'Reference masses of ISO 11228-1 (25, 20, 15 kg)',
    source: 'ISO 11228-1:2021',
    why: 'the lifting equation is used with its own constant of 23 kg; who lifts is not among the facts',
  },
  {
    what: "The regulator's example with its inputs after redesign",
    source: 'Canadian Centre for Occupational Health and Safety, 2016',
    why: 'the page prints multipliers but not all inputs; their product is checked above',
  },
  {
    what: "The lifting equation's printed example with a twist of 90 degrees at 10 lifts a minute",
    source: 'Canadian Centre for Occupational Health and Safety',
    why: 'V is read there from a coarse step (0.93 at knuckle height, where the formula gives 1); its product is checked above',
  },
  {
    what: 'Acetylene cylinders, filling rules, country rules not named above',
    source: '49 CFR 180.209',
    why: 'not fuel of a lift truck, or not seen',
  },
  {
    what: 'Cube-per-order index and the assignment examples',
    source: 'Heskett 1963; textbook data',
    why: 'figures of the plan, checked in tests/plan where it computes them',
  },
];
