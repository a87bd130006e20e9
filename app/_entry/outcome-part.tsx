import type { SaveOutcome } from '@/app/_entry/use-save.ts';
import { unavailableSentence } from '@/lib/words/change.ts';
import { photoRefusedSentence } from '@/lib/words/entry.ts';
import { counted } from '@/lib/words/plain-words.ts';
import { refusalSentence } from '@/lib/words/refusal.ts';

const PLACES_NAMED = 12;

/** Why nothing was stored. What belongs to a field stands there; a conflict has a part of its own. */
export function OutcomePart({ outcome }: { outcome: SaveOutcome | null }) {
  return (
    <div role="alert">
      {outcome === null
        ? null
        : sentences(outcome).map((sentence) => (
            <p key={sentence} className="fault">
              {sentence}
            </p>
          ))}
    </div>
  );
}

function sentences(outcome: SaveOutcome): string[] {
  switch (outcome.state) {
    case 'saved':
    case 'conflict':
      return [];
    case 'refused':
      return outcome.refusals.map(refusalSentence);
    case 'photo-refused':
      return [photoRefusedSentence(outcome.why)];
    case 'unavailable':
      return [unavailableSentence(outcome.reason)];
    case 'no-answer':
      return [
        'The server did not answer. Nothing was stored; everything that you typed still stands here. Try again.',
      ];
    case 'needed': {
      const more = outcome.places.length - PLACES_NAMED;
      const named = outcome.places.slice(0, PLACES_NAMED).join(', ');
      return [
        `It cannot be deleted: it stands in ${named}${more > 0 ? ` and ${counted(more, 'more location')}` : ''}. Take it out of there first.`,
      ];
    }
  }
}
