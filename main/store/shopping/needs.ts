import { answersThatCount, needsOfSavedAnswer } from '#core/calculators/saved-answer';
import type { FabricId, ProjectId, StageId } from '#core/domain/ids';
import type { KeptPlan } from '#core/domain/cutting-plan';
import type { Need } from '#core/domain/need';
import type { Length } from '#core/units/length';
import { type FabricNeed, needKey } from '#core/stash/shopping/fabric-need';
import { fabricInPlan, needsOfPlan, sourcesOfPlan } from '#core/stash/shopping/needs-of-plan';
import { plansOfOpenProjects } from '../cutting/cutting-rows';
import { allRows, type ReadableStore, type Row } from '../base/handles';
import { memo } from '../base/memo';
import { groupRows, idOf, jsonOf, numberOf, textOf, textOrNullOf } from '../base/rows';

/** What the open projects need, and the needs that the maker left out. */
interface NeedsOfProjects {
  readonly needs: readonly FabricNeed[];
  readonly leftOut: readonly FabricNeed[];
}

const OPEN = 'project.is_archived = 0 AND project.deleted_at IS NULL';
const TO_DO = `stage.state IN ('planned', 'in-hand')`;
const IN_ORDER = 'ORDER BY project.due_on IS NULL, project.due_on, project.seq';

const ANSWERS = `SELECT project.id AS project_id, project.name AS project_name, stage.id AS stage_id,
    stage.name AS stage_name, calculator, input_json, kept_at
  FROM project JOIN stage ON stage.project_id = project.id JOIN calculation ON calculation.stage_id = stage.id
  WHERE ${OPEN} AND ${TO_DO} ${IN_ORDER}, stage.position, calculation.seq`;

/** What the saved answers and cutting plans of the open projects need, by due day, each with the fabric chosen for it. */
export function needsOfProjects(store: ReadableStore, usualWidth: Length): NeedsOfProjects {
  const openStages = new Set(
    allRows(
      store,
      `SELECT stage.id FROM stage JOIN project ON project.id = project_id WHERE ${OPEN} AND ${TO_DO}`,
    ).map((row) => textOf(row, 'id')),
  );
  const plans = plansOfOpenProjects(store).map(({ plan }) => plan);
  const current = plans.filter((plan) => isToDo(plan, openStages));
  const names = projectNames(store);
  const found = [
    ...needsOfAnswers(allRows(store, ANSWERS), current, usualWidth),
    ...current
      .flatMap((plan) => needsOfPlan(plan))
      .flatMap((need): readonly FabricNeed[] => {
        const projectName = names.get(need.projectId);
        return projectName === undefined ? [] : [{ ...need, projectName, stageId: null, stageName: null }];
      }),
  ];
  const order = [...names.keys()];
  const sorted = found.toSorted(
    (one, other) => order.indexOf(one.projectId) - order.indexOf(other.projectId),
  );
  return withChoices(store, sorted, current);
}

/** A plan still needs fabric while a stage that its lists came from is open. */
function isToDo(plan: KeptPlan, openStages: ReadonlySet<string>): boolean {
  const sources = sourcesOfPlan(plan);
  return sources.length === 0 || sources.some(({ stageId }) => openStages.has(stageId));
}

/** The names of open projects by due day. */
function projectNames(store: ReadableStore): ReadonlyMap<string, string> {
  const rows = allRows(store, `SELECT id, name FROM project WHERE ${OPEN} ${IN_ORDER}`);
  return new Map(rows.map((row) => [textOf(row, 'id'), textOf(row, 'name')]));
}

function needsOfAnswers(
  rows: readonly Row[],
  plans: readonly KeptPlan[],
  usualWidth: Length,
): readonly FabricNeed[] {
  const planned = new Set(
    plans.flatMap(sourcesOfPlan).map(({ stageId, calculator }) => `${stageId}/${calculator}`),
  );
  return [...groupRows(rows, 'stage_id').values()].flatMap((ofStage) => {
    const answers = ofStage.map((row) => ({
      row,
      calculator: textOf(row, 'calculator'),
      savedAt: numberOf(row, 'kept_at'),
    }));
    return answersThatCount(answers).flatMap(({ row, calculator }) => {
      const source = `${textOf(row, 'stage_id')}/${calculator}`;
      if (planned.has(source)) return [];
      return needsOfRow(row, calculator, usualWidth).map((need): FabricNeed => ({
        ...need,
        projectId: idOf<ProjectId>(row, 'project_id'),
        projectName: textOf(row, 'project_name'),
        stageId: idOf<StageId>(row, 'stage_id'),
        stageName: textOf(row, 'stage_name'),
        source,
        fabricId: null,
        ignores: [],
      }));
    });
  });
}

/** The same input asks for the same fabric, and the list is read after every change: each answer is worked out once. */
const rememberedNeeds = memo<readonly Need[]>(1_000);

function needsOfRow(row: Row, calculator: string, usualWidth: Length): readonly Need[] {
  return rememberedNeeds(`${calculator} ${String(usualWidth)} ${textOf(row, 'input_json')}`, () =>
    needsOfSavedAnswer({ calculator, input: jsonOf(row, 'input_json') }, usualWidth),
  );
}

/**
 * Gives each need its fabric: the maker's choice; otherwise the fabric in the cutting plan, a backing or batting that is set aside for the
 * project, or a fabric of that name.
 */
function withChoices(
  store: ReadableStore,
  needs: readonly FabricNeed[],
  plans: readonly KeptPlan[],
): NeedsOfProjects {
  const chosen = new Map(
    allRows(store, 'SELECT * FROM need_choice').map((row) => {
      const need = {
        projectId: idOf<ProjectId>(row, 'project_id'),
        source: textOf(row, 'source'),
        name: textOf(row, 'name'),
      };
      return [needKey(need), { choice: textOf(row, 'choice'), fabricId: textOrNullOf(row, 'fabric_id') }];
    }),
  );
  const held = heldBackings(store);
  const named = fabricsNamed(store, needs);
  const fabricFor = (need: FabricNeed): string | null => {
    const own = chosen.get(needKey(need));
    if (own !== undefined) return own.fabricId;
    if (need.fabricId !== null) return need.fabricId;
    const planned = plans
      .map((plan) => fabricInPlan(plan, need.projectId, need.name))
      .find((id) => id !== null);
    return (
      planned ?? held.get(`${need.projectId} ${layerOf(need)}`) ?? named.get(need.name.toLowerCase()) ?? null
    );
  };
  const isLeftOut = (need: FabricNeed) => chosen.get(needKey(need))?.choice === 'leave-out';
  const all = needs.map((need) => ({ ...need, fabricId: fabricFor(need) as FabricId | null }));
  return {
    needs: all.filter((need) => !isLeftOut(need)),
    leftOut: all.filter(isLeftOut),
  };
}

const BACKING_OR_BATTING = `CASE WHEN kind IN ('backing', 'wide-backing') THEN 'backing'
  WHEN kind IN ('batting', 'batting-package') THEN 'batting' END`;

function layerOf({ kind }: FabricNeed): string {
  if (kind === 'backing' || kind === 'wide-backing') return 'backing';
  return kind === 'batting' || kind === 'batting-package' ? 'batting' : '';
}

/** The backing and the batting that are set aside for each open project. */
function heldBackings(store: ReadableStore): ReadonlyMap<string, string> {
  const sql = `SELECT project.id AS project_id, ${BACKING_OR_BATTING} AS layer, fabric.id AS fabric_id
    FROM project CROSS JOIN piece_hold ON project_seq = project.seq
    JOIN fabric_piece ON fabric_piece.seq = piece_seq JOIN fabric ON fabric.seq = fabric_seq
    WHERE ${OPEN} AND held > 0 AND layer IS NOT NULL ORDER BY piece_seq`;
  return new Map(
    allRows(store, sql).map((row) => [
      `${textOf(row, 'project_id')} ${textOf(row, 'layer')}`,
      textOf(row, 'fabric_id'),
    ]),
  );
}

function fabricsNamed(store: ReadableStore, needs: readonly FabricNeed[]): ReadonlyMap<string, string> {
  const names = JSON.stringify([...new Set(needs.map(({ name }) => name))]);
  const sql = `SELECT id, name FROM fabric WHERE deleted_at IS NULL
    AND name COLLATE NOCASE IN (SELECT value FROM json_each(?)) ORDER BY seq DESC`;
  return new Map(
    allRows(store, sql, names).map((row) => [textOf(row, 'name').toLowerCase(), textOf(row, 'id')]),
  );
}
