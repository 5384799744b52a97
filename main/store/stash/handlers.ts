import { success } from '#core/result';
import type { WorkshopFolders } from '#main/files/workshop-folders';
import type { Handlers, StoreHolder } from '../base/handlers';
import { setFabricPhoto } from '../projects/photos';
import { fabricGroups } from './fabric-groups';
import { changeFabric, createFabric, deleteFabric, listFabrics, openFabric } from './fabrics';
import { piecesWithCode } from './piece-codes';
import { addPlace, deletePlace, listPlaces, movePiece, movePlace, renamePlace } from './places';
import { setFabricPrice } from './own-price';
import { changePrintDirection } from './print-directions';
import { deleteSearch, listSearches, renameSearch, saveSearch } from './saved-searches';
import { deleteStashKind, listStashKinds, saveStashKind } from './stash-kinds';
import { stashNumbers } from './stash-numbers';

interface PhotoContext extends StoreHolder {
  readonly folders: WorkshopFolders;
}

export const stashHandlers = {
  'fabric:list': ({ store }, input) => success(listFabrics(store, input)),
  'fabric:groups': ({ store }, input) => success(fabricGroups(store, input)),
  'fabric:open': ({ store }, input) => openFabric(store, input),
  'fabric:create': ({ store }, input) => createFabric(store, input),
  'fabric:change': ({ store }, input) => changeFabric(store, input),
  'fabric:delete': ({ store }, input) => deleteFabric(store, input),
  'fabric:set-price': ({ store }, input) => setFabricPrice(store, input),
  'fabric:set-photo': ({ store, folders }, input) => setFabricPhoto(store, folders.photos, input),

  'search:list': ({ store }) => success(listSearches(store)),
  'search:save': ({ store }, input) => saveSearch(store, input),
  'search:rename': ({ store }, input) => renameSearch(store, input),
  'search:delete': ({ store }, input) => deleteSearch(store, input),

  'stash:numbers': ({ store }) => success(stashNumbers(store)),

  'place:list': ({ store }) => success(listPlaces(store)),
  'place:add': ({ store }, input) => addPlace(store, input),
  'place:rename': ({ store }, input) => renamePlace(store, input),
  'place:move': ({ store }, input) => movePlace(store, input),
  'place:delete': ({ store }, input) => deletePlace(store, input),

  'piece:store-in': ({ store }, input) => movePiece(store, input),
  'piece:find': ({ store }, input) => success(piecesWithCode(store, input)),
  'piece:set-print': ({ store }, input) => changePrintDirection(store, input),

  'kind:list': ({ store }) => success(listStashKinds(store)),
  'kind:save': ({ store }, input) => saveStashKind(store, input),
  'kind:delete': ({ store }, input) => deleteStashKind(store, input),
} satisfies Handlers<'fabric' | 'piece' | 'place' | 'kind' | 'search' | 'stash', PhotoContext>;
