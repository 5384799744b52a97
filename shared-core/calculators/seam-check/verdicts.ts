import { assertNever } from '#core/assert-never';
import type { SeamCheckInput } from './input';
import type { SeamCheckWork } from './work';

/**
 * plan: nothing was said of the whole. measure: too little is certain. go-on: it fits. The others say what to do about a top or ring that
 * does not.
 */
export type Action = 'plan' | 'measure' | 'go-on' | 'ease' | 'trim' | 'wider-border';

export function actionWords(action: Action, { whole }: SeamCheckWork): string {
  switch (action) {
    case 'plan':
      return 'say what the whole top should measure';
    case 'measure':
      return 'measure more first';
    case 'go-on':
      return 'go on as you are';
    case 'ease':
      return 'ease it into the next border';
    case 'trim':
      return whole?.kind === 'ring' ? 'trim the outer edge' : 'trim the blocks before you join them';
    case 'wider-border':
      return 'make the next border wider';
    default:
      return assertNever(action);
  }
}

/** The worst of what is likely decides what is safe; the middle of it what is to be done. */
export function actionOf({ tolerance }: SeamCheckInput, { whole, top, seam }: SeamCheckWork): Action {
  if (whole === null && seam !== null) return 'plan';
  if (whole === null || top === null) return 'measure';
  const off = top.value - whole.size;
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
