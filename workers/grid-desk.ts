import { type ProxyMarked, type Remote, releaseProxy, transfer } from 'comlink';
import { answerInSlices } from '../lib/grid/answer-grid.ts';
import { compileSite } from '../lib/grid/compile-site.ts';
import type { CompiledSite } from '../lib/grid/compiled-site.ts';
import { editSheet } from '../lib/grid/edit-sheet.ts';
import type { SiteEdit } from '../lib/grid/edit-site.ts';
import { type GridSheet, openSheet } from '../lib/grid/grid-sheet.ts';
import type { GridAnswer, GridQuestion } from '../lib/grid/question.ts';
import type { Site } from '../lib/model/site.ts';
import { indexSite } from '../lib/model/site-index.ts';

type Progress = ((done: number) => void) & ProxyMarked;

/**
 * What the worker's side of the door does: keeps one site compiled and the last question worked out, answers the
 * newest question only. Between slices it lets messages in; a question that finds a newer one gives up with null.
 */
export function createGridDesk() {
  let site: CompiledSite | null = null;
  let sheet: GridSheet | null = null;
  let newest = 0;

  return {
    /** Compiles a site; it takes the place of the one before. */
    open(facts: Site): void {
      newest += 1;
      sheet = null;
      site = compileSite(indexSite(facts));
    },

    /** Answers a question; null when a newer call came in before it was done. */
    async ask(question: GridQuestion, onProgress: Remote<Progress>): Promise<GridAnswer | null> {
      newest += 1;
      const mine = newest;
      const former = sheet;
      sheet = null;
      if (site === null) throw new Error('no site is open');
      const working = openSheet(site, question, former);
      for (const done of answerInSlices(working)) {
        void onProgress(done);
        await messagesComeIn();
        if (mine !== newest) break;
      }
      onProgress[releaseProxy]();
      if (mine !== newest) return null;
      sheet = working;
      return handOver(working.answer);
    },

    /** Puts an edit into the site and answers the last question again; throws when none was answered. */
    edit(edit: SiteEdit): GridAnswer {
      if (sheet === null) throw new Error('no question has been answered yet');
      editSheet(sheet, edit);
      return handOver(sheet.answer);
    },
  };
}

export type GridDesk = ReturnType<typeof createGridDesk>;

/** A copy that moves out of the worker: the desk keeps its own for edits. */
function handOver(answer: GridAnswer): GridAnswer {
  const copy: GridAnswer = {
    ...answer,
    verdicts: answer.verdicts.slice(),
    governing: answer.governing.slice(),
    mostKg: answer.mostKg.slice(),
    assessedKg: answer.assessedKg.slice(),
  };
  const { verdicts, governing, mostKg, assessedKg } = copy;
  return transfer(copy, [verdicts.buffer, governing.buffer, mostKg.buffer, assessedKg.buffer]);
}

/** One turn of the message queue. A timer would wait at least 4 ms in a browser. */
function messagesComeIn(): Promise<void> {
  return new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      resolve();
    };
    port2.postMessage(null);
  });
}
