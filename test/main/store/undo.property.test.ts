import fc from 'fast-check';
import { expect, test } from 'vitest';
import { undoState } from '#main/store/history/changes';
import { dumpOf } from '#test/helpers/dump';
import { deedsOf, doDeed } from '#test/helpers/random-work';
import { openWorkshop, type TestWorkshop } from '#test/helpers/workshop';

const RUNS = 8;

/** Does not wait for the disk: these tests ask what is written, not whether it survives a power cut. */
function quickWorkshop(): TestWorkshop {
  const workshop = openWorkshop();
  workshop.context.store.database.pragma('synchronous = OFF');
  return workshop;
}

function backAndForth(workshop: TestWorkshop, states: readonly string[]): void {
  for (const state of states.slice(0, -1).reverse()) {
    workshop.get('change:undo', {});
    expect(dumpOf(workshop)).toBe(state);
  }
  expect(workshop.fail('change:undo', {})).toEqual({ code: 'nothing-to-undo' });
  for (const state of states.slice(1)) {
    workshop.get('change:redo', {});
    expect(dumpOf(workshop)).toBe(state);
  }
  expect(workshop.fail('change:redo', {})).toEqual({ code: 'nothing-to-redo' });
}

test('undo goes back through every earlier state, and redo forward through the same states', () => {
  let done = 0;
  fc.assert(
    fc.property(
      deedsOf(() => true, 60),
      (deeds) => {
        const workshop = quickWorkshop();
        const states = [dumpOf(workshop)];
        for (const deed of deeds) {
          const before = undoState(workshop.context.store);
          if (doDeed(workshop, deed)) done += 1;
          const after = dumpOf(workshop);
          if (after !== states.at(-1)) states.push(after);
          else expect(undoState(workshop.context.store)).toEqual(before);
        }
        backAndForth(workshop, states);
        // Again: what undo and redo have booked must not get in each other's way.
        backAndForth(workshop, states);
        workshop.context.store.database.close();
      },
    ),
    { numRuns: RUNS, endOnFailure: true },
  );
  expect(done).toBeGreaterThan(RUNS * 20);
}, 120_000);

test('undo, redo and new changes work in any order, and a new change drops what was undone', () => {
  const moves = fc.array(fc.constantFrom('undo', 'redo', 'work', 'work'), { minLength: 60, maxLength: 60 });
  fc.assert(
    fc.property(
      deedsOf(() => true, 60),
      moves,
      (deeds, order) => {
        const workshop = quickWorkshop();
        const states = [dumpOf(workshop)];
        let at = 0;
        const left = [...deeds];
        for (const move of [...left.slice(0, 8).map(() => 'work'), ...order]) {
          if (move === 'work') {
            const deed = left.shift();
            if (deed === undefined) continue;
            doDeed(workshop, deed);
            const after = dumpOf(workshop);
            if (after !== states[at]) states.splice((at += 1), states.length, after);
          } else {
            const moved = workshop.ask(move === 'undo' ? 'change:undo' : 'change:redo', {}).ok;
            const to = move === 'undo' ? at - 1 : at + 1;
            expect(moved).toBe(states[to] !== undefined);
            if (moved) at = to;
          }
          expect(dumpOf(workshop)).toBe(states[at]);
        }
        workshop.context.store.database.close();
      },
    ),
    { numRuns: RUNS, endOnFailure: true },
  );
}, 120_000);
