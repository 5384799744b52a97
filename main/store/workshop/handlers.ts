import { success } from '#core/result';
import type { Handlers } from '../base/handlers';
import { type OpeningContext, readOpening } from './opening';
import { savedSeamChecks } from './seam-checks';
import { changeWorkshop } from './workshop';

export const workshopHandlers = {
  'workshop:opening': (context) => success(readOpening(context)),
  'workshop:seam-checks': ({ store }) => success(savedSeamChecks(store)),
  'workshop:change': ({ store }, input) => changeWorkshop(store, input),
} satisfies Handlers<'workshop', OpeningContext>;
