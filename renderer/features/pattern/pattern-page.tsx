import type { ProjectId, StageId } from '#core/domain/ids';
import { measurementsOfProject } from '#core/domain/measurements';
import { NO_PATTERN, type PatternDetails, type SavedPattern } from '#core/domain/pattern';
import type { UnitSystem } from '#core/units/unit-system';
import { useRead } from '#renderer/bridge/query';
import { useWorkshop } from '#renderer/bridge/workshop';
import { SettingsDisplay } from '#renderer/ui/base/settings-display';
import { Page } from '#renderer/ui/page/page';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { PatternForm } from './pattern-form';

interface PatternPageProps {
  readonly projectId: ProjectId;
  readonly stageId: StageId;
}

/** The pattern that a project follows: its cutting list as it stands, and what was read from it. */
export function PatternPage({ projectId, stageId }: PatternPageProps) {
  const { value: spread, problem } = useRead('project:open', { projectId });
  const { value: saved } = useRead('pattern:open', { projectId });
  const { settings } = useWorkshop();
  const stage = spread?.stages.find((one) => one.id === stageId);
  if (spread === undefined || stage === undefined || saved === undefined) {
    const gone =
      spread === undefined || stage !== undefined ? problem : ({ code: 'not-found', kind: 'stage' } as const);
    return (
      <Page title="Pattern" back={{ to: `/projects/${projectId}`, words: 'Back to the project' }}>
        <ProblemNotice problem={gone} />
      </Page>
    );
  }
  const measurements = measurementsOfProject(spread.project, settings, spread.stages);
  return (
    <SettingsDisplay settings={measurements.settings}>
      <PatternForm
        stage={stage}
        measurements={measurements}
        saved={startOf(saved, measurements.settings.unitSystem)}
        file={saved?.file ?? null}
      />
    </SettingsDisplay>
  );
}

/** A first pattern reads bare sizes in the project's own units. */
function startOf(saved: SavedPattern | null, system: UnitSystem): PatternDetails {
  if (saved === null) return { ...NO_PATTERN, bareUnit: system === 'inch' ? 'in' : 'cm' };
  const { file: _file, ...details } = saved;
  return details;
}
