import { useId } from 'react';
import { centreHeightMm, entryHeightMm, type Load, loadCentreMm, type PalletType } from '@/lib/model/load.ts';
import { type DisplayUnits, formatLength } from '@/lib/units/format-quantity.ts';
import styles from './load-side-view.module.css';

const WIDTH = 440;
const HEIGHT = 360;
const PLOT = { left: 106, right: 352, top: 44, bottom: 300 };

/**
 * The load from the side, to scale, the fork heel at the left: its depth and height, and where its centre of gravity
 * counts: from the heel (the load centre) and above the pallet's underside.
 */
export function LoadSideView({
  load,
  pallet,
  units,
}: {
  load: Load;
  pallet: PalletType | null;
  units: DisplayUnits;
}) {
  const id = useId();
  const centreMm = loadCentreMm(load);
  const centreUpMm = centreHeightMm(load);
  const entryMm = Math.min(entryHeightMm(pallet), load.heightMm);
  const widestMm = Math.max(load.depthMm, centreMm);
  const tallestMm = Math.max(load.heightMm, centreUpMm);
  const scale = Math.min((PLOT.right - PLOT.left) / widestMm, (PLOT.bottom - PLOT.top) / tallestMm);
  const x = (mm: number) => PLOT.left + mm * scale;
  const y = (mm: number) => PLOT.bottom - mm * scale;
  const [right, top, forks] = [x(load.depthMm), y(load.heightMm), y(entryMm)];
  const [cx, cy] = [x(centreMm), y(centreUpMm)];
  return (
    <svg
      viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
      className={styles.view}
      role="img"
      aria-labelledby={`${id}-t ${id}-d`}
    >
      <title id={`${id}-t`}>{`${load.name} from the side`}</title>
      <desc id={`${id}-d`}>
        {`${formatLength(load.depthMm, units, 'up')} deep along the forks, ${formatLength(load.heightMm, units, 'up')} high, pallet included. Centre of gravity ${formatLength(centreMm, units, 'up')} from the fork heel and ${formatLength(centreUpMm, units, 'up')} above the underside.`}
      </desc>
      <path d={`M20 ${PLOT.bottom}H${WIDTH - 20}`} className={styles.floor} />
      {/* the truck's side: fork heel and blade, as long as the load is deep */}
      <path d={`M${PLOT.left} ${PLOT.top}V${forks}H${right}`} className={styles.fork} />
      <rect x={PLOT.left} y={top} width={right - PLOT.left} height={forks - top} className={styles.goods} />
      <Pallet left={PLOT.left} right={right} top={forks} bottom={PLOT.bottom} />

      <path d={`M${cx} ${PLOT.top - 14}V${cy}`} className={styles.lead} />
      <path d={`M${cx} ${cy}H${PLOT.right + 12}`} className={styles.lead} />
      <Centre x={cx} y={cy} />

      <Across from={PLOT.left} to={cx} at={PLOT.top - 14} label={formatLength(centreMm, units, 'up')} above />
      <Across
        from={PLOT.left}
        to={right}
        at={PLOT.bottom + 26}
        label={`depth ${formatLength(load.depthMm, units, 'up')}`}
      />
      <Upright
        from={PLOT.bottom}
        to={top}
        at={PLOT.left - 30}
        label={formatLength(load.heightMm, units, 'up')}
      />
      <Upright
        from={PLOT.bottom}
        to={cy}
        at={PLOT.right + 12}
        label={formatLength(centreUpMm, units, 'up')}
        right
      />
    </svg>
  );
}

function Pallet({ left, right, top, bottom }: { left: number; right: number; top: number; bottom: number }) {
  const foot = Math.min(18, (right - left) / 6);
  const middle = (left + right - foot) / 2;
  return (
    <g className={styles.pallet}>
      <path d={`M${left} ${top}H${right}`} strokeWidth="4" />
      {[left, middle, right - foot].map((at) => (
        <rect key={at} x={at} y={top} width={foot} height={bottom - top} />
      ))}
    </g>
  );
}

/** The drawing office's mark for a centre of gravity: a circle with opposite quarters filled. */
function Centre({ x, y }: { x: number; y: number }) {
  return (
    <g transform={`translate(${x} ${y})`} className={styles.centre}>
      <circle r="10" />
      <path d="M0 0V-10A10 10 0 0 1 10 0zM0 0V10A10 10 0 0 1 -10 0z" />
    </g>
  );
}

function Across({
  from,
  to,
  at,
  label,
  above = false,
}: {
  from: number;
  to: number;
  at: number;
  label: string;
  above?: boolean;
}) {
  return (
    <g className={styles.size}>
      <path d={`M${from} ${at}H${to}M${from} ${at - 5}v10M${to} ${at - 5}v10`} />
      <text x={(from + to) / 2} y={above ? at - 8 : at + 18} textAnchor="middle">
        {label}
      </text>
    </g>
  );
}

function Upright({
  from,
  to,
  at,
  label,
  right = false,
}: {
  from: number;
  to: number;
  at: number;
  label: string;
  right?: boolean;
}) {
  return (
    <g className={styles.size}>
      <path d={`M${at} ${from}V${to}M${at - 5} ${from}h10M${at - 5} ${to}h10`} />
      <text x={right ? at + 9 : at - 9} y={(from + to) / 2 + 4} textAnchor={right ? 'start' : 'end'}>
        {label}
      </text>
    </g>
  );
}
