import type { LoadStep } from './workshop-load';

/** The steps of one stage, as places in the list of all steps. */
type Member = readonly number[];

/**
 * Stages that may be worked on side by side. All may begin when the group before is over, and the group is over when the
 * last of them is.
 */
export type Group = readonly Member[];

/** The steps in groups, in order. Where nothing runs side by side, each step is a group of its own. */
export function groupsOf(steps: readonly LoadStep[]): readonly Group[] {
  const groups: number[][][] = [];
  steps.forEach((step, place) => {
    const last = groups.at(-1);
    const isOfMember = isInSideBySide(steps, place) && steps[place - 1]?.id === step.id;
    if (last === undefined || !(step.isBeside === true || isOfMember)) groups.push([[place]]);
    else if (isOfMember) last.at(-1)?.push(place);
    else last.push([place]);
  });
  return groups;
}

/** Whether the stage of this step runs side by side with another: it has the flag itself, or the next stage has it. */
function isInSideBySide(steps: readonly LoadStep[], place: number): boolean {
  const { id } = steps[place]!;
  if (steps.some((step) => step.id === id && step.isBeside === true)) return true;
  const after = steps.slice(place).find((step) => step.id !== id);
  return after?.isBeside === true;
}
