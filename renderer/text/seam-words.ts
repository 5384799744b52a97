import { formatInline, type QuantityStyle } from '#core/calculators/format-quantity';
import { fineLength } from '#core/calculators/quantities';
import { ENOUGH_CASES } from '#core/learned/learned';
import type { UsualSeams } from '#core/learned/usual-seams';

/** `On average 1/64 in too wide on each side, 1/64 in more or less from project to project. Measured in 4 projects.` */
export function usualSeamWords({ projects, mean, spread }: UsualSeams, style: QuantityStyle): string {
  if (mean === null) return 'Not measured in any project yet.';
  const size = (exact: number) => formatInline(fineLength(exact, 'nearest'), style);
  const average = `On average ${size(Math.abs(mean))} too ${mean < 0 ? 'narrow' : 'wide'} on each side`;
  const apart = spread === null ? '' : `, ${size(spread)} more or less from project to project`;
  return `${average}${apart}. Measured in ${projectsWords(projects)}.`;
}

/** `Usually within 1/16 in.` */
export function usualCutWords({ inUse, projects }: UsualSeams, style: QuantityStyle): string {
  if (inUse !== null) return `Usually within ${formatInline(fineLength(inUse.cutOff, 'up'), style)}.`;
  return projects === 0 ? 'Not measured in any project yet.' : `Measured in ${projectsWords(projects)}.`;
}

/** Where the errors that a calculator starts with come from. */
export function seamSourceWords({ inUse, projects }: UsualSeams): string {
  if (inUse !== null)
    return `Your seams and cuts are learned: from what you measured in ${projectsWords(projects)}.`;
  return `Your seams and cuts are those of the settings. Once ${String(ENOUGH_CASES)} projects are measured, they are learned from them; so far there ${projects === 1 ? 'is' : 'are'} ${String(projects)}.`;
}

function projectsWords(projects: number): string {
  return projects === 1 ? '1 project' : `${String(projects)} projects`;
}
