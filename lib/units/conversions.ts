/** Exact by definition (international yard and pound agreement, 1959). */
export const MM_PER_INCH = 25.4;
/** Exact by definition (international yard and pound agreement, 1959). */
export const KG_PER_POUND = 0.45359237;

export function inchesToMm(inches: number): number {
  return inches * MM_PER_INCH;
}

export function mmToInches(mm: number): number {
  return mm / MM_PER_INCH;
}

export function poundsToKg(pounds: number): number {
  return pounds * KG_PER_POUND;
}

export function kgToPounds(kg: number): number {
  return kg / KG_PER_POUND;
}
