import { expose } from 'comlink';
import { weighConsequences } from '../lib/rack-shape/consequences.ts';

const desk = { weigh: weighConsequences };
export type RackShapeDesk = typeof desk;

expose(desk);
