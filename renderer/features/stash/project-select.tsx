import type { ProjectGlance } from '#core/contract/projects';
import type { ProjectId } from '#core/domain/ids';
import { Select } from '#renderer/ui/fields/choice';

interface ProjectSelectProps {
  readonly projects: readonly ProjectGlance[];
  /** Null if no project is open. */
  readonly value: ProjectId | null;
  readonly onChange: (id: ProjectId) => void;
}

/** Chooses the open project that fabric is for, or says that there is none. */
export function ProjectSelect({ projects, value, onChange }: ProjectSelectProps) {
  if (value === null) return <p>You have no open project to use it for. Start one first.</p>;
  return (
    <Select
      label="For which project"
      value={value}
      options={projects.map(({ project }) => ({ value: project.id, words: project.name }))}
      onChange={onChange}
    />
  );
}
