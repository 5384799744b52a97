import { type Group, groupsOf } from './side-by-side';
import type { LoadStep } from './workshop-load';

/** A step of work. */
interface Block {
  readonly step: number;
  readonly minutes: number;
  readonly waitBefore: number;
  readonly waitAfter: number;
}

/** Blocks that may be worked on side by side, and the least number of days they take together. */
export interface BlockGroup {
  readonly blocks: readonly Block[];
  readonly wait: number;
}

export interface ProjectBlocks {
  readonly waitBefore: number;
  readonly groups: readonly BlockGroup[];
}

/** The groups of a project in order. A wait without any work is added to the group before it. */
export function blocksOfSteps(steps: readonly LoadStep[]): ProjectBlocks {
  const groups: BlockGroup[] = [];
  let waitBefore = 0;
  for (const group of groupsOf(steps)) {
    const made = blockGroup(steps, group);
    const last = groups.at(-1);
    if (made.blocks.length > 0) groups.push(made);
    else if (last === undefined) waitBefore += made.wait;
    else groups[groups.length - 1] = withWaitAfter(last, made.wait);
  }
  return { waitBefore, groups };
}

function blockGroup(steps: readonly LoadStep[], group: Group): BlockGroup {
  const blocks: Block[] = [];
  let wait = 0;
  for (const member of group) {
    let [before, after] = [0, 0];
    let block: Block | null = null;
    for (const place of member) {
      const step = steps[place]!;
      if (step.kind === 'work') {
        if (step.minutes > 0)
          block = { step: place, minutes: step.minutes, waitBefore: before, waitAfter: 0 };
      } else if (block === null) before += step.days;
      else after += step.days;
    }
    if (block === null) wait = Math.max(wait, before);
    else blocks.push({ ...block, waitAfter: after });
  }
  return { blocks, wait };
}

function withWaitAfter({ blocks, wait }: BlockGroup, days: number): BlockGroup {
  return {
    blocks: blocks.map((block) => ({ ...block, waitAfter: block.waitAfter + days })),
    wait: wait === 0 ? 0 : wait + days,
  };
}

/** Whether both groups are a single block and there is no wait between them. */
export function isMergedWith(before: BlockGroup | undefined, group: BlockGroup): boolean {
  const [first, ...others] = before?.blocks ?? [];
  const [own, ...besides] = group.blocks;
  if (first === undefined || own === undefined || others.length + besides.length > 0) return false;
  return first.waitAfter === 0 && before?.wait === 0 && group.wait === 0 && own.waitBefore === 0;
}

/** The same groups, with single blocks joined where there is no wait between them. */
export function mergeGroups(groups: readonly BlockGroup[]): readonly BlockGroup[] {
  const merged: BlockGroup[] = [];
  for (const group of groups) {
    const last = merged.at(-1);
    const [before, own] = [last?.blocks[0], group.blocks[0]];
    if (before !== undefined && own !== undefined && isMergedWith(last, group)) {
      const block = { ...own, waitBefore: before.waitBefore, minutes: before.minutes + own.minutes };
      merged[merged.length - 1] = { blocks: [block], wait: 0 };
    } else merged.push(group);
  }
  return merged;
}
