import type { FabricId, ProjectId, StageId } from '#core/domain/ids';
import type { KeptPlan } from '#core/domain/cutting-plan';
import type { Length } from '#core/units/length';
import { type FabricNeed, needKey } from '#core/stash/shopping/fabric-need';
import { answersThatCount, needsOfAnswer } from '#core/stash/shopping/needs-of-answer';
import { fabricInPlan, needsOfPlan, sourcesOfPlan } from '#core/stash/shopping/needs-of-plan';
import { plansOfOpenProjects } from '../cutting/cutting-rows';
import { allRows, type ReadableStore, type Row } from '../base/handles';
import { groupRows, idOf, jsonOf, numberOf, textOf, textOrNullOf } from '../base/rows';

/** What the open projects need, and what of it the maker said no to. */
export interface NeedsOfProjects {
  readonly needs: readonly FabricNeed[];
  readonly leftOut: readonly FabricNeed[];
}

const OPEN = 'project.is_archived = 0 AND project.deleted_at IS NULL';
const TO_DO = `stage.state IN ('planned', 'in-hand')`;
const IN_ORDER = 'ORDER BY project.due_on IS NULL, project.due_on, project.seq';

const ANSWERS = `SELECT project.id AS project_id, project.name AS project_name, stage.id AS stage_id,
    stage.name AS stage_name, calculator, input_json, json_extract(answer_json, '$.details') AS details_json, kept_at
  FROM project JOIN stage ON stage.project_id = project.id JOIN calculation ON calculation.stage_id = stage.id
  WHERE ${OPEN} AND ${TO_DO} ${IN_ORDER}, stage.position, calculation.seq`;

/** What the kept answers and cutting plans of the open projects ask for, by due day, each with the fabric taken for it. */
export function needsOfProjects(store: ReadableStore, usualWidth: Length): NeedsOfProjects {
  const openStages = new Set(
    allRows(
      store,
      `SELECT stage.id FROM stage JOIN project ON project.id = project_id WHERE ${OPEN} AND ${TO_DO}`,
    ).map((row) => textOf(row, 'id')),
  );
  const plans = plansOfOpenProjects(store).map(({ plan }) => plan);
  const standing = plans.filter((plan) => isToDo(plan, openStages));
  const names = projectNames(store);
  const found = [
    ...needsOfAnswers(allRows(store, ANSWERS), standing, usualWidth),
    ...standing
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
  return withChoices(store, sorted, standing);
}

/** A plan is done with when every stage it took its lists from is. */
function isToDo(plan: KeptPlan, openStages: ReadonlySet<string>): boolean {
  const sources = sourcesOfPlan(plan);
  return sources.length === 0 || sources.some(({ stageId }) => openStages.has(stageId));
}

/** Open projects by due day. */
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
      keptAt: numberOf(row, 'kept_at'),
    }));
    return answersThatCount(answers).flatMap(({ row, calculator, keptAt }) => {
      const source = `${textOf(row, 'stage_id')}/${calculator}`;
      if (planned.has(source)) return [];
      const [input, details] = [jsonOf(row, 'input_json'), jsonOf(row, 'details_json')];
      return needsOfAnswer({ calculator, input, details, keptAt }, usualWidth).map((need): FabricNeed => ({
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

/** What the maker chose; else what her cutting plan takes, a backing or batting set aside for the project, or a fabric of that name. */
function withChoices(
  store: ReadableStore,
  needs: readonly FabricNeed[],
  plans: readonly KeptPlan[],
): NeedsOfProjects {
  const chosen = new Map(
    allRows(store, 'SELECT * FROM need_choice').map((row) => {
      const need = {
        projectId: idOf<ProjectId>(row, 'project_id'),
        ...{ source: textOf(row, 'source'), name: textOf(row, 'name') },
      };
      return [needKey(need), { choice: textOf(row, 'choice'), fabricId: textOrNullOf(row, 'fabric_id') }];
    }),
  );
  const held = heldBackings(store);
  const named = fabricsNamed(store, needs);
  const taken = (need: FabricNeed): string | null => {
    const own = chosen.get(needKey(need));
    if (own !== undefined) return own.fabricId;
    if (need.fabricId !== null) return need.fabricId;
    const planned = plans
      .map((plan) => fabricInPlan(plan, need.projectId, need.name))
      .find((id) => id !== null);
    return (
      planned ??
      held.get(`${need.projectId} ${backOrFill(need)}`) ??
      named.get(need.name.toLowerCase()) ??
      null
    );
  };
  const isLeftOut = (need: FabricNeed) => chosen.get(needKey(need))?.choice === 'leave-out';
  const all = needs.map((need) => ({ ...need, fabricId: taken(need) as FabricId | null }));
  return {
    needs: all.filter((need) => !isLeftOut(need)),
    leftOut: all.filter(isLeftOut),
  };
}

const BACK_OR_FILL = `CASE WHEN kind IN ('backing', 'wide-backing') THEN 'back'
  WHEN kind IN ('batting', 'batting-package') THEN 'fill' END`;

function backOrFill({ kind }: FabricNeed): string {
  if (kind === 'backing' || kind === 'wide-backing') return 'back';
  return kind === 'batting' || kind === 'batting-package' ? 'fill' : '';
}

/** The fabric of the backing, and of the batting, that each open project holds. */
function heldBackings(store: ReadableStore): ReadonlyMap<string, string> {
  const sql = `SELECT project.id AS project_id, ${BACK_OR_FILL} AS layer, fabric.id AS fabric_id
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
