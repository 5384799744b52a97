import { success } from '#core/result';
import type { WorkshopFolders } from '#main/files/workshop-folders';
import type { Handlers, StoreHolder } from '../base/handlers';
import { deleteCalculation, listCalculations, saveCalculation } from './calculations';
import { addChecklistItem, deleteChecklistItem, tickChecklistItem } from './checklists';
import { followPlan, previewPlanChange } from './follow-plan';
import { moveProjectToStage } from './move-to-stage';
import { openPattern, savePattern, setPatternFile } from './patterns';
import { addPhoto, deletePhoto } from './photos';
import { listProjects, openProject } from './project-glances';
import { archiveProject, changeProject, createProject, deleteProject, duplicateProject } from './projects';
import { estimatesOfProject } from './stage-estimates';
import { moveStage } from './stage-moves';
import { decideForProject, followProject, unsettledFactsOf } from './project-facts';
import { deleteStagePlan, listStagePlans, saveStagePlan } from './stage-plans';
import {
  addStage,
  changeStage,
  deleteStage,
  reorderStage,
  repeatStage,
  setEstimateSource,
  setUpStage,
} from './stages';
import { addWork, changeWork, deleteWork, startClock, stopClock } from './work';
import { countedWork, runningClock, workOfStage } from '../workshop/work-rows';

interface PhotoContext extends StoreHolder {
  readonly folders: WorkshopFolders;
}

export const projectHandlers = {
  'project:list': ({ store }, input) => success(listProjects(store, input)),
  'project:open': ({ store }, input) => openProject(store, input),
  'project:create': ({ store }, input) => createProject(store, input),
  'project:change': ({ store }, input) => changeProject(store, input),
  'project:unsettled': ({ store }, input) => unsettledFactsOf(store, input),
  'project:decide': ({ store }, input) => decideForProject(store, input),
  'project:duplicate': ({ store }, input) => duplicateProject(store, input),
  'project:archive': ({ store }, input) => archiveProject(store, input),
  'project:move-to-stage': ({ store }, input) => moveProjectToStage(store, input),
  'project:preview-plan-change': ({ store }, input) => previewPlanChange(store, input),
  'project:follow-plan': ({ store }, input) => followPlan(store, input),
  'project:delete': ({ store }, input) => deleteProject(store, input),

  'stage:move': ({ store }, input) => moveStage(store, input),
  'stage:change': ({ store }, input) => changeStage(store, input),
  'stage:set-estimate-source': ({ store }, input) => setEstimateSource(store, input),
  'stage:estimates': ({ store }, input) => estimatesOfProject(store, input),
  'stage:add': ({ store }, input) => addStage(store, input),
  'stage:repeat': ({ store }, input) => repeatStage(store, input),
  'stage:reorder': ({ store }, input) => reorderStage(store, input),
  'stage:set-up': ({ store }, input) => setUpStage(store, input),
  'stage:delete': ({ store }, input) => deleteStage(store, input),

  'checklist:add': ({ store }, input) => addChecklistItem(store, input),
  'checklist:tick': ({ store }, input) => tickChecklistItem(store, input),
  'checklist:delete': ({ store }, input) => deleteChecklistItem(store, input),

  'photo:add': ({ store, folders }, input) => addPhoto(store, folders.photos, input),
  'photo:delete': ({ store }, input) => deletePhoto(store, input),

  'pattern:open': ({ store }, input) => openPattern(store, input),
  'pattern:save': ({ store }, input) => savePattern(store, input),
  'pattern:set-file': ({ store, folders }, input) => setPatternFile(store, folders.photos, input),

  'clock:state': ({ store }) => success(runningClock(store)),
  'clock:start': ({ store }, input) => startClock(store, input),
  'clock:stop': ({ store }, input) => stopClock(store, input),

  'work:of-stage': ({ store }, input) => success(workOfStage(store, input.stageId)),
  'work:counted': ({ store }) => success(countedWork(store)),
  'work:add': ({ store }, input) => addWork(store, input),
  'work:change': ({ store }, input) => changeWork(store, input),
  'work:delete': ({ store }, input) => deleteWork(store, input),

  'stage-plan:list': ({ store }) => success(listStagePlans(store)),
  'stage-plan:save': ({ store }, input) => saveStagePlan(store, input),
  'stage-plan:delete': ({ store }, input) => deleteStagePlan(store, input),

  'calculation:list': ({ store }, input) => success(listCalculations(store, input)),
  'calculation:save': ({ store }, input) => saveCalculation(store, input),
  'calculation:follow-project': ({ store }, input) => followProject(store, input),
  'calculation:delete': ({ store }, input) => deleteCalculation(store, input),
} satisfies Handlers<
  'project' | 'stage' | 'checklist' | 'photo' | 'pattern' | 'stage-plan' | 'calculation' | 'clock' | 'work',
  PhotoContext
>;
