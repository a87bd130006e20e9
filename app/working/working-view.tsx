import Link from 'next/link';
import type { AskedLift } from '@/app/_parts/asked-lift.ts';
import { CautionStrip } from '@/app/_parts/caution-strip.tsx';
import { type LiftQuery, writeLiftQuery } from '@/app/_parts/lift-query.ts';
import { LoadChart } from '@/app/_parts/load-chart.tsx';
import { LoadSideView } from '@/app/_parts/load-side-view.tsx';
import { MassArithmetic } from '@/app/_parts/mass-arithmetic.tsx';
import { PlateTable } from '@/app/_parts/plate-table.tsx';
import { PrintButton } from '@/app/_parts/print-button.tsx';
import { RankedTrucks } from '@/app/_parts/ranked-trucks.tsx';
import { VerdictHead } from '@/app/_parts/verdict-head.tsx';
import { WorkingSteps } from '@/app/_parts/working-steps.tsx';
import { EstimatesPart } from '@/app/working/estimates-part.tsx';
import { estimateBeyondPlate } from '@/app/working/lift-estimates.ts';
import { LiftQuestion } from '@/app/working/lift-question.tsx';
import { NOT_JUDGED } from '@/app/working/not-judged.ts';
import { usedPlateLines } from '@/app/working/used-plate-lines.ts';
import { checkLift } from '@/lib/check/check-lift.ts';
import { liftHeightMm } from '@/lib/check/lift-case.ts';
import { rankTrucks } from '@/lib/check/rank-trucks.ts';
import { entryHeightMm, grossMass, loadCentreMm } from '@/lib/model/load.ts';
import { palletOf, type SiteIndex } from '@/lib/model/site-index.ts';
import type { Truck } from '@/lib/model/truck.ts';
import type { DisplayUnits } from '@/lib/units/format-quantity.ts';
import { cautions } from '@/lib/words/cautions.ts';
import styles from './working.module.css';

/** The whole working of one lift on a page: the answer, every rule, the plate it rests on, the load's mass, and who else could. */
export function WorkingView({
  index,
  asked,
  truck,
  query,
  units,
}: {
  index: SiteIndex;
  asked: AskedLift;
  truck: Truck;
  query: LiftQuery;
  units: DisplayUnits;
}) {
  const { place, load, context } = asked;
  const answer = checkLift(index, { place, load, truck, context });
  const pallet = palletOf(index, load);
  const liftMm = liftHeightMm(place.level.beamTopMm, entryHeightMm(pallet), index.policy.placingClearanceMm);
  const centreMm = loadCentreMm(load);
  const others = rankTrucks(index, { place, load, context }).filter((other) => other.truck !== truck.id);
  const plateStep = answer.steps.find((step) => step.rule === 'plate-capacity');
  return (
    <div className={styles.page}>
      <header className={styles.top}>
        <h1>
          {context.operation === 'place' ? 'Put away' : 'Take down'} {load.name} at {place.id} with {truck.id}
        </h1>
        <div className="row no-print">
          <Link href={`/which-truck?${writeLiftQuery(query)}`} className="button">
            Change the question
          </Link>
          <Link href={`/racks?${writeLiftQuery(query)}`} className="button">
            Show in the racks
          </Link>
          <PrintButton />
        </div>
      </header>
      <section className={`sheet ${styles.answer}`} aria-label="The answer">
        <VerdictHead answer={answer} />
        <LiftQuestion asked={asked} truck={truck} query={query} units={units} />
      </section>
      <CautionStrip
        title="The person at the truck decides"
        cautions={cautions(answer, context, grossMass(load, pallet)?.basis ?? null)}
      />
      <section className="stack" aria-labelledby="working-heading">
        <h2 id="working-heading">The working, rule by rule</h2>
        <WorkingSteps answer={answer} />
      </section>
      <div className={styles.pair}>
        <section className="sheet stack" aria-labelledby="plate-heading">
          <h2 id="plate-heading">What the plate of {truck.id} proves</h2>
          <LoadChart
            truck={truck}
            units={units}
            mark={{ liftMm, loadCentreMm: centreMm, assessedKg: answer.assessedKg }}
          />
          <PlateTable truck={truck} units={units} used={usedPlateLines(answer)} />
        </section>
        <section className="sheet stack" aria-labelledby="mass-heading">
          <h2 id="mass-heading">What the load weighs, and where its centre is</h2>
          <MassArithmetic load={load} pallet={pallet} policy={index.policy} units={units} />
          <LoadSideView load={load} pallet={pallet} units={units} />
        </section>
      </div>
      <EstimatesPart
        truck={truck}
        beyond={
          plateStep?.cause === 'load-centre-beyond-plate'
            ? estimateBeyondPlate(truck, liftMm, centreMm)
            : null
        }
        lacksAttachment={plateStep?.cause === 'no-rating'}
        units={units}
      />
      <section className="sheet stack" aria-labelledby="not-judged-heading">
        <h2 id="not-judged-heading">Not judged here</h2>
        <ul className={styles.notJudged}>
          {NOT_JUDGED.map((thing) => (
            <li key={thing}>{thing}</li>
          ))}
        </ul>
      </section>
      {others.length === 0 ? null : (
        <section className="stack" aria-labelledby="others-heading">
          <h2 id="others-heading">Other trucks for this lift</h2>
          <RankedTrucks
            answers={others}
            index={index}
            query={query}
            units={units}
            label="Other trucks, best first"
          />
        </section>
      )}
    </div>
  );
}
