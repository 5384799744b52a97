import type { SeamCheckInput } from './input';
import type { SeamCheckWork } from './work';

/** measure: too little is certain. go-on: the top fits. The others say what to do about a top that does not. */
export type Action = 'measure' | 'go-on' | 'ease' | 'trim' | 'wider-border';

export const ACTION_WORDS: Readonly<Record<Action, string>> = {
  measure: 'measure more first',
  'go-on': 'go on as you are',
  ease: 'ease it into the next border',
  trim: 'trim the blocks before you join them',
  'wider-border': 'make the next border wider',
};

/** The worst of what is likely decides what is safe; the middle of it what is to be done. */
export function actionOf({ top: { size }, tolerance }: SeamCheckInput, { top }: SeamCheckWork): Action {
  if (top === null) return 'measure';
  const off = top.value - size;
  if (Math.abs(off) + top.within <= tolerance) return 'go-on';
  if (Math.abs(off) <= top.within) return 'measure';
  if (Math.abs(off) <= tolerance) return 'ease';
  return off > 0 ? 'trim' : 'wider-border';
}

/** Whether an error is the same from the first measurement to the last. */
export function courseWords({ growth }: SeamCheckWork): string {
  if (growth === null) return 'not known yet';
  if (Math.abs(growth.value) <= growth.within) return 'even, as far as can be told';
  return growth.value > 0 ? 'the seams take more and more' : 'the seams take less and less';
}

export function ringWords({ ring }: SeamCheckWork): string {
  if (ring === null) return 'not known yet';
  if (Math.abs(ring.lacks) <= ring.within) return 'flat, as far as can be told';
  return ring.lacks > 0 ? 'it will cup: the middle rises' : 'it will ruffle at the outer edge';
}
