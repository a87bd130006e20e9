import type { ReactNode } from 'react';
import type { WearQuery } from '@/app/wear/wear-query.ts';
import {
  bowLimitMm,
  forkArmFaults,
  rejectThicknessMm,
  strengthLeft,
  tipLimitMm,
} from '@/lib/check/walk-round/fork-arm-wear.ts';
import {
  dentLimitMm,
  inDateThrough,
  isDentRejected,
  isInDate,
  RETEST_YEARS,
} from '@/lib/check/walk-round/gas-cylinder.ts';
import { chainStretch } from '@/lib/check/walk-round/lift-chain.ts';
import { type DisplayUnits, formatLength } from '@/lib/units/format-quantity.ts';
import { chainStateWords, forkArmFaultWords, retestRuleWords } from '@/lib/words/wear.ts';
import styles from './wear.module.css';

/** What each measurement says; nothing for what was not measured. */
export function WearResults({
  query,
  month,
  units,
}: {
  query: WearQuery;
  month: string;
  units: DisplayUnits;
}) {
  return (
    <>
      <ForkArms forks={query.forks} units={units} />
      {query.chain === null ? null : <Chain chain={query.chain} units={units} />}
      {query.cylinder === null ? null : <Cylinder cylinder={query.cylinder} month={month} />}
      {query.dent === null ? null : <Dent dent={query.dent} units={units} />}
    </>
  );
}

function ForkArms({ forks, units }: { forks: WearQuery['forks']; units: DisplayUnits }) {
  const { thickness, bladeLengthMm, tipDifferenceMm, bowMm, angleDeg } = forks;
  const measured =
    thickness !== undefined ||
    angleDeg !== undefined ||
    (bladeLengthMm !== undefined && (tipDifferenceMm !== undefined || bowMm !== undefined));
  if (!measured) return null;
  const faults = forkArmFaults(forks);
  return (
    <Result
      name="Fork arms"
      word={faults.length === 0 ? 'Within the limits measured' : 'Withdraw'}
      tone={faults.length > 0 ? 'bad' : 'good'}
    >
      {faults.length === 0 ? null : (
        <ul>
          {faults.map((fault) => (
            <li key={fault.what}>{forkArmFaultWords(fault)}</li>
          ))}
        </ul>
      )}
      {thickness === undefined ? null : (
        <p>
          Withdrawn at {formatLength(rejectThicknessMm(thickness.originalMm), units, 'up')} or less;{' '}
          {Math.floor(strengthLeft(thickness) * 100)}
          {'\u202f'}% of the bending strength is left.
        </p>
      )}
      {bladeLengthMm === undefined ? null : (
        <p className="soft">
          For a blade of {formatLength(bladeLengthMm, units, 'up')}: tips to{' '}
          {formatLength(tipLimitMm(bladeLengthMm), units, 'down')}, bow to{' '}
          {formatLength(bowLimitMm(bladeLengthMm), units, 'down')}, angle to 93° (ISO 5057 practice).
        </p>
      )}
    </Result>
  );
}

function Chain({ chain, units }: { chain: NonNullable<WearQuery['chain']>; units: DisplayUnits }) {
  const { percent, state } = chainStretch(chain);
  return (
    <Result
      name="Lift chain"
      word={`${(Math.ceil(percent * 100 - 1e-6) / 100).toFixed(2)}\u202f% longer`}
      tone={state === 'good' ? 'good' : state === 'replace' ? 'bad' : 'soon'}
    >
      <p>{chainStateWords(state)}.</p>
      <p className="soft">
        {chain.pinsCounted} pins span {chain.pinsCounted - 1} pitches: new{' '}
        {formatLength(chain.pitchMm * (chain.pinsCounted - 1), units, 'down')}, now{' '}
        {formatLength(chain.measuredMm, units, 'up')}.
      </p>
    </Result>
  );
}

function Cylinder({ cylinder, month }: { cylinder: NonNullable<WearQuery['cylinder']>; month: string }) {
  const good = isInDate({ ...cylinder, month });
  return (
    <Result name="Gas cylinder" word={good ? 'In date' : 'Out of date'} tone={good ? 'good' : 'bad'}>
      <p>
        Through {inDateThrough(cylinder.stamped, cylinder.rule)}: {RETEST_YEARS[cylinder.rule]} years from the
        stamp ({retestRuleWords(cylinder.rule)}).
        {good ? '' : ' Take it off the truck; it is not filled again before its test.'}
      </p>
    </Result>
  );
}

function Dent({ dent, units }: { dent: NonNullable<WearQuery['dent']>; units: DisplayUnits }) {
  const rejected = isDentRejected(dent);
  return (
    <Result
      name="Dent of the cylinder"
      word={rejected ? 'Reject the cylinder' : 'Not too deep'}
      tone={rejected ? 'bad' : 'good'}
    >
      <p>
        {formatLength(dent.depthMm, units, 'up')} deep, {formatLength(dent.meanDiameterMm, units, 'up')}{' '}
        across
        {dent.onWeld ? ', on a weld' : ''}: too deep beyond {formatLength(dentLimitMm(dent), units, 'down')}{' '}
        (AS 4983, from secondary sources).
      </p>
    </Result>
  );
}

function Result({
  name,
  word,
  tone,
  children,
}: {
  name: string;
  word: string;
  tone: 'good' | 'soon' | 'bad';
  children: ReactNode;
}) {
  return (
    <section className={`sheet stack ${styles[tone]}`} aria-label={name}>
      <h2>
        {name}: <span className={styles.word}>{word}</span>
      </h2>
      {children}
    </section>
  );
}
