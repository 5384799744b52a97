import type { ProjectGlance, StageGlance, Trip } from '#core/contract/projects';
import {
  contactIdSchema,
  packageIdSchema,
  projectIdSchema,
  stageIdSchema,
  tripIdSchema,
} from '#core/domain/ids';
import type { StageState } from '#core/domain/stage';
import { tripWith } from '#core/domain/trip';
import { calendarDate } from '#core/units/calendar-date';
import { lengthFromInches } from '#core/units/length';

interface GlanceSketch {
  readonly name?: string;
  readonly dueOn?: string;
  /** States of its stages in order; they are named Stage 1, Stage 2 and so on. */
  readonly stages: readonly StageState[];
  /** What the first unfinished stage waits for. */
  readonly heldUpBy?: string;
  /** The trip of the stage at the quilter, or else of the first stage. */
  readonly trip?: TripSketch;
}

type TripSketch = Pick<Trip, 'promisedOn' | 'backOn'>;

let made = 0;

const uuid = () => {
  made += 1;
  return `00000000-0000-4000-8000-${String(made).padStart(12, '0')}`;
};

/** A made-up project as the bench reads it, with only what a test needs. */
export function glance({
  name = 'Sample round',
  dueOn,
  stages: states,
  heldUpBy = '',
  trip: journey,
}: GlanceSketch): ProjectGlance {
  const project = projectIdSchema.parse(uuid());
  const current = states.findIndex((state) => state !== 'done' && state !== 'skipped');
  const stages = states.map((state, position): StageGlance => ({
    id: stageIdSchema.parse(uuid()),
    projectId: project,
    position,
    kind: 'other',
    name: `Stage ${String(position + 1)}`,
    state,
    estimateMinutes: 0,
    isOwnEstimate: false,
    heldUpBy: position === current ? heldUpBy : '',
    isGateShut: false,
    isBeside: false,
  }));
  const away = stages.find((stage) => stage.state === 'out') ?? stages[0]!;
  return {
    project: {
      id: project,
      name,
      purpose: 'own',
      forWhom: '',
      dueOn: dueOn === undefined ? null : calendarDate(dueOn),
      outline: { shape: 'circle', diameter: lengthFromInches(40) },
      hole: null,
      hasSlit: false,
      settingChanges: {},
      notes: '',
      isArchived: false,
      createdAt: 0,
      changedAt: 0,
    },
    stages,
    trips:
      journey === undefined
        ? []
        : [
            {
              ...EMPTY_TRIP,
              ...journey,
              id: tripIdSchema.parse(uuid()),
              stageId: away.id,
              projectId: project,
            },
          ],
    swatches: [],
  };
}

export function trip(days: { readonly promisedOn?: string; readonly backOn?: string }): TripSketch {
  const day = (text: string | undefined) => (text === undefined ? null : calendarDate(text));
  return { promisedOn: day(days.promisedOn), backOn: day(days.backOn) };
}

const EMPTY_TRIP = {
  ...tripWith('Tansy Quill'),
  contactId: contactIdSchema.parse(uuid()),
  packageId: packageIdSchema.parse(uuid()),
  packing: [],
  events: [],
};
