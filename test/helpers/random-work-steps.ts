import { NO_PATTERN } from '#core/domain/pattern';
import type { StoreChannelName } from '#core/contract/channels';
import { pieceKindSchema } from '#core/domain/stash';
import { stageStateSchema } from '#core/domain/stage';
import { workMeasureSchema } from '#core/domain/clock';
import { nameAlone } from '#core/domain/contact';
import { STARTING_PLANS } from '#core/domain/starting-plans';
import { tripEventKindSchema, tripWith } from '#core/domain/trip';
import { readWorkshop } from '#main/store/workshop/workshop';
import { type PlanFor, planOnTwoYards } from './kept-plans';
import type { Deed } from './random-work-deed';
import { fabricDetails, inches, projectDetails, TINY_PNG, TODAY, type TestWorkshop } from './workshop';

/** The input of a call, made for any state of the workshop; null if there is no record to call it for. */
export interface UnvalidatedStep {
  readonly name: StoreChannelName;
  readonly input: (workshop: TestWorkshop, deed: Deed) => unknown;
}

type PartOfInput = Readonly<Record<string, unknown>>;

function idFrom(workshop: TestWorkshop, sql: string, pick: number): string | null {
  const rows = workshop.context.store.database.prepare<[], { id: string }>(`${sql} ORDER BY 1`).all();
  return rows[pick % Math.max(1, rows.length)]?.id ?? null;
}

const SOURCES = {
  projectId: 'SELECT id FROM project WHERE deleted_at IS NULL',
  fabricId: 'SELECT id FROM fabric WHERE deleted_at IS NULL',
  stageId: 'SELECT id FROM stage',
  checklistItemId: 'SELECT id FROM checklist_item',
  tripId: 'SELECT id FROM trip',
  tripEventId: 'SELECT id FROM trip_event',
  contactId: 'SELECT id FROM contact',
  workId: 'SELECT id FROM work',
  photoId: 'SELECT id FROM photo WHERE stage_id IS NOT NULL',
  stagePlanId: 'SELECT id FROM stage_plan',
  pieceId: 'SELECT id FROM fabric_piece',
  bookingId: 'SELECT id FROM booking',
  placeId: 'SELECT id FROM place',
  kindId: 'SELECT id FROM stash_kind',
  calculationId: 'SELECT id FROM calculation',
} as const;

/** The pieces that the sample cutting plan is for. */
const TWO_YARDS = `SELECT id FROM fabric_piece WHERE width = ${String(inches(42))}`;

type Named = keyof typeof SOURCES;

/** A call on existing records; the rest of its input is made from the deed. */
function step(
  name: StoreChannelName,
  named: readonly Named[],
  rest: (deed: Deed) => PartOfInput,
): UnvalidatedStep {
  return {
    name,
    input: (workshop, deed) => {
      const ids = named.map(
        (one, index) => [one, idFrom(workshop, SOURCES[one], deed.pick[index] ?? 0)] as const,
      );
      return ids.some(([, id]) => id === null) ? null : { ...Object.fromEntries(ids), ...rest(deed) };
    },
  };
}

const nameOf = (deed: Deed): string => `Project ${deed.amount % 7}`;
const placeOf = (deed: Deed): string =>
  ['', 'Attic', 'Attic, shelf 1', 'Attic, shelf 1, bin', 'Hall'][deed.amount % 5] ?? '';
const someFabric = (deed: Deed): PartOfInput => ({
  length: 1 + (deed.amount % inches(30)),
  on: TODAY,
  note: '',
});
const project = (deed: Deed): PartOfInput => ({
  details: projectDetails({ name: nameOf(deed), hasSlit: deed.amount % 2 === 0 }),
});
const fabric = (deed: Deed): PartOfInput => ({
  details: fabricDetails({ name: nameOf(deed), notes: `note ${deed.amount}`, place: placeOf(deed) }),
});
const kind = (deed: Deed): PartOfInput => ({
  details: {
    form: pieceKindSchema.options[deed.amount % pieceKindSchema.options.length],
    name: nameOf(deed),
    width: null,
    length: inches(9),
    count: 4,
    isHidden: deed.amount % 2 === 0,
  },
});
const trip = (deed: Deed): PartOfInput => ({
  details: { ...tripWith(nameOf(deed)), sentOn: TODAY, priceMinor: deed.amount },
});
const work = (deed: Deed): PartOfInput => ({
  details: {
    on: TODAY,
    minutes: 1 + (deed.amount % 240),
    done:
      deed.pick[1] % 2 === 0
        ? null
        : {
            what: workMeasureSchema.options[deed.pick[2] % workMeasureSchema.options.length],
            amount: 1 + deed.amount,
          },
    note: nameOf(deed),
  },
});
const plan = (deed: Deed): PartOfInput => ({
  name: nameOf(deed),
  says: '',
  stages: STARTING_PLANS[deed.amount % STARTING_PLANS.length]?.stages,
});
const cut = (deed: Deed): PartOfInput => {
  const length = 1 + (deed.amount % inches(30));
  const leftover = { width: inches(3 + (deed.pick[2] % 30)), length: Math.max(200, Math.floor(length / 3)) };
  const leftovers = Array.from({ length: deed.pick[2] % 4 }, () => leftover);
  return { ...someFabric(deed), stageId: null, leftovers, knowingly: deed.pick[0] % 2 === 0 };
};

export const steps: readonly UnvalidatedStep[] = [
  step('project:create', [], (deed) => ({
    ...project(deed),
    stagePlanId: STARTING_PLANS[deed.amount % 5]?.id,
  })),
  step('project:change', ['projectId'], project),
  step('project:duplicate', ['projectId'], () => ({})),
  step('project:archive', ['projectId'], (deed) => ({ archived: deed.amount % 2 === 0 })),
  step('project:delete', ['projectId'], () => ({})),
  step('stage:move', ['stageId'], (deed) => ({
    to: stageStateSchema.options[deed.amount % stageStateSchema.options.length],
    ...(deed.pick[1] % 2 === 0 ? { passGateWhy: 'A practice project' } : {}),
  })),
  step('stage:change', ['stageId'], (deed) => ({
    name: nameOf(deed),
    estimateMinutes: 5,
    heldUpBy: '',
    notes: '',
  })),
  step('stage:add', ['projectId'], (deed) => ({
    position: deed.amount % 9,
    kind: 'other',
    name: nameOf(deed),
  })),
  step('stage:repeat', ['stageId'], () => ({})),
  step('stage:reorder', ['stageId'], (deed) => ({ position: deed.amount % 9 })),
  step('stage:delete', ['stageId'], () => ({})),
  step('stage:set-up', ['stageId'], (deed) => ({
    isBeside: deed.amount % 2 === 0,
    calculators: deed.pick[1] % 2 === 0 ? null : ['backing'],
  })),
  step('project:move-to-stage', ['projectId', 'stageId'], () => ({})),
  step('project:move-to-stage', ['projectId'], () => ({ stageId: null })),
  step('project:follow-plan', ['projectId'], (deed) => ({
    stagePlanId: STARTING_PLANS[deed.amount % STARTING_PLANS.length]?.id,
  })),
  step('checklist:add', ['stageId'], (deed) => ({ text: nameOf(deed), isGate: deed.amount % 2 === 0 })),
  step('checklist:tick', ['checklistItemId'], (deed) => ({ ticked: deed.amount % 3 > 0 })),
  step('checklist:delete', ['checklistItemId'], () => ({})),
  step('photo:add', ['stageId'], (deed) => ({ bytes: TINY_PNG, caption: nameOf(deed) })),
  step('photo:delete', ['photoId'], () => ({})),
  step('pattern:save', ['projectId'], (deed) => ({
    details: { ...NO_PATTERN, patternName: nameOf(deed) },
    answer: null,
  })),
  step('pattern:set-file', ['projectId'], (deed) => ({
    file: deed.amount % 3 === 0 ? null : { name: 'pattern.png', bytes: TINY_PNG },
  })),
  step('trip:add', ['stageId'], trip),
  step('trip:change', ['tripId'], trip),
  step('trip:delete', ['tripId'], () => ({})),
  step('trip:send', ['stageId'], trip),
  step('trip:add-event', ['tripId'], (deed) => ({
    kind: tripEventKindSchema.options[deed.amount % tripEventKindSchema.options.length],
    on: TODAY,
    note: nameOf(deed),
    ofWholePackage: deed.pick[1] % 2 === 0,
  })),
  step('trip:delete-event', ['tripEventId'], () => ({})),
  step('trip:pack', ['tripId'], (deed) => ({ packing: [{ text: nameOf(deed), isPacked: true }] })),
  step('clock:start', ['stageId'], () => ({})),
  step('clock:start', ['stageId'], () => ({})),
  {
    name: 'clock:stop',
    input: (_workshop, deed) => ({ minutes: 1 + (deed.amount % 90), done: null, note: nameOf(deed) }),
  },
  step('work:add', ['stageId'], work),
  step('work:change', ['workId'], work),
  step('work:delete', ['workId'], () => ({})),
  step('contact:save', [], (deed) => ({ contactId: null, details: nameAlone(nameOf(deed), 'other') })),
  step('contact:save', ['contactId'], (deed) => ({ details: nameAlone(nameOf(deed), 'longarm') })),
  step('contact:delete', ['contactId'], () => ({})),
  step('stage-plan:save', [], (deed) => ({ stagePlanId: null, ...plan(deed) })),
  step('stage-plan:save', ['stagePlanId'], plan),
  step('stage-plan:delete', ['stagePlanId'], () => ({})),
  step('fabric:create', [], fabric),
  step('fabric:change', ['fabricId'], fabric),
  step('fabric:delete', ['fabricId'], () => ({})),
  step('fabric:set-photo', ['fabricId'], (deed) => ({ bytes: deed.amount % 3 === 0 ? null : TINY_PNG })),
  step('ledger:buy', ['fabricId'], (deed) => ({
    kind: pieceKindSchema.options[deed.pick[1] % pieceKindSchema.options.length],
    size: { width: inches(18 + (deed.pick[2] % 30)), length: inches(1 + (deed.amount % 100)) },
    costMinor: deed.amount % 4 === 0 ? null : deed.amount % 9_973,
    on: [TODAY, '2026-11', '2025', null][deed.amount % 4],
    place: placeOf(deed),
    note: '',
  })),
  step('place:add', [], (deed) => ({ path: `Room ${deed.amount % 3}, shelf ${deed.pick[0] % 3}` })),
  step('place:rename', ['placeId'], (deed) => ({ name: `Name ${deed.amount % 4}` })),
  {
    name: 'place:move',
    input: (workshop, deed) => {
      const [placeId, parentId] = [0, 1].map((at) => idFrom(workshop, SOURCES.placeId, deed.pick[at] ?? 0));
      return placeId === null ? null : { placeId, parentId: deed.amount % 4 === 0 ? null : parentId };
    },
  },
  step('place:delete', ['placeId'], () => ({})),
  step('piece:store-in', ['pieceId'], (deed) => ({ path: placeOf(deed) })),
  step('piece:set-print', ['pieceId'], ({ amount }) => ({ runs: amount % 2 === 0 ? 'along' : 'across' })),
  step('kind:save', ['kindId'], kind),
  step('kind:save', [], (deed) => ({ kindId: null, ...kind(deed) })),
  step('kind:delete', ['kindId'], () => ({})),
  step('ledger:set-aside', ['pieceId', 'projectId'], (deed) => ({
    ...someFabric(deed),
    ...(deed.pick[2] % 3 === 0 ? { knowingly: true } : {}),
  })),
  step('fabric:set-price', ['fabricId'], (deed) => ({
    price: deed.amount % 3 === 0 ? null : { minor: 1 + (deed.amount % 5_000), length: inches(36) },
  })),
  step('ledger:release', ['pieceId', 'projectId'], someFabric),
  step('ledger:cut', ['pieceId', 'projectId'], cut),
  step('ledger:cut', ['pieceId', 'projectId'], cut),
  step('ledger:discard', ['pieceId'], someFabric),
  step('ledger:count', ['pieceId'], (deed) => ({
    there: deed.pick[1] % 3 === 0 ? 0 : deed.amount % inches(90),
    on: TODAY,
    note: '',
  })),
  step('ledger:undo', ['bookingId'], () => ({ on: TODAY })),
  step('project:decide', ['projectId'], ({ amount }) => ({
    decided:
      amount % 2 === 0 ? { hole: { diameter: inches(3 + (amount % 12)) } } : { seamAllowance: inches(3 / 8) },
  })),
  step('calculation:save', ['stageId'], ({ amount }) => {
    const measure = `${String(3 + (amount % 12))} in`;
    return amount % 3 === 0
      ? { calculator: 'backing', ownInput: amount % 2 === 0 ? {} : { seam: measure } }
      : { calculator: 'hole-size', ownInput: { from: 'wish', measure } };
  }),
  step('calculation:follow-project', ['calculationId'], () => ({})),
  step('calculation:delete', ['calculationId'], () => ({})),
  step('trip:receive', ['stageId'], (deed) => ({
    tripId: null,
    details: { ...tripWith(nameOf(deed)), sentOn: TODAY, backOn: TODAY },
  })),
  step('trip:receive', ['stageId', 'tripId'], (deed) => ({
    details: { ...tripWith(nameOf(deed)), sentOn: TODAY, backOn: TODAY },
  })),
  {
    name: 'cutting:save',
    input: (workshop, { pick }) => {
      const [projectId, pieceId] = [SOURCES.projectId, TWO_YARDS].map((sql, at) =>
        idFrom(workshop, sql, pick[at] ?? 0),
      );
      const [stageId, fabricId] = [
        `SELECT id FROM stage WHERE project_id = '${projectId ?? ''}'`,
        `SELECT fabric.id FROM fabric_piece JOIN fabric ON fabric.seq = fabric_seq WHERE fabric_piece.id = '${pieceId ?? ''}'`,
      ].map((sql) => idFrom(workshop, sql, 0));
      if ([projectId, pieceId, stageId, fabricId].some((id) => id === null || id === undefined)) return null;
      const ids = { projects: [projectId], stageId, fabricId, pieceId } as unknown as PlanFor;
      return { projectId, plan: planOnTwoYards(ids) };
    },
  },
  step('cutting:delete', ['projectId'], () => ({})),
  step('cutting:tick', ['projectId', 'pieceId'], ({ amount }) => ({
    place: amount % 3,
    knowingly: amount % 2 === 0,
    on: TODAY,
  })),
  step('ledger:buy', ['fabricId'], () => ({
    kind: 'yardage',
    size: { width: inches(42), length: inches(72) },
    costMinor: 2_000,
    on: TODAY,
    place: '',
    note: '',
  })),
  {
    name: 'workshop:change',
    input: ({ context }, deed) => ({ workshop: { ...readWorkshop(context.store), name: nameOf(deed) } }),
  },
];
