/** Millimetres in one unit of length, as exact decimals: 25.4 by definition (1959), a foot is twelve inches. */
export const MM_IN = { mm: '1', cm: '10', m: '1000', in: '25.4', ft: '304.8' } as const;
export type LengthUnit = keyof typeof MM_IN;

/** Kilograms in one unit of mass, as exact decimals: the pound by definition (1959), t the tonne of 1000 kg. */
export const KG_IN = { kg: '1', lb: '0.45359237', t: '1000' } as const;
export type MassUnit = keyof typeof KG_IN;

/**
 * A decimal as it was written times an exact factor, rounded once: the number nearest to the true product.
 *
 * Multiplying two doubles rounds three times: 96 x 25.4 gives 2438.3999999999996, 1.005 x 1000 gives
 * 1004.9999999999999. Here the digits are multiplied as whole numbers. Accepts "12", "12.5", ".5", "1.2e+4", no sign.
 *
 * @example scaleDecimal('96', MM_IN.in) //=> 2438.4
 */
export function scaleDecimal(decimal: string, factor: string): number {
  if (factor === '1') return Number(decimal);
  const [a, b] = [digitsOf(decimal), digitsOf(factor)];
  return Number(`${a.digits * b.digits}e${a.exponent + b.exponent}`);
}

/** digits x 10^exponent, exactly. */
function digitsOf(decimal: string): { digits: bigint; exponent: number } {
  const match = /^(\d*)(?:\.(\d*))?(?:e([+-]?\d+))?$/i.exec(decimal);
  if (match === null || `${match[1]}${match[2] ?? ''}` === '') throw new Error(`not a decimal: ${decimal}`);
  const fraction = match[2] ?? '';
  return { digits: BigInt(`${match[1]}${fraction}`), exponent: Number(match[3] ?? 0) - fraction.length };
}
