import { z } from 'zod';
import { lengthField } from '#core/domain/fields';
import { calendarDateSchema } from '#core/domain/dates';
import { stagePlanIdSchema } from '#core/domain/ids';
import { type Outline, type SidesFault, sidesFault } from '#core/domain/outline';
import { type Project, type ProjectDetails, projectPurposeSchema } from '#core/domain/project';
import { settingChanges } from '#core/domain/workshop';
import { type Length, lengthFromInches } from '#core/units/length';

const length = lengthField({ title: 'Length' });
const shape = z.enum(['square', 'rectangle', 'rounded', 'circle', 'ellipse', 'hexagon', 'octagon', 'sides']);

/**
 * A project in the form: sizes may still be missing, and what was entered for one shape is kept while the maker tries another.
 * `across` is the side of a square, the diameter of a round, or the distance across the flats.
 */
const projectDraftSchema = z.object({
  name: z.string(),
  purpose: projectPurposeSchema,
  forWhom: z.string(),
  dueOn: calendarDateSchema.nullable(),
  shape,
  across: length.nullable(),
  width: length.nullable(),
  length: length.nullable(),
  cornerRadius: length.nullable().default(null),
  sides: z.array(length.nullable()),
  hasHole: z.boolean(),
  holeDiameter: length.nullable(),
  hasSlit: z.boolean(),
  settingChanges,
  notes: z.string(),
  stagePlanId: stagePlanIdSchema.nullable(),
});
export type ProjectDraft = z.infer<typeof projectDraftSchema>;

export const EMPTY_DRAFT: ProjectDraft = {
  name: '',
  purpose: 'gift',
  forWhom: '',
  dueOn: null,
  shape: 'circle',
  across: null,
  width: null,
  length: null,
  cornerRadius: null,
  sides: [null, null, null, null],
  hasHole: false,
  holeDiameter: null,
  hasSlit: false,
  settingChanges: {},
  notes: '',
  stagePlanId: null,
};

export function isProjectDraft(stored: unknown): stored is ProjectDraft {
  return projectDraftSchema.safeParse(stored).success;
}

/** The draft of a saved project. */
export function draftOfProject({ outline, hole, ...project }: Project): ProjectDraft {
  const { name, purpose, forWhom, dueOn, hasSlit, settingChanges: changes, notes } = project;
  return {
    ...EMPTY_DRAFT,
    name,
    purpose,
    forWhom,
    dueOn,
    hasSlit,
    notes,
    settingChanges: changes,
    ...sizesOf(outline),
    shape: outline.shape,
    hasHole: hole !== null,
    holeDiameter: hole?.diameter ?? null,
  };
}

/** The details to save; null while a size is missing or the sides cannot close. */
export function detailsOfDraft(draft: ProjectDraft): ProjectDetails | null {
  const outline = outlineOfDraft(draft);
  if (outline === null || sidesFault(outline) !== null || (draft.hasHole && draft.holeDiameter === null))
    return null;
  const { name, purpose, forWhom, dueOn, settingChanges: changes, notes } = draft;
  const hole = draft.hasHole && draft.holeDiameter !== null ? { diameter: draft.holeDiameter } : null;
  return {
    name: name.trim(),
    purpose,
    forWhom: forWhom.trim(),
    dueOn,
    outline,
    hole,
    notes,
    hasSlit: draft.hasSlit && hole !== null,
    settingChanges: changes,
  };
}

export function outlineOfDraft(draft: ProjectDraft): Outline | null {
  const { across, width, length: long } = draft;
  switch (draft.shape) {
    case 'square':
      return across === null ? null : { shape: 'square', side: across };
    case 'circle':
      return across === null ? null : { shape: 'circle', diameter: across };
    case 'hexagon':
    case 'octagon':
      return across === null ? null : { shape: draft.shape, acrossFlats: across };
    case 'rectangle':
    case 'ellipse':
      return width === null || long === null ? null : { shape: draft.shape, width, length: long };
    case 'rounded': {
      const { cornerRadius } = draft;
      if (width === null || long === null || cornerRadius === null || cornerProblem(draft) !== null)
        return null;
      return { shape: 'rounded', width, length: long, cornerRadius };
    }
    case 'sides': {
      const sides = draft.sides.filter((side) => side !== null);
      if (width === null || long === null || sides.length < draft.sides.length) return null;
      return { shape: 'sides', sides, width, length: long };
    }
  }
}

/** The outline for the preview; a missing size is replaced by a medium one. */
export function previewOutline(draft: ProjectDraft): Outline {
  const or = (value: Length | null, inches: number) => value ?? lengthFromInches(inches);
  const filled = {
    ...draft,
    across: or(draft.across, 48),
    width: or(draft.width, 36),
    length: or(draft.length, 52),
    cornerRadius: or(draft.cornerRadius, 8),
    sides: draft.sides.map((side) => or(side, 30)),
  };
  return outlineOfDraft(filled) ?? { shape: 'circle', diameter: filled.across };
}

/** What is wrong with the radius of the corners; null if two of them fit beside each other on every side. */
export function cornerProblem(draft: ProjectDraft): string | null {
  const narrowest = narrowestOf(draft);
  if (draft.shape !== 'rounded' || draft.cornerRadius === null || narrowest === null) return null;
  return 2 * draft.cornerRadius <= narrowest
    ? null
    : 'The corners run into each other. Make the radius at most half of the shorter side.';
}

const SIDES_WORDS: Readonly<Record<SidesFault, string>> = {
  'side-too-long':
    'The sides can’t meet: one is as long as all the others together. Measure the longest side again.',
  'side-past-size':
    'One side is longer than the project from corner to corner. Check the sides, the width and the length.',
  'too-short-around':
    'The sides are too short to go around this width and length. Check the sides, the width and the length.',
};

/** What is wrong with sides as measured; null while one is missing, and if they can close. */
export function sidesProblem(draft: ProjectDraft): string | null {
  const outline = outlineOfDraft(draft);
  const fault = outline === null ? null : sidesFault(outline);
  return fault === null ? null : SIDES_WORDS[fault];
}

/** What is wrong with the hole; null if it fits inside the project. */
export function holeProblem(draft: ProjectDraft): string | null {
  const narrowest = narrowestOf(draft);
  if (!draft.hasHole || draft.holeDiameter === null || narrowest === null) return null;
  return draft.holeDiameter < narrowest
    ? null
    : 'The hole is as wide as the project. Make the hole smaller or the project larger.';
}

/** The shapes with a width and a length of their own. */
const BY_WIDTH: readonly ProjectDraft['shape'][] = ['rectangle', 'rounded', 'ellipse', 'sides'];

function narrowestOf(draft: ProjectDraft): Length | null {
  if (!BY_WIDTH.includes(draft.shape)) return draft.across;
  if (draft.width === null || draft.length === null) return null;
  return draft.width < draft.length ? draft.width : draft.length;
}

type Sizes = Pick<ProjectDraft, 'across' | 'width' | 'length' | 'cornerRadius' | 'sides'>;

function sizesOf(outline: Outline): Sizes {
  const { across, width, length: long, cornerRadius, sides } = EMPTY_DRAFT;
  const none: Sizes = { across, width, length: long, cornerRadius, sides };
  switch (outline.shape) {
    case 'square':
      return { ...none, across: outline.side };
    case 'circle':
      return { ...none, across: outline.diameter };
    case 'hexagon':
    case 'octagon':
      return { ...none, across: outline.acrossFlats };
    case 'rectangle':
    case 'ellipse':
      return { ...none, width: outline.width, length: outline.length };
    case 'rounded': {
      const { width: wide, length: tall, cornerRadius: radius } = outline;
      return { ...none, width: wide, length: tall, cornerRadius: radius };
    }
    case 'sides':
      return { ...none, width: outline.width, length: outline.length, sides: [...outline.sides] };
  }
}
