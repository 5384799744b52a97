import { useNavigate } from 'react-router';
import { useRead, useWrite } from '#renderer/bridge/query';
import { Button } from '#renderer/ui/page/button';
import { DraftContext, useDraftValue, useFormDraft } from '#renderer/ui/base/draft';
import { DiscardEntries } from '#renderer/ui/page/discard-entries';
import { Page } from '#renderer/ui/page/page';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { StagePlanChoice } from './stage-plan-choice';
import { detailsOfDraft, EMPTY_DRAFT, holeProblem, isProjectDraft } from './project-draft';
import { WouldBeInTime } from './in-time';
import { ProjectForm } from './project-form';
import { planOfDraft, plansForDraft } from './usual-plan';

/** Starts a new project. What was typed stays while the maker looks at other pages. */
export function NewProjectPage() {
  const typed = useFormDraft('project new');
  const [draft, setDraft] = useDraftValue(typed, 'details', EMPTY_DRAFT, isProjectDraft);
  const { value: plans = [] } = useRead('stage-plan:list', {});
  const creating = useWrite('project:create');
  const navigate = useNavigate();
  const stagePlanId = planOfDraft(plans, draft);
  const details = detailsOfDraft(draft);
  const create = async () => {
    if (details === null || stagePlanId === null || holeProblem(draft) !== null) return;
    const answer = await creating.write({ details, stagePlanId });
    if (!answer.ok) return;
    typed.forget();
    void navigate(`/projects/${answer.value.projectId}`);
  };
  return (
    <Page
      title="New project"
      action={
        <>
          <DiscardEntries draft={typed} />
          <Button look="main" type="submit" form="new-project" disabled={creating.isWriting}>
            Start this project
          </Button>
        </>
      }
    >
      <DraftContext key={typed.discards} value={typed}>
        <ProjectForm
          id="new-project"
          draft={draft}
          onChange={setDraft}
          onSubmit={() => void create()}
          inTime={
            details !== null &&
            stagePlanId !== null &&
            holeProblem(draft) === null && (
              <WouldBeInTime
                details={{ ...details, name: details.name === '' ? 'New project' : details.name }}
                stagePlanId={stagePlanId}
              />
            )
          }
          stages={
            <StagePlanChoice
              plans={plansForDraft(plans, draft)}
              chosen={stagePlanId}
              onChoose={(id) => setDraft({ ...draft, stagePlanId: id })}
            />
          }
        />
      </DraftContext>
      <ProblemNotice problem={creating.problem} />
    </Page>
  );
}
