import type { PreviewedStage, ProjectSpread, StagePlan } from '#core/contract/projects';
import { fittingPlans } from '#core/domain/fitting-plans';
import { useRead, useWrite } from '#renderer/bridge/query';
import { useDraftValue, useFormDraft } from '#renderer/ui/base/draft';
import { DialogForm, useDialogSave } from '#renderer/ui/page/dialog-form';
import layout from '#renderer/ui/page/layout.module.css';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import styles from './spread.module.css';
import { StagePlanChoice } from './stage-plan-choice';

interface SwitchPlanDialogProps {
  readonly project: ProjectSpread['project'];
  readonly onClose: () => void;
}

/** Switches a project to another stage plan, or to the current version of its own. */
export function SwitchPlanDialog({ project, onClose }: SwitchPlanDialogProps) {
  const { id: projectId, hole, hasSlit } = project;
  const { value: plans = [] } = useRead('stage-plan:list', {});
  const draft = useFormDraft(`switch-plan ${projectId}`);
  const [chosen, setChosen] = useDraftValue<StagePlan['id'] | null>(draft, 'chosen', null);
  const saving = useDialogSave(useWrite('project:follow-plan'), onClose, draft);
  return (
    <DialogForm
      draft={draft}
      title="Switch plan"
      isWide
      saving={saving}
      verb="Switch to this plan"
      canSave={chosen !== null}
      onSave={() => {
        if (chosen !== null) saving.save({ projectId, stagePlanId: chosen });
      }}
      onClose={onClose}
      before={
        <p className={layout['quiet']}>
          Nothing you recorded is lost. Choose a plan to see what would change.
        </p>
      }
    >
      <StagePlanChoice
        plans={fittingPlans(plans, { hasHole: hole !== null, hasSlit })}
        chosen={chosen}
        onChoose={setChosen}
      />
      {chosen !== null && <PlanPreview projectId={projectId} stagePlanId={chosen} />}
    </DialogForm>
  );
}

const EFFECTS: readonly { readonly how: PreviewedStage['how']; readonly words: string }[] = [
  { how: 'stays', words: 'Stays, with everything recorded' },
  { how: 'fresh', words: 'New' },
  { how: 'kept', words: 'Not in the plan; stays because something is recorded' },
  { how: 'gone', words: 'Deleted; nothing is recorded' },
];

interface PlanPreviewProps {
  readonly projectId: ProjectSpread['project']['id'];
  readonly stagePlanId: StagePlan['id'];
}

/** What the plan would change in the project. */
function PlanPreview({ projectId, stagePlanId }: PlanPreviewProps) {
  const { value: stages, problem } = useRead('project:preview-plan-change', { projectId, stagePlanId });
  if (stages === undefined) return <ProblemNotice problem={problem} />;
  const groups = EFFECTS.map((effect) => ({
    ...effect,
    stages: stages.filter(({ how }) => how === effect.how),
  }));
  return (
    <section aria-label="What would change" aria-live="polite">
      <dl className={styles['planPreview']}>
        {groups
          .filter((group) => group.stages.length > 0)
          .map((group) => (
            <div key={group.how}>
              <dt>{group.words}</dt>
              <dd>
                {group.stages
                  .map(({ name, isSkipped }) => (isSkipped ? `${name} (skipped)` : name))
                  .join(', ')}
              </dd>
            </div>
          ))}
      </dl>
    </section>
  );
}
