import type { Hole, Outline } from './outline';
import type { ProjectDetails } from './project';
import type { Stage } from './stage';
import { type Settings, settingsOfProject } from './workshop';

/** What calculators read of a project: its finished shape and its settings. */
export interface Measurements {
  readonly outline: Outline;
  readonly hole: Hole | null;
  readonly hasSlit: boolean;
  readonly settings: Settings;
  /**
   * Whether a stage of the project binds the hole by itself; if none does, one binding goes around the edge, the slit and the hole. Left
   * out where the stages are not known.
   */
  readonly isHoleBoundAlone?: boolean;
}

export function measurementsOfProject(
  project: Pick<ProjectDetails, 'outline' | 'hole' | 'hasSlit' | 'settingChanges'>,
  workshopSettings: Settings,
  stages?: readonly Pick<Stage, 'kind' | 'state'>[],
): Measurements {
  return {
    outline: project.outline,
    hole: project.hole,
    hasSlit: project.hasSlit,
    settings: settingsOfProject(workshopSettings, project.settingChanges),
    ...(stages === undefined ? {} : { isHoleBoundAlone: stages.some(bindsHole) }),
  };
}

function bindsHole({ kind, state }: Pick<Stage, 'kind' | 'state'>): boolean {
  return kind === 'inner-binding' && state !== 'skipped';
}
