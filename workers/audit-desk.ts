import { type ProxyMarked, type Remote, releaseProxy } from 'comlink';
import type { Reference } from '../lib/audit/audit-case.ts';
import { type Audit, auditSite } from '../lib/audit/audit-site.ts';
import type { Site } from '../lib/model/site.ts';
import { indexSite } from '../lib/model/site-index.ts';

/** What an audit is asked with; the reference load is the default one unless it is given. */
export type AuditAsked = { asOf: string | null; reference?: Reference };

type Progress = ((done: number) => void) & ProxyMarked;

/** What the worker's side of the door does: audits a site, plain data in and out; progress is told as it is made. */
export const auditDesk = {
  audit(facts: Site, asked: AuditAsked, onProgress: Remote<Progress>): Audit {
    const audit = auditSite(indexSite(facts), asked, (done) => void onProgress(done));
    onProgress[releaseProxy]();
    return audit;
  },
};

export type AuditDesk = typeof auditDesk;
