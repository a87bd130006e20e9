'use client';

import type { ReactNode } from 'react';
import { LiftsPart } from '@/app/rack-shape/lifts-part.tsx';
import { StandingPart } from '@/app/rack-shape/standing-part.tsx';
import { SteelPart } from '@/app/rack-shape/steel-part.tsx';
import { TypedField } from '@/app/rack-shape/typed-field.tsx';
import type { Weighed } from '@/app/rack-shape/use-consequences.ts';
import type { useReference } from '@/app/rack-shape/use-reference.ts';
import type { BeforeAfter } from '@/lib/rack-shape/site-of-run.ts';
import styles from './rack-shape.module.css';

/** What the change comes to, before it is saved: steel, what stands there, lifts. */
export function ConsequencesPanel({
  title,
  weighed,
  sites,
  reference,
  ratings,
}: {
  title: string;
  weighed: Weighed;
  sites: BeforeAfter | null;
  reference: ReturnType<typeof useReference>;
  /** Stands in the place of the comparison of steel where there was none before. */
  ratings?: ReactNode;
}) {
  return (
    <section className={`sheet stack ${styles.consequences}`} aria-labelledby="consequences-heading">
      <div className={styles.spread}>
        <h2 id="consequences-heading">{title}</h2>
        <span className="soft dense" role="status">
          {weighed.state === 'busy' ? 'Reckoning…' : ''}
          {weighed.state === 'ready' ? 'Reckoned before anything is saved' : ''}
        </span>
      </div>
      {weighed.state === 'failed' ? <p className="fault">This could not be reckoned: {weighed.why}</p> : null}
      {weighed.state === 'none' ? <p className="soft">Nothing is changed yet.</p> : null}
      {weighed.state !== 'ready' || sites === null ? null : (
        <>
          {ratings ?? <SteelPart steel={weighed.consequences.steel} />}
          {sites.before === null ? null : (
            <>
              <h3>What stands there</h3>
              <StandingPart standing={weighed.consequences.standing} />
            </>
          )}
          <h3>Lifts</h3>
          <LiftsPart lifts={weighed.consequences.lifts} sites={sites} reference={reference.load} />
        </>
      )}
      <details>
        <summary>Reference load, and what is asked</summary>
        <div className={styles.fields}>
          <TypedField
            label="Mass"
            of="mass"
            value={reference.typed.massKg}
            onChange={(massKg) => reference.set({ massKg })}
          />
          <TypedField
            label="Depth along the forks"
            of="length"
            value={reference.typed.depthMm}
            onChange={(depthMm) => reference.set({ depthMm })}
          />
          <TypedField
            label="Width"
            of="length"
            value={reference.typed.widthMm}
            onChange={(widthMm) => reference.set({ widthMm })}
          />
          <TypedField
            label="Height"
            of="length"
            value={reference.typed.heightMm}
            onChange={(heightMm) => reference.set({ heightMm })}
          />
        </div>
        <p className="soft dense">
          Every truck at every location of the run: taking down what stands there, placing it back, and
          putting the reference load away. Checks, holds and expiry dates are not judged.
        </p>
      </details>
    </section>
  );
}
