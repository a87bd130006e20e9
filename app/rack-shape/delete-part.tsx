'use client';

import { deleteRunShape } from '@/app/rack-shape/actions.ts';
import { SavePart } from '@/app/rack-shape/save-part.tsx';
import type { Run } from '@/lib/model/racking.ts';
import type { Site } from '@/lib/model/site.ts';
import { locationsOf } from '@/lib/rack-shape/neighbours.ts';
import { strandedStock } from '@/lib/rack-shape/site-of-run.ts';
import { counted } from '@/lib/words/plain-words.ts';
import styles from './rack-shape.module.css';

/** Taking a whole run out of the site, with what stands in it. */
export function DeletePart({ site, run, revision }: { site: Site; run: Run; revision: number }) {
  const stranded = strandedStock(site, run, null);
  return (
    <details className={styles.delete}>
      <summary>Delete run {run.id}</summary>
      <p>
        {counted(run.bays.length, 'bay')} and {counted(locationsOf(run).length, 'location')} go;{' '}
        {stranded.length === 0
          ? 'nothing stands in them.'
          : `${counted(stranded.length, 'pallet')} ${stranded.length === 1 ? 'stands' : 'stand'} there and must be taken out first.`}
      </p>
      <SavePart
        label="Delete the run"
        hindrance={null}
        warnings={['Plans, moves and signs that name these locations no longer lead anywhere.']}
        worse={null}
        stranded={stranded}
        save={() => deleteRunShape(run.id, stranded, revision)}
        hrefOf={(saved) => `/rack-shape?saved=${saved}`}
      />
    </details>
  );
}
