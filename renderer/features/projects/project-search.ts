import type { ProjectGlance } from '#core/contract/projects';

/** Whether each word of the search starts a word of the project's name, its recipient or a stage, in upper or lower case. */
export function matchesSearch(
  { project, stages }: Pick<ProjectGlance, 'project' | 'stages'>,
  search: string,
): boolean {
  const words = wordsOf([project.name, project.forWhom, ...stages.map((stage) => stage.name)].join(' '));
  return wordsOf(search).every((wanted) => words.some((word) => word.startsWith(wanted)));
}

function wordsOf(text: string): readonly string[] {
  return text
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== '');
}
