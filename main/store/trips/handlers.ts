import { success } from '#core/result';
import type { Handlers } from '../base/handlers';
import { deleteContact, listContacts, saveContact } from './contacts';
import { addTripEvent, deleteTripEvent, packTrip } from './trip-events';
import { addTrip, changeTrip, deleteTrip, receiveBack, sendOut } from './trips';

export const tripHandlers = {
  'trip:add': ({ store }, input) => addTrip(store, input),
  'trip:send': ({ store }, input) => sendOut(store, input),
  'trip:receive': ({ store }, input) => receiveBack(store, input),
  'trip:change': ({ store }, input) => changeTrip(store, input),
  'trip:delete': ({ store }, input) => deleteTrip(store, input),
  'trip:add-event': ({ store }, input) => addTripEvent(store, input),
  'trip:delete-event': ({ store }, input) => deleteTripEvent(store, input),
  'trip:pack': ({ store }, input) => packTrip(store, input),

  'contact:list': ({ store }) => success(listContacts(store)),
  'contact:save': ({ store }, input) => saveContact(store, input),
  'contact:delete': ({ store }, input) => deleteContact(store, input),
} satisfies Handlers<'trip' | 'contact'>;
