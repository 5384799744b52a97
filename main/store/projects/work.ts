import type { ChannelInput, ChannelOutput } from '#core/contract/channels';
import type { Problem } from '#core/contract/problem';
import type { Changed } from '#core/contract/projects';
import { clockMinutes, roundedMinutes, type WorkDetails, type WorkDone } from '#core/domain/clock';
import type { WorkId } from '#core/domain/ids';
import { formatMinutes } from '#core/units/minutes';
import { type Result, success } from '#core/result';
import { recordChange } from '../history/changes';
import {
  insertRow,
  oneRow,
  type ReadableStore,
  updateRow,
  type Value,
  type WritableStore,
  write,
} from '../base/handles';
import { findStage, notFound } from '../base/lookups';
import { touchProject } from './project-rows';
import { numberOf, textOf } from '../base/rows';
import { allowMove, makeMove } from './stage-moves';
import { runningClock } from '../workshop/work-rows';
import { readWorkshop } from '../workshop/workshop';

export function startClock(
  store: ReadableStore,
  { stageId }: ChannelInput<'clock:start'>,
): Result<ChannelOutput<'clock:start'>, Problem> {
  const found = findStage(store, stageId);
  if (!found.ok) return found;
  const start = allowMove(store, stageId, 'in-hand');
  const state = textOf(oneRow(store, 'SELECT state FROM stage WHERE id = ?', stageId) ?? {}, 'state');
  if (state === 'planned' && !start.ok) return start;
  return recordChange(store, `Started the clock on “${found.value.name}”`, (writable) => {
    stopRunningClock(writable);
    if (state === 'planned' && start.ok) makeMove(writable, start.value);
    const { newId, now, today } = store.clockAndIds;
    const workId = newId() as WorkId;
    insertRow(writable, 'work', {
      id: workId,
      stage_id: stageId,
      on_day: today(),
      started_at: now(),
      note: '',
    });
    touchProject(writable, found.value.projectId);
    return success({ workId });
  });
}

export function stopClock(
  store: ReadableStore,
  { minutes, done, note }: ChannelInput<'clock:stop'>,
): Result<Changed, Problem> {
  const running = runningClock(store);
  if (running === null) return notFound('running-clock');
  const logged = minutes ?? minutesRun(store, running.startedAt);
  return recordChange(store, `Logged ${formatMinutes(logged)} on “${running.stageName}”`, (writable) => {
    updateRow(writable, 'work', running.id, { minutes: logged, note, ...doneColumns(done) });
    touchProject(writable, running.projectId);
    return success({});
  });
}

export function addWork(
  store: ReadableStore,
  { stageId, details }: ChannelInput<'work:add'>,
): Result<ChannelOutput<'work:add'>, Problem> {
  const stage = findStage(store, stageId);
  if (!stage.ok) return stage;
  const words = `Logged ${formatMinutes(details.minutes)} on “${stage.value.name}”`;
  return recordChange(store, words, (writable) => {
    const workId = store.clockAndIds.newId() as WorkId;
    insertRow(writable, 'work', { id: workId, stage_id: stageId, started_at: null, ...columnsOf(details) });
    touchProject(writable, stage.value.projectId);
    return success({ workId });
  });
}

export function changeWork(
  store: ReadableStore,
  { workId, details }: ChannelInput<'work:change'>,
): Result<Changed, Problem> {
  const work = findWork(store, workId);
  if (work === undefined || work.isRunning) return notFound('work');
  return recordChange(store, `Changed time logged on “${work.stageName}”`, (writable) => {
    updateRow(writable, 'work', workId, columnsOf(details));
    touchProject(writable, work.projectId);
    return success({});
  });
}

export function deleteWork(
  store: ReadableStore,
  { workId }: ChannelInput<'work:delete'>,
): Result<Changed, Problem> {
  const work = findWork(store, workId);
  if (work === undefined) return notFound('work');
  const words = work.isRunning ? 'Deleted the running time on' : 'Deleted time logged on';
  return recordChange(store, `${words} “${work.stageName}”`, (writable) => {
    write(writable, 'DELETE FROM work WHERE id = ?', workId);
    touchProject(writable, work.projectId);
    return success({});
  });
}

/** Stops the running clock with the time it ran, even when its project is deleted. */
function stopRunningClock(store: WritableStore): void {
  const row = oneRow(store, 'SELECT id, started_at FROM work WHERE minutes IS NULL');
  if (row === undefined) return;
  updateRow(store, 'work', textOf(row, 'id'), { minutes: minutesRun(store, numberOf(row, 'started_at')) });
}

function minutesRun(store: ReadableStore, startedAt: number): number {
  const step = readWorkshop(store).settings.clockStepMinutes;
  return roundedMinutes(clockMinutes(startedAt, store.clockAndIds.now()), step);
}

interface FoundWork {
  readonly stageName: string;
  readonly projectId: string;
  readonly isRunning: boolean;
}

function findWork(store: ReadableStore, id: string): FoundWork | undefined {
  const sql =
    'SELECT minutes, name, project_id FROM work JOIN stage ON stage.id = stage_id WHERE work.id = ?';
  const row = oneRow(store, sql, id);
  if (row === undefined) return undefined;
  return {
    stageName: textOf(row, 'name'),
    projectId: textOf(row, 'project_id'),
    isRunning: row['minutes'] === null,
  };
}

function columnsOf({ on, minutes, done, note }: WorkDetails): Readonly<Record<string, Value>> {
  return { on_day: on, minutes, note, ...doneColumns(done) };
}

function doneColumns(done: WorkDone | null): Readonly<Record<string, Value>> {
  return { done_what: done?.what ?? null, done_amount: done?.amount ?? null };
}
