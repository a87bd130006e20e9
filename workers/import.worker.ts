import { expose } from 'comlink';
import { createImportDesk } from './import-desk.ts';

expose(createImportDesk());
