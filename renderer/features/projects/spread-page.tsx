import { useNavigate } from 'react-router';
import type { ProjectSpread } from '#core/contract/projects';
import type { ProjectId } from '#core/domain/ids';
import { settingsOfProject } from '#core/domain/workshop';
import { useRead, useWrite } from '#renderer/bridge/query';
import { useWorkshop } from '#renderer/bridge/workshop';
import { today } from '#renderer/text/dates';
import { PURPOSE_WORDS } from '#renderer/text/project-words';
import { statusLines, projectStatus } from '#renderer/text/project-status';
import { Button, ButtonLink } from '#renderer/ui/page/button';
import { classes } from '#renderer/ui/base/classes';
import { useDisplay } from '#renderer/ui/base/display';
import { SettingsDisplay } from '#renderer/ui/base/settings-display';
import { Page } from '#renderer/ui/page/page';
import { PrintSheetButton } from '#renderer/ui/page/print-sheet-button';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { StageMoveButton } from '#renderer/shared/stage-move-button';
import layout from '#renderer/ui/page/layout.module.css';
import { InTime } from './in-time';
import { ProjectLeaf } from './project-leaf';
import { StageRail } from './stage-rail';

/** One project as two facing pages: what it is on the left, what is next on the right. */
export function SpreadPage({ projectId }: { readonly projectId: ProjectId }) {
  const { value: spread, problem } = useRead('project:open', { projectId });
  const { settings } = useWorkshop();
  if (spread === undefined) {
    return (
      <Page title={problem === null ? 'Opening…' : 'Project'} back={{ to: '/projects', words: 'Projects' }}>
        <ProblemNotice problem={problem} />
      </Page>
    );
  }
  return (
    <SettingsDisplay settings={settingsOfProject(settings, spread.project.settingChanges)}>
      <Spread spread={spread} />
    </SettingsDisplay>
  );
}

function Spread({ spread }: { readonly spread: ProjectSpread }) {
  const { project, stages } = spread;
  const on = today();
  const status = projectStatus(spread, on);
  const moving = useWrite('stage:move');
  const archiving = useWrite('project:archive');
  const archive = (archived: boolean) => void archiving.write({ projectId: project.id, archived });
  const mainAction =
    status.now === null || project.isArchived ? (
      <Button look="main" disabled={archiving.isWriting} onClick={() => archive(!project.isArchived)}>
        {project.isArchived ? 'Restore' : 'Archive'}
      </Button>
    ) : (
      <StageMoveButton
        projectId={project.id}
        stage={status.now}
        look="main"
        isBusy={moving.isWriting}
        onMove={(stageId, to) => void moving.write({ stageId, to })}
      />
    );
  return (
    <Page
      title={project.name}
      under={<Under spread={spread} />}
      back={{ to: '/projects', words: 'Projects' }}
      aside={<ProjectActions spread={spread} />}
      action={mainAction}
    >
      <ProblemNotice problem={moving.problem ?? archiving.problem} />
      {!project.isArchived && <InTime spread={spread} />}
      <div className={layout['spread']}>
        <ProjectLeaf spread={spread} />
        <StageRail project={project} stages={stages} now={status.now} />
      </div>
    </Page>
  );
}

function Under({ spread }: { readonly spread: ProjectSpread }) {
  const { project } = spread;
  const { locale } = useDisplay();
  const on = today();
  const lines = project.isArchived ? [] : statusLines(spread, projectStatus(spread, on), on, locale);
  const forWhom = project.forWhom === '' ? '' : ` for ${project.forWhom}`;
  return (
    <>
      <p>
        {project.purpose === 'own' ? PURPOSE_WORDS.own : `${PURPOSE_WORDS[project.purpose]}${forWhom}`}
        {project.isArchived && ', archived'}
      </p>
      {lines.map((line) => (
        <p key={line.text} className={classes(line.isAlert && layout['alert'])}>
          {line.text}
        </p>
      ))}
    </>
  );
}

/** The actions for the whole project. All can be undone, so none asks for confirmation. */
function ProjectActions({ spread }: { readonly spread: ProjectSpread }) {
  const { project } = spread;
  const navigate = useNavigate();
  const duplicating = useWrite('project:duplicate');
  const archiving = useWrite('project:archive');
  const deleting = useWrite('project:delete');
  const printing = useWrite('shell:print-sheet');
  const duplicate = async () => {
    const answer = await duplicating.write({ projectId: project.id });
    if (answer.ok) void navigate(`/projects/${answer.value.projectId}`);
  };
  const remove = async () => {
    const answer = await deleting.write({ projectId: project.id });
    if (answer.ok) void navigate('/projects');
  };
  return (
    <>
      <ButtonLink isSmall to={`/projects/${project.id}/edit`}>
        Change
      </ButtonLink>
      {!project.isArchived && (
        <ButtonLink isSmall to={`/projects/${project.id}/cutting`}>
          Plan the cutting
        </ButtonLink>
      )}
      <PrintSheetButton printing={printing} sheet={`project/${project.id}`} name={project.name} look="quiet">
        Print its sheet
      </PrintSheetButton>
      <Button look="quiet" isSmall disabled={duplicating.isWriting} onClick={() => void duplicate()}>
        Make a copy
      </Button>
      {!project.isArchived && (
        <Button
          look="quiet"
          isSmall
          disabled={archiving.isWriting}
          onClick={() => void archiving.write({ projectId: project.id, archived: true })}
        >
          Archive
        </Button>
      )}
      <Button look="quiet" isSmall disabled={deleting.isWriting} onClick={() => void remove()}>
        Delete
      </Button>
    </>
  );
}
