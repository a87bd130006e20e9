'use client';

import { useMemo, useState } from 'react';
import { useUnits } from '@/app/_parts/units-context.tsx';
import { saveRunShape } from '@/app/rack-shape/actions.ts';
import { ConsequencesPanel } from '@/app/rack-shape/consequences-panel.tsx';
import { CopyForm } from '@/app/rack-shape/copy-form.tsx';
import { faultsByField } from '@/app/rack-shape/faults-by-field.ts';
import { HistoryButtons } from '@/app/rack-shape/history-buttons.tsx';
import { LabelPreview } from '@/app/rack-shape/label-preview.tsx';
import { firstDescription, type NewRun, shapeNew } from '@/app/rack-shape/new-run.ts';
import { RunForm } from '@/app/rack-shape/run-form.tsx';
import { SavePart } from '@/app/rack-shape/save-part.tsx';
import { ShapeElevation } from '@/app/rack-shape/shape-elevation.tsx';
import { RatingsPart } from '@/app/rack-shape/steel-part.tsx';
import { useConsequences } from '@/app/rack-shape/use-consequences.ts';
import { useHistory } from '@/app/rack-shape/use-history.ts';
import { useReference } from '@/app/rack-shape/use-reference.ts';
import { useSettled } from '@/app/rack-shape/use-settled.ts';
import type { Run } from '@/lib/model/racking.ts';
import type { Site } from '@/lib/model/site.ts';
import { neighboursOf } from '@/lib/rack-shape/neighbours.ts';
import { rateFrames } from '@/lib/rack-shape/rate-frames.ts';
import { newDraft } from '@/lib/rack-shape/run-draft.ts';
import { beforeAfter } from '@/lib/rack-shape/site-of-run.ts';
import styles from './rack-shape.module.css';

/** A new run, described or copied, beside its drawing. */
export function NewRunDesk({ site, revision, copyOf }: { site: Site; revision: number; copyOf: Run | null }) {
  const units = useUnits();
  const history = useHistory<NewRun>(firstDescription(site, copyOf));
  const neighbours = useMemo(() => neighboursOf(site, null), [site]);
  const settled = useSettled(history.now, 150);
  const shaped = useMemo(() => shapeNew(settled, neighbours), [settled, neighbours]);
  const [drawn, setDrawn] = useState<Run | null>(null);
  if (shaped.ok && drawn !== shaped.value) setDrawn(shaped.value);
  const run = shaped.ok ? shaped.value : drawn;
  const reference = useReference();
  const sites = useMemo(
    () => (shaped.ok ? beforeAfter(site, null, newDraft(shaped.value)) : null),
    [shaped, site],
  );
  const asked = useMemo(
    () => (sites === null ? null : { sites, reference: reference.load, asOf: null }),
    [sites, reference.load],
  );
  const weighed = useConsequences(useSettled(asked, 300));
  const faultOf = faultsByField(shaped.ok ? [] : shaped.refusals, units, true);
  const { now, set } = history;

  const save = async () => {
    if (!shaped.ok) throw new Error('a run with faults is not saved');
    const draft = newDraft(shaped.value);
    const links = { bays: [...draft.bays], frames: [...draft.frames] };
    return saveRunShape({
      basedOn: revision,
      replaces: null,
      run: shaped.value,
      renamed: [],
      takeOut: [],
      links,
    });
  };
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: only hears the keys of undo and redo
    <div className={styles.desk} onKeyDown={history.onKeyDown}>
      <form
        className={`sheet ${styles.form}`}
        onSubmit={(event) => event.preventDefault()}
        aria-label="The run"
      >
        <div className={styles.spread}>
          <h2>{now.kind === 'copy' ? `A copy of ${now.of.id}` : 'In a few figures'}</h2>
          <HistoryButtons history={history} />
        </div>
        {now.kind === 'copy' ? (
          <CopyForm
            site={site}
            copy={now}
            onChange={(part, step) => set({ ...now, ...part }, step)}
            faultOf={faultOf}
          />
        ) : (
          <>
            <p className="soft dense">
              The figures here are a beginning to type over: measure each one, or read it off the load notice.
            </p>
            <RunForm
              site={site}
              description={now.description}
              onChange={(part, step) =>
                set({ kind: 'described', description: { ...now.description, ...part } }, step)
              }
              faultOf={faultOf}
            />
          </>
        )}
      </form>
      <div className={styles.side}>
        {run === null ? (
          <p className={`sheet ${styles.undrawn}`}>The run is drawn here once its figures are whole.</p>
        ) : (
          <ShapeElevation run={run} />
        )}
        <p className={styles.state} role="status">
          {shaped.ok
            ? ''
            : 'Something is missing or does not fit: see the marked fields. The drawing shows the last run that did.'}
        </p>
        {run === null ? null : <LabelPreview run={run} />}
        <ConsequencesPanel
          title="What it comes to"
          weighed={weighed}
          sites={sites}
          reference={reference}
          ratings={shaped.ok ? <RatingsPart ratings={rateFrames(site, shaped.value)} /> : undefined}
        />
        <SavePart
          label="Save the run"
          hindrance={shaped.ok && settled === now ? null : 'The marked fields come first.'}
          warnings={[]}
          worse={null}
          stranded={[]}
          save={save}
          hrefOf={(saved) => `/rack-shape/${encodeURIComponent(run?.id ?? '')}?saved=${saved}`}
        />
      </div>
    </div>
  );
}
