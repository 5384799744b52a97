import { planCenterTemplate } from '#core/calculators/center/center-template/center-template';
import type { SheetPaper } from '#core/domain/paper';
import type { ProjectId } from '#core/domain/ids';
import { settingsOfProject } from '#core/domain/workshop';
import { useRead } from '#renderer/bridge/query';
import { useOpening } from '#renderer/bridge/workshop';
import { problemWords } from '#renderer/text/problems';
import { useIsCutSettled } from '#renderer/shared/unsettled-facts';
import { useDisplay } from '#renderer/ui/base/display';
import { SettingsDisplay } from '#renderer/ui/base/settings-display';
import { Paper } from '../paper/paper';
import { EmptySheet } from '../paper/empty-sheet';
import { TemplatePageView } from './template-page';
import { defineSheet, readProject, type SheetAddress } from '../sheet';

interface TemplateSheetProps {
  readonly projectId: ProjectId;
  readonly paper: SheetPaper;
  readonly part: 'whole' | 'quarter';
}

/** The hole of a project at true size, on as many sheets as it needs. */
function TemplateSheet({ projectId, paper, part }: TemplateSheetProps) {
  const { value: spread, problem } = useRead('project:open', { projectId });
  const isSettled = useIsCutSettled(projectId);
  const opening = useOpening();
  const { length } = useDisplay();
  if (problem !== null) return <EmptySheet paper={paper}>{problemWords(problem, length)}</EmptySheet>;
  if (spread === undefined || opening === undefined || isSettled === undefined) return null;
  const { project } = spread;
  if (project.hole === null) return <EmptySheet paper={paper}>{project.name} has no hole.</EmptySheet>;
  if (!isSettled) {
    return (
      <EmptySheet paper={paper}>
        The hole of {project.name} is not settled yet: a saved answer has another size than the project.
        Settle it on the page of the project, and print the template then.
      </EmptySheet>
    );
  }
  const settings = settingsOfProject(opening.workshop.settings, project.settingChanges);
  const { diameter } = project.hole;
  const planned = planCenterTemplate({
    holeDiameter: diameter,
    seamAllowance: settings.seamAllowance,
    part,
    paper,
  });
  if (!planned.ok) {
    return (
      <EmptySheet paper={paper}>
        This hole would take {planned.error.sheets} sheets. Draw it on the fabric with a pin, a string and
        chalk instead{part === 'whole' ? ', or print a quarter template' : ''}.
      </EmptySheet>
    );
  }
  const template = planned.value;
  return (
    <SettingsDisplay settings={settings}>
      <Paper paper={paper} margin="0">
        {template.pages.map((page) => (
          <TemplatePageView
            key={page.name}
            template={template}
            page={page}
            projectName={project.name}
            diameter={diameter}
            seamAllowance={settings.seamAllowance}
            part={part}
          />
        ))}
      </Paper>
    </SettingsDisplay>
  );
}

export const centerTemplateSheet = defineSheet(readTemplate, TemplateSheet);

function readTemplate(address: SheetAddress) {
  const project = readProject(address);
  const part: 'whole' | 'quarter' = address.search.get('part') === 'quarter' ? 'quarter' : 'whole';
  return project === null ? null : { ...project, part };
}
