import { answerLocations } from './answer-grid.ts';
import { editSite, type SiteEdit } from './edit-site.ts';
import { fillTruck, findSheetKinds, type GridSheet } from './grid-sheet.ts';
import { joinSides } from './join-sides.ts';
import { readyTruck } from './truck-side.ts';

/**
 * Puts an edit into the site under a sheet and answers again what it touches, in place: one truck's column, the bays
 * beside a level, or the bays where a load stands. The answer is then that of the edited site compiled anew.
 *
 * A load that the question itself asks about is not looked up in the site: ask a new question for that.
 */
export function editSheet(sheet: GridSheet, edit: SiteEdit): void {
  const touched = editSite(sheet.site, edit);
  if (edit.kind === 'truck') {
    const { locationCount } = sheet.answer;
    for (const [truck, id] of sheet.question.trucks.entries()) {
      if (id !== edit.truck.id) continue;
      sheet.trucks[truck] = readyTruck(sheet.site, id, sheet.question.context);
      for (let kind = 0; kind < sheet.kinds.list.length; kind += 1) fillTruck(sheet, kind, truck);
      joinSides(sheet, 0, locationCount, truck, truck + 1);
    }
    return;
  }
  for (const { first, end } of touched) {
    findSheetKinds(sheet, first, end);
    answerLocations(sheet, first, end);
  }
}
