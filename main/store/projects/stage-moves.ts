import type { ChannelInput } from '#core/contract/channels';
import type { Problem } from '#core/contract/problem';
import type { Changed } from '#core/contract/projects';
import type { StageId } from '#core/domain/ids';
import { isCutSettled } from '#core/domain/project-facts';
import { openGateItems, type Stage, type StageState } from '#core/domain/stage';
import { stageKindRecord } from '#core/domain/stage-kinds';
import { failure, type Result, success } from '#core/result';
import { recordChange } from '../history/changes';
import { insertRow, type ReadableStore, updateRow, type WritableStore } from '../base/handles';
import { findStage, notFound } from '../base/lookups';
import { unsettledFactsOf } from './project-facts';
import { touchProject } from './project-rows';
import { stagesByProject } from './stage-rows';

const WORDS: Readonly<Record<StageState, (stageName: string) => string>> = {
  planned: (stageName) => `Set “${stageName}” back to planned`,
  'in-hand': (stageName) => `Started “${stageName}”`,
  out: (stageName) => `Sent out “${stageName}”`,
  done: (stageName) => `Finished “${stageName}”`,
  skipped: (stageName) => `Skipped “${stageName}”`,
};

/** A move that is allowed: its gate has no open lines, or the maker gave a reason to pass it. */
export interface AllowedMove {
  readonly stage: Stage;
  readonly to: StageState;
  readonly why: string;
}

/** Moves a stage to another state. A gate with open lines refuses it unless the maker gives a reason. */
export function moveStage(
  store: ReadableStore,
  { stageId, to, passGateWhy = '' }: ChannelInput<'stage:move'>,
): Result<Changed, Problem> {
  const move = allowMove(store, stageId, to, passGateWhy);
  if (!move.ok) return move;
  return recordChange(store, moveWords(move.value), (writable) => {
    makeMove(writable, move.value);
    return success({});
  });
}

export function allowMove(
  store: ReadableStore,
  stageId: StageId,
  to: StageState,
  passGateWhy = '',
): Result<AllowedMove, Problem> {
  const found = findStage(store, stageId);
  if (!found.ok) return found;
  const stages = stagesByProject(store, [found.value.projectId]).get(found.value.projectId) ?? [];
  const stage = stages.find((one) => one.id === stageId);
  if (stage === undefined) return notFound('stage');
  const open = goesThroughGate(stage, to) ? openGateItems(stage, stages) : [];
  if (open.length > 0 && passGateWhy === '') {
    return failure<Problem>({ code: 'gate-closed', open: open.map(({ text }) => text) });
  }
  if (startsCut(stage, to)) {
    const unsettled = unsettledFactsOf(store, stage);
    if (!unsettled.ok) return unsettled;
    if (!isCutSettled(unsettled.value)) return failure<Problem>({ code: 'cut-unsettled' });
  }
  return success({ stage, to, why: open.length > 0 ? passGateWhy : '' });
}

/** The words for the history, such as `Sent out “Quilting”`. */
export function moveWords({ stage, to }: AllowedMove): string {
  return WORDS[to](stage.name);
}

export function makeMove(store: WritableStore, { stage, to, why }: AllowedMove): void {
  if (stage.state !== to) changeState(store, stage, to, why);
}

function goesThroughGate(stage: Stage, to: StageState): boolean {
  return stage.state !== to && (to === 'in-hand' || to === 'out' || to === 'done');
}

/** No reason opens the way to a cut while the notebook has two sizes for it. */
function startsCut(stage: Stage, to: StageState): boolean {
  return stageKindRecord(stage.kind).isIrreversible && stage.startedAt === null && goesThroughGate(stage, to);
}

function changeState(store: WritableStore, stage: Stage, to: StageState, why: string): void {
  const now = store.clockAndIds.now();
  const isStarted = to === 'in-hand' || to === 'out' || to === 'done';
  updateRow(store, 'stage', stage.id, {
    state: to,
    started_at: isStarted ? (stage.startedAt ?? now) : null,
    finished_at: to === 'done' ? now : null,
    gate_passed_why: isStarted ? why || stage.gatePassedWhy : '',
  });
  insertRow(store, 'stage_event', {
    id: store.clockAndIds.newId(),
    project_id: stage.projectId,
    stage_id: stage.id,
    stage_name: stage.name,
    from_state: stage.state,
    to_state: to,
    why,
    at: now,
  });
  touchProject(store, stage.projectId);
}
