import { expose } from 'comlink';
import { auditDesk } from './audit-desk.ts';

expose(auditDesk);
