import { core, forbid, inside, schemas, vocabulary } from './rule.mjs';

/**
 * A room of shared-core that may import the named places and nothing else.
 *
 * @param {string} room
 * @param {string} comment
 * @param {readonly string[]} allowed
 */
const coreRoom = (room, comment, allowed) =>
  forbid(
    `core-${room}`,
    comment,
    { path: core(room) },
    { pathNot: [...core(room), ...vocabulary, ...allowed] },
  );

export const coreRules = [
  forbid(
    'core-is-pure',
    'shared-core runs anywhere: no Node, no Electron, no page, no package but the schema library. Take what you need as an argument.',
    { path: inside('shared-core') },
    { pathNot: [...inside('shared-core'), ...schemas] },
  ),
  forbid(
    'core-vocabulary',
    'These few files are read everywhere, so they may know no more than the units.',
    { path: vocabulary },
    { pathNot: [...vocabulary, ...core('units')] },
  ),
  coreRoom('units', 'Units are the ground floor: move what needs more to the room that has it.', []),
  coreRoom(
    'geometry',
    'A shape knows lengths and nothing of fabric: what it is for belongs to a calculator.',
    core('units'),
  ),
  coreRoom(
    'domain',
    'Records know what they hold, not how it is worked out: arithmetic belongs to a calculator.',
    [...core('units'), ...schemas],
  ),
  coreRoom(
    'calculators',
    'A calculator answers one question from its input: it knows no channel, no plan and no page.',
    [...core('units', 'geometry', 'domain'), ...schemas],
  ),
  coreRoom(
    'cutting',
    'The cutting planner works on shapes and records: it knows no channel and no calculator.',
    [...core('units', 'geometry', 'domain'), ...schemas],
  ),
  coreRoom(
    'fabric-choice',
    'Chooses by color and cutting: knows no store or page.',
    core('units', 'cutting'),
  ),
  coreRoom(
    'cutting-list',
    'Reading a list knows words and sizes: what is worked out from its patches belongs to a calculator.',
    core('units'),
  ),
  coreRoom('planner', 'The date planner works on records: it knows no channel and no calculator.', [
    ...core('units', 'domain'),
    ...schemas,
  ]),
  coreRoom(
    'learned',
    'What the workshop’s own past teaches is worked out from records and calculators: it knows no channel and no page.',
    [...core('units', 'domain', 'calculators'), ...schemas],
  ),
  coreRoom('stash', 'The rules of the stash work on records: they know no channel and no calculator.', [
    ...core('units', 'domain'),
    ...schemas,
  ]),
  coreRoom(
    'calendar-file',
    'A calendar file is written from days: it knows neither how they were planned nor where it is kept.',
    core('units'),
  ),
  coreRoom('contract', 'The contract says what crosses the bridge, not how it is worked out.', [
    ...core('units', 'domain'),
    '^shared-core/planner/schedule\\.ts$',
    '^shared-core/learned/(stage-estimate|days-away)\\.ts$',
    '^shared-core/stash/piece-code\\.ts$',
    '^shared-core/stash/shopping/(fabric-need|shopping-list)\\.ts$',
    '^shared-core/calendar-file/day-to-remember\\.ts$',
    ...schemas,
  ]),
  forbid(
    'checker-stands-alone',
    'The checker of cut plans must not share a mistake with the planner: give it only the record of a plan.',
    { path: '^shared-core/cutting/check/check-cut-plan\\.ts$' },
    { path: core('cutting'), pathNot: ['^shared-core/cutting/tree/cut-plan\\.ts$'] },
  ),
  forbid(
    'date-checker-stands-alone',
    'The checker of schedules must not share a mistake with the planner: give it only the records of load and plan.',
    { path: '^shared-core/planner/check-schedule\\.ts$' },
    { path: core('planner'), pathNot: ['^shared-core/planner/(schedule|workshop-load)\\.ts$'] },
  ),
  forbid(
    'planner-ignores-checker',
    'A planner that asks the checker proves nothing: let the caller and the tests check the plan.',
    { path: core('cutting'), pathNot: ['^shared-core/cutting/check/check-cut-plan\\.ts$'] },
    { path: '^shared-core/cutting/check/check-cut-plan\\.ts$' },
  ),
];
