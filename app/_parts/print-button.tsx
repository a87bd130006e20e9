'use client';

/** Prints the page as it stands; the print styles open what is folded. */
export function PrintButton() {
  return (
    <button type="button" onClick={() => window.print()}>
      Print
    </button>
  );
}
