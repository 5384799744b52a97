import fc from 'fast-check';
import type { ChannelInput, StoreChannelName } from '#core/contract/channels';
import type { Deed } from './random-work-deed';
import { steps, type UnvalidatedStep } from './random-work-steps';
import type { TestWorkshop } from './workshop';

const any = fc.integer({ min: 0, max: 999_999 });

/** Deeds in any order; `only` says which channels they may use. */
export function deedsOf(
  only: (name: StoreChannelName) => boolean,
  length: number,
): fc.Arbitrary<readonly Deed[]> {
  const open = steps.flatMap(({ name }, index) => (only(name) ? [index] : []));
  const deed = fc.record({ step: fc.constantFrom(...open), pick: fc.tuple(any, any, any), amount: any });
  const later = fc.array(deed, { minLength: Math.floor(length / 2), maxLength: length });
  return later.map((deeds) => [...firstDeeds(), ...deeds]);
}

/** Two projects, two fabrics and pieces of both, so that deeds have something to work on. */
function firstDeeds(): readonly Deed[] {
  const names: readonly StoreChannelName[] = ['project:create', 'fabric:create', 'ledger:buy', 'ledger:buy'];
  return names.flatMap((name, at) =>
    [0, 1].map((pick): Deed => {
      const step = steps.findIndex((one) => one.name === name);
      return { step, pick: [pick, 0, 7], amount: 1_234 + 999 * at + pick };
    }),
  );
}

/** Does a deed if it has a record to work on; returns whether it was done. A refusal is a normal answer. */
export function doDeed(workshop: TestWorkshop, deed: Deed): boolean {
  const step: UnvalidatedStep | undefined = steps[deed.step];
  const input = step?.input(workshop, deed);
  if (step === undefined || input === null) return false;
  const answer = workshop.ask(step.name, input as ChannelInput<StoreChannelName>);
  if (!answer.ok && answer.error.code === 'unexpected') {
    throw new Error(`${step.name}: ${answer.error.detail}`);
  }
  return answer.ok;
}
