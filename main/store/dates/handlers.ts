import { success } from '#core/result';
import type { Handlers } from '../base/handlers';
import { dateChances, moveDays, plannedDates, suggestDateFixes } from './dates';
import { daysToRemember } from './days-to-remember';
import { tryProject } from './try-project';

export const dateHandlers = {
  'dates:plan': ({ store }, input) => success(plannedDates(store, input)),
  'dates:chances': ({ store }, input) => success(dateChances(store, input)),
  'dates:suggest-fixes': ({ store }, input) => success(suggestDateFixes(store, input)),
  'dates:try-project': ({ store }, input) => tryProject(store, input),
  'dates:days-to-remember': ({ store }, input) => success(daysToRemember(store, input)),
  'dates:move': ({ store }, input) => moveDays(store, input),
} satisfies Handlers<'dates'>;
