import { useNavigate } from 'react-router';
import { useRead, useWrite } from '#renderer/bridge/query';
import { Button } from '#renderer/ui/page/button';
import { useDraft } from '#renderer/ui/base/draft';
import { Page } from '#renderer/ui/page/page';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { StagePlanChoice } from './stage-plan-choice';
import { detailsOfDraft, EMPTY_DRAFT, holeProblem, isProjectDraft } from './project-draft';
import { ProjectForm } from './project-form';

/** Starts a new project. What was typed stays while the maker looks at other pages. */
export function NewProjectPage() {
  const [draft, setDraft, forgetDraft] = useDraft('new-project', EMPTY_DRAFT, isProjectDraft);
  const { value: plans = [] } = useRead('stage-plan:list', {});
  const creating = useWrite('project:create');
  const navigate = useNavigate();
  const stagePlanId = draft.stagePlanId ?? plans[0]?.id ?? null;
  const create = async () => {
    const details = detailsOfDraft(draft);
    if (details === null || stagePlanId === null || holeProblem(draft) !== null) return;
    const answer = await creating.write({ details, stagePlanId });
    if (!answer.ok) return;
    forgetDraft();
    void navigate(`/projects/${answer.value.projectId}`);
  };
  return (
    <Page
      title="New project"
      action={
        <Button look="main" type="submit" form="new-project" disabled={creating.isWriting}>
          Start this project
        </Button>
      }
    >
      <ProjectForm
        id="new-project"
        draft={draft}
        onChange={setDraft}
        onSubmit={() => void create()}
        stages={
          <StagePlanChoice
            plans={plans}
            chosen={stagePlanId}
            onChoose={(id) => setDraft({ ...draft, stagePlanId: id })}
          />
        }
      />
      <ProblemNotice problem={creating.problem} />
    </Page>
  );
}
