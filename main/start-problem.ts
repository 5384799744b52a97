import type { Problem } from '#core/contract/problem';

/** Words for the problems that keep the notebook from opening, when there is no page yet to show them. */
export function startProblemWords(problem: Problem): string {
  if (problem.code === 'newer-workshop') {
    return (
      `It was last saved by a newer Ringbound (workshop format ${problem.found}; this one reads up to ${problem.newestSupported}). ` +
      'Nothing was changed. Install the newer version, or open another workshop with --workshop FILE.'
    );
  }
  if ('detail' in problem) {
    return `${problem.detail}\n\nNothing was changed. Your backups are in the folder “backups” beside the workshop file.`;
  }
  return `The workshop could not be read (${problem.code}). Nothing was changed.`;
}
