import { bestOrder } from './best-order';
import { mergedChainsOf } from './chains';
import { makeWorkCalendar } from './work-calendar';
import type { WorkshopLoad } from './workshop-load';

/** Whether a quick plan finishes everything in time. Yes is certain; after no, a better plan may still exist. */
export function isInTime(load: WorkshopLoad): boolean {
  const calendar = makeWorkCalendar(load.today, load.hands);
  return bestOrder(mergedChainsOf(load, calendar), calendar, 'quick').cost.largest <= 0;
}
