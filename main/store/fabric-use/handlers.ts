import type { Handlers } from '../base/handlers';
import { cutFabric } from './cut';
import { fabricOfProject } from './fabric-of-project';
import { buyFabric, countFabric, discardFabric, releaseFabric, setAsideFabric } from './ledger';
import { undoBooking } from './undo-booking';

export const ledgerHandlers = {
  'ledger:buy': ({ store }, input) => buyFabric(store, input),
  'ledger:set-aside': ({ store }, input) => setAsideFabric(store, input),
  'ledger:release': ({ store }, input) => releaseFabric(store, input),
  'ledger:cut': ({ store }, input) => cutFabric(store, input),
  'ledger:discard': ({ store }, input) => discardFabric(store, input),
  'ledger:count': ({ store }, input) => countFabric(store, input),
  'ledger:undo': ({ store }, input) => undoBooking(store, input),
  'ledger:of-project': ({ store }, input) => fabricOfProject(store, input),
} satisfies Handlers<'ledger'>;
