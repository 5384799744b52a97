import fc from 'fast-check';
import { expect, test } from 'vitest';
import { disagreements } from '#test/helpers/every-view';
import { deedsOf, doDeed } from '#test/helpers/random-work';
import { openWorkshop } from '#test/helpers/workshop';

const RUNS = 4;

test('every page says the same of a fact, after each of random days of a workshop, done, undone and done again', () => {
  let done = 0;
  fc.assert(
    fc.property(
      deedsOf(() => true, 50),
      fc.array(fc.constantFrom('work', 'work', 'work', 'undo', 'redo'), { minLength: 50, maxLength: 50 }),
      (deeds, moves) => {
        const workshop = openWorkshop();
        // Does not wait for the disk: what is asked is what is written, not whether it survives a power cut.
        workshop.context.store.database.pragma('synchronous = OFF');
        deeds.forEach((deed, at) => {
          const move = at < 4 ? 'work' : (moves[at % moves.length] ?? 'work');
          if (move === 'work') done += doDeed(workshop, deed) ? 1 : 0;
          else workshop.ask(move === 'undo' ? 'change:undo' : 'change:redo', {});
          expect(disagreements(workshop)).toEqual([]);
        });
        workshop.context.store.database.close();
      },
    ),
    { numRuns: RUNS, endOnFailure: false },
  );
  expect(done).toBeGreaterThan(RUNS * 12);
}, 240_000);
