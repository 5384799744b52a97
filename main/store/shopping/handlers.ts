import { success } from '#core/result';
import type { Handlers } from '../base/handlers';
import { buyFromList } from './buy';
import { fitsOfNeed, setAsideForNeed } from './fits';
import { chooseForNeed, deleteShoppingLine, listShopping, saveShoppingLine } from './shopping';

export const shoppingHandlers = {
  'shopping:list': ({ store }) => success(listShopping(store)),
  'shopping:choose': ({ store }, input) => chooseForNeed(store, input),
  'shopping:fits': ({ store }, input) => fitsOfNeed(store, input),
  'shopping:set-aside': ({ store }, input) => setAsideForNeed(store, input),
  'shopping:save-line': ({ store }, input) => saveShoppingLine(store, input),
  'shopping:delete-line': ({ store }, input) => deleteShoppingLine(store, input),
  'shopping:buy': ({ store }, input) => buyFromList(store, input),
} satisfies Handlers<'shopping'>;
