import type { Hole, Outline } from './outline';
import type { ProjectDetails } from './project';
import { type Habits, habitsOfProject } from './workshop';

/** What calculators may know of a project: its finished shape and the habits that hold for it. */
export interface Measurements {
  readonly outline: Outline;
  readonly hole: Hole | null;
  readonly hasSlit: boolean;
  readonly habits: Habits;
}

export function measurementsOfProject(
  project: Pick<ProjectDetails, 'outline' | 'hole' | 'hasSlit' | 'habitChanges'>,
  workshopHabits: Habits,
): Measurements {
  return {
    outline: project.outline,
    hole: project.hole,
    hasSlit: project.hasSlit,
    habits: habitsOfProject(workshopHabits, project.habitChanges),
  };
}
