import type { Context } from '../../lib/check/step.ts';
import { assessedMassKg, grossMass, type Load } from '../../lib/model/load.ts';
import { palletOf, type SiteIndex } from '../../lib/model/site-index.ts';
import { formatLength, formatMass } from '../../lib/units/format-quantity.ts';
import { instantWords } from '../../lib/words/plain-words.ts';

/** What was asked, to stand above its answers: the site, the load as it counts, and what is asked around the lift. */
export function questionLines(index: SiteIndex, load: Load, context: Context): string[] {
  const { operation, stock, from, asOf, operator } = context;
  const asked = [
    operation === 'place' ? 'placing' : 'taking down',
    stock === 'as-is' ? 'racks stocked as they are' : 'racks taken as empty',
    ...(from === null ? [] : [`load coming from ${from}`]),
    ...(asOf === null ? [] : [`judged at ${instantWords(asOf)}`]),
    ...(operator === null ? [] : [`driven by ${operator}`]),
  ];
  const [depth, width, height] = [load.depthMm, load.widthMm, load.heightMm].map((mm) => {
    return formatLength(mm, 'metric', 'up');
  });
  return [
    printable(index.site.site.name),
    printable(
      `Load ${load.id}, ${load.name}: ${massWords(index, load)}; ${depth} deep, ${width} wide, ${height} high`,
    ),
    printable(`Asked: ${asked.join('; ')}`),
  ];
}

function massWords(index: SiteIndex, load: Load): string {
  const pallet = palletOf(index, load);
  const kg = assessedMassKg(load, pallet, index.policy);
  const gross = grossMass(load, pallet);
  return kg === null || gross === null
    ? 'mass not known'
    : `assessed at ${formatMass(kg, 'metric', 'up')} (${gross.basis})`;
}

/** The text without control characters, which a terminal would act on: ids and names come from a file. */
export function printable(text: string): string {
  return text.replace(/\p{Cc}/gu, '\ufffd');
}
