import { useNavigate } from 'react-router';
import type { ProjectSpread } from '#core/contract/projects';
import type { ProjectId } from '#core/domain/ids';
import { useRead, useWrite } from '#renderer/bridge/query';
import { Button, ButtonLink } from '#renderer/ui/page/button';
import { DraftContext, useDraftValue, useFormDraft } from '#renderer/ui/base/draft';
import { DiscardEntries } from '#renderer/ui/page/discard-entries';
import { Page } from '#renderer/ui/page/page';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { detailsOfDraft, draftOfProject, holeProblem, isProjectDraft } from './project-draft';
import { ProjectForm } from './project-form';

/** Changes the details of a project. */
export function EditProjectPage({ projectId }: { readonly projectId: ProjectId }) {
  const { value: spread, problem } = useRead('project:open', { projectId });
  if (spread !== undefined) return <EditForm spread={spread} />;
  return (
    <Page title="Change a project" back={{ to: '/projects', words: 'Projects' }}>
      <ProblemNotice problem={problem} />
    </Page>
  );
}

function EditForm({ spread }: { readonly spread: ProjectSpread }) {
  const { project, swatches } = spread;
  const here = `/projects/${project.id}`;
  const typed = useFormDraft(`project ${project.id}`);
  const [draft, setDraft] = useDraftValue(typed, 'details', () => draftOfProject(project), isProjectDraft);
  const changing = useWrite('project:change');
  const navigate = useNavigate();
  const save = async () => {
    const details = detailsOfDraft(draft);
    if (details === null || holeProblem(draft) !== null) return;
    const answer = await changing.write({ projectId: project.id, details });
    if (!answer.ok) return;
    typed.forget();
    void navigate(here);
  };
  return (
    <Page
      title={`Change ${project.name}`}
      back={{ to: here, words: `Back to ${project.name}` }}
      action={
        <>
          <DiscardEntries draft={typed} />
          <ButtonLink to={here}>{typed.hasEntries ? 'Finish later' : 'Cancel'}</ButtonLink>
          <Button look="main" type="submit" form="edit-project" disabled={changing.isWriting}>
            Save
          </Button>
        </>
      }
    >
      <DraftContext key={typed.discards} value={typed}>
        <ProjectForm
          id="edit-project"
          draft={draft}
          onChange={setDraft}
          onSubmit={() => void save()}
          swatches={swatches}
        />
      </DraftContext>
      <ProblemNotice problem={changing.problem} />
    </Page>
  );
}
