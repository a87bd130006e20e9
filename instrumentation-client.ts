import * as z from 'zod';

/*
 * Next runs this in the browser before any other code of ours. Zod would try out whether it may make functions from
 * text, which our content policy forbids: it is told beforehand, so that nothing is refused and reported.
 */
z.config({ jitless: true });
