import type { Handlers } from '../base/handlers';
import { deleteCuttingPlan, openCuttingPlan, saveCuttingPlan } from './cutting-plans';
import { buyForPlan } from './cutting-purchases';
import { tickCut, untickCut } from './cutting-ticks';

export const cuttingHandlers = {
  'cutting:open': ({ store }, input) => openCuttingPlan(store, input),
  'cutting:save': ({ store }, input) => saveCuttingPlan(store, input),
  'cutting:buy': ({ store }, input) => buyForPlan(store, input),
  'cutting:delete': ({ store }, input) => deleteCuttingPlan(store, input),
  'cutting:tick': ({ store }, input) => tickCut(store, input),
  'cutting:untick': ({ store }, input) => untickCut(store, input),
} satisfies Handlers<'cutting'>;
