import { expose } from 'comlink';
import { createGridDesk } from './grid-desk.ts';

expose(createGridDesk());
