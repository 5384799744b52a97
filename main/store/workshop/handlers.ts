import { success } from '#core/result';
import type { Handlers } from '../base/handlers';
import { type OpeningContext, readOpening } from './opening';
import { changeWorkshop } from './workshop';

export const workshopHandlers = {
  'workshop:opening': (context) => success(readOpening(context)),
  'workshop:change': ({ store }, input) => changeWorkshop(store, input),
} satisfies Handlers<'workshop', OpeningContext>;
