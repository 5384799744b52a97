import type { ChannelInput, ChannelOutput, StoreChannelName } from '#core/contract/channels';
import type { Problem } from '#core/contract/problem';
import type { FabricOfProject } from '#core/contract/stash';
import { type Result, success } from '#core/result';
import { listBackups, makeBackup } from '#main/files/backups';
import type { StoreContext } from './store-context';
import { keepCalculation, listCalculations, removeCalculation } from '../projects/calculations';
import { goToChange, listChanges, redoChange, undoChange, undoState } from '../history/changes';
import { addChecklistItem, removeChecklistItem, tickChecklistItem } from '../projects/checklists';
import { fabricOfProject } from '../fabric-use/fabric-of-project';
import { keepContact, listContacts, removeContact } from '../trips/contacts';
import { keepCuttingPlan, openCuttingPlan, removeCuttingPlan } from '../cutting/cutting-plans';
import { buyForPlan } from '../cutting/cutting-purchases';
import { tickCut, untickCut } from '../cutting/cutting-ticks';
import { daysToRemember } from '../dates/days-to-remember';
import { mendDates, moveDays, plannedDates } from '../dates/dates';
import { setFabricPrice } from '../stash/price-history';
import { fabricGroups } from '../stash/fabric-groups';
import { changeFabric, createFabric, deleteFabric, listFabrics, openFabric } from '../stash/fabrics';
import { buyFabric, countFabric, discardFabric, releaseFabric, setAsideFabric } from '../fabric-use/ledger';
import { cutFabric } from '../fabric-use/cut';
import { takeBack } from '../fabric-use/undo-booking';
import { addPhoto, removePhoto, setFabricPhoto } from '../projects/photos';
import { isEmptyNotebook, listProjects, openProject } from '../projects/project-glances';
import {
  archiveProject,
  changeProject,
  createProject,
  deleteProject,
  duplicateProject,
} from '../projects/projects';
import { piecesWithCode } from '../stash/piece-codes';
import { setPiecePrint } from '../stash/print-directions';
import { addPlace, deletePlace, lieInPlace, listPlaces, movePlace, renamePlace } from '../stash/places';
import { restoreBackup } from './restore';
import { insightOfStash } from '../stash/stash-numbers';
import { deleteSearch, listSearches, renameSearch, saveSearch } from '../stash/saved-searches';
import { chooseForNeed, keepShoppingLine, listShopping, removeShoppingLine } from '../shopping/shopping';
import { buyFromList } from '../shopping/buy';
import { fitsOfNeed, setAsideForNeed } from '../shopping/fits';
import { bringTableIn, previewTable } from '../import-export/stash-import';
import { standAt } from '../projects/move-to-stage';
import { followPlan, foreseePlan } from '../projects/follow-plan';
import { moveStage } from '../projects/stage-moves';
import { estimatesOfProject } from '../projects/stage-estimates';
import { deleteStagePlan, keepStagePlan, listStagePlans } from '../projects/stage-plans';
import { deleteStashKind, keepStashKind, listStashKinds } from '../stash/stash-kinds';
import {
  addStage,
  changeStage,
  reckonStage,
  removeStage,
  reorderStage,
  repeatStage,
  setUpStage,
} from '../projects/stages';
import { packTrip, tellTrip, untellTrip } from '../trips/trip-events';
import { addTrip, changeTrip, receiveBack, removeTrip, sendOut } from '../trips/trips';
import { addWork, changeWork, removeWork, startClock, stopClock } from '../projects/work';
import { countedWork, runningClock, workOfStage } from '../workshop/work-rows';
import { changeWorkshop, readWorkshop } from '../workshop/workshop';
import { settingsInUse } from '../workshop/settings-in-use';

export type StoreHandlers = {
  readonly [Name in StoreChannelName]: (
    context: StoreContext,
    input: ChannelInput<Name>,
  ) => Result<ChannelOutput<Name>, Problem>;
};

/** The one answer to each call of the contract; inputs have been checked. */
export const storeHandlers: StoreHandlers = {
  'project:list': ({ store }, input) => success(listProjects(store, input)),
  'project:open': ({ store }, input) => openProject(store, input),
  'project:create': ({ store }, input) => createProject(store, input),
  'project:change': ({ store }, input) => changeProject(store, input),
  'project:duplicate': ({ store }, input) => duplicateProject(store, input),
  'project:archive': ({ store }, input) => archiveProject(store, input),
  'project:stand-at': ({ store }, input) => standAt(store, input),
  'project:foresee-plan': ({ store }, input) => foreseePlan(store, input),
  'project:follow-plan': ({ store }, input) => followPlan(store, input),
  'project:delete': ({ store }, input) => deleteProject(store, input),

  'stage:move': ({ store }, input) => moveStage(store, input),
  'stage:change': ({ store }, input) => changeStage(store, input),
  'stage:reckon': ({ store }, input) => reckonStage(store, input),
  'stage:estimates': ({ store }, input) => estimatesOfProject(store, input),
  'stage:add': ({ store }, input) => addStage(store, input),
  'stage:repeat': ({ store }, input) => repeatStage(store, input),
  'stage:reorder': ({ store }, input) => reorderStage(store, input),
  'stage:set-up': ({ store }, input) => setUpStage(store, input),
  'stage:remove': ({ store }, input) => removeStage(store, input),

  'checklist:add': ({ store }, input) => addChecklistItem(store, input),
  'checklist:tick': ({ store }, input) => tickChecklistItem(store, input),
  'checklist:remove': ({ store }, input) => removeChecklistItem(store, input),

  'photo:add': ({ store, folders }, input) => addPhoto(store, folders.photos, input),
  'photo:remove': ({ store }, input) => removePhoto(store, input),

  'trip:add': ({ store }, input) => addTrip(store, input),
  'trip:send': ({ store }, input) => sendOut(store, input),
  'trip:receive': ({ store }, input) => receiveBack(store, input),
  'trip:change': ({ store }, input) => changeTrip(store, input),
  'trip:remove': ({ store }, input) => removeTrip(store, input),
  'trip:tell': ({ store }, input) => tellTrip(store, input),
  'trip:untell': ({ store }, input) => untellTrip(store, input),
  'trip:pack': ({ store }, input) => packTrip(store, input),

  'clock:state': ({ store }) => success(runningClock(store)),
  'clock:start': ({ store }, input) => startClock(store, input),
  'clock:stop': ({ store }, input) => stopClock(store, input),
  'work:of-stage': ({ store }, input) => success(workOfStage(store, input.stageId)),
  'work:counted': ({ store }) => success(countedWork(store)),
  'work:add': ({ store }, input) => addWork(store, input),
  'work:change': ({ store }, input) => changeWork(store, input),
  'work:remove': ({ store }, input) => removeWork(store, input),

  'contact:list': ({ store }) => success(listContacts(store)),
  'contact:keep': ({ store }, input) => keepContact(store, input),
  'contact:remove': ({ store }, input) => removeContact(store, input),

  'stage-plan:list': ({ store }) => success(listStagePlans(store)),
  'stage-plan:keep': ({ store }, input) => keepStagePlan(store, input),
  'stage-plan:delete': ({ store }, input) => deleteStagePlan(store, input),

  'calculation:list': ({ store }, input) => success(listCalculations(store, input)),
  'calculation:keep': ({ store }, input) => keepCalculation(store, input),
  'calculation:remove': ({ store }, input) => removeCalculation(store, input),

  'fabric:list': ({ store }, input) => success(listFabrics(store, input)),
  'fabric:groups': ({ store }, input) => success(fabricGroups(store, input)),
  'fabric:open': ({ store }, input) => openFabric(store, input),
  'fabric:create': ({ store }, input) => createFabric(store, input),
  'fabric:change': ({ store }, input) => changeFabric(store, input),
  'fabric:delete': ({ store }, input) => deleteFabric(store, input),
  'fabric:set-price': ({ store }, input) => setFabricPrice(store, input),
  'fabric:set-photo': ({ store, folders }, input) => setFabricPhoto(store, folders.photos, input),

  'ledger:buy': ({ store }, input) => buyFabric(store, input),
  'ledger:set-aside': ({ store }, input) => setAsideFabric(store, input),
  'ledger:release': ({ store }, input) => releaseFabric(store, input),
  'ledger:cut': ({ store }, input) => cutFabric(store, input),
  'ledger:discard': ({ store }, input) => discardFabric(store, input),
  'ledger:count': ({ store }, input) => countFabric(store, input),
  'ledger:take-back': ({ store }, input) => takeBack(store, input),
  'ledger:of-project': ({ store }, input): Result<FabricOfProject, Problem> => fabricOfProject(store, input),

  'search:list': ({ store }) => success(listSearches(store)),
  'search:save': ({ store }, input) => saveSearch(store, input),
  'search:rename': ({ store }, input) => renameSearch(store, input),
  'search:delete': ({ store }, input) => deleteSearch(store, input),
  'stash:insight': ({ store }) => success(insightOfStash(store)),
  'shopping:list': ({ store }) => success(listShopping(store)),
  'shopping:choose': ({ store }, input) => chooseForNeed(store, input),
  'shopping:fits': ({ store }, input) => fitsOfNeed(store, input),
  'shopping:set-aside': ({ store }, input) => setAsideForNeed(store, input),
  'shopping:keep': ({ store }, input) => keepShoppingLine(store, input),
  'shopping:remove': ({ store }, input) => removeShoppingLine(store, input),
  'shopping:buy': ({ store }, input) => buyFromList(store, input),
  'table:read': (context, input) => previewTable(context, input),
  'table:bring-in': (context, input) => bringTableIn(context, input),
  'cutting:open': ({ store }, input) => openCuttingPlan(store, input),
  'cutting:keep': ({ store }, input) => keepCuttingPlan(store, input),
  'cutting:buy': ({ store }, input) => buyForPlan(store, input),
  'cutting:remove': ({ store }, input) => removeCuttingPlan(store, input),
  'cutting:tick': ({ store }, input) => tickCut(store, input),
  'cutting:untick': ({ store }, input) => untickCut(store, input),
  'place:list': ({ store }) => success(listPlaces(store)),
  'place:add': ({ store }, input) => addPlace(store, input),
  'place:rename': ({ store }, input) => renamePlace(store, input),
  'place:move': ({ store }, input) => movePlace(store, input),
  'place:delete': ({ store }, input) => deletePlace(store, input),
  'piece:lie': ({ store }, input) => lieInPlace(store, input),
  'piece:find': ({ store }, input) => success(piecesWithCode(store, input)),
  'piece:set-print': ({ store }, input) => setPiecePrint(store, input),
  'kind:list': ({ store }) => success(listStashKinds(store)),
  'kind:keep': ({ store }, input) => keepStashKind(store, input),
  'kind:delete': ({ store }, input) => deleteStashKind(store, input),
  'dates:plan': ({ store }, input) => success(plannedDates(store, input)),
  'dates:mend': ({ store }, input) => success(mendDates(store, input)),
  'dates:remember': ({ store }, input) => success(daysToRemember(store, input)),
  'dates:move': ({ store }, input) => moveDays(store, input),

  'workshop:opening': ({ store, programVersion, isDemo, folders }) =>
    success({
      workshop: readWorkshop(store),
      settingsInUse: settingsInUse(store),
      isEmpty: isEmptyNotebook(store),
      isDemo,
      programVersion,
      file: folders.file,
    }),
  'workshop:change': ({ store }, input) => changeWorkshop(store, input),
  'change:state': ({ store }) => success(undoState(store)),
  'change:list': ({ store }) => success(listChanges(store)),
  'change:go-to': ({ store }, input) => goToChange(store, input.changeId),
  'change:undo': ({ store }, input) => undoChange(store, input.changeId),
  'change:redo': ({ store }) => redoChange(store),
  'backup:list': ({ folders }) => success(listBackups(folders.backups)),
  'backup:make': ({ store, folders }) =>
    success(makeBackup(store.database, folders.backups, 'by-hand', store.surroundings.now())),
  'backup:restore': (context, input) => restoreBackup(context, input.name),
};
