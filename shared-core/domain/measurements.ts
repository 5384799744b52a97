import type { Hole, Outline } from './outline';
import type { ProjectDetails } from './project';
import { type Settings, settingsOfProject } from './workshop';

/** What calculators read of a project: its finished shape and its settings. */
export interface Measurements {
  readonly outline: Outline;
  readonly hole: Hole | null;
  readonly hasSlit: boolean;
  readonly settings: Settings;
}

export function measurementsOfProject(
  project: Pick<ProjectDetails, 'outline' | 'hole' | 'hasSlit' | 'settingChanges'>,
  workshopSettings: Settings,
): Measurements {
  return {
    outline: project.outline,
    hole: project.hole,
    hasSlit: project.hasSlit,
    settings: settingsOfProject(workshopSettings, project.settingChanges),
  };
}
