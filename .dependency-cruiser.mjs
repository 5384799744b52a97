// Who may import whom, type-only imports included. Each rule says why it stands and what to do instead; test/layers
// proves that each one bites.

/** @typedef {import('dependency-cruiser').IRegularForbiddenRuleType} Rule */

/** @param {string[]} folders */
const inside = (...folders) => folders.map((folder) => `^${folder}/`);

/** @param {string[]} rooms */
const core = (...rooms) => inside(...rooms.map((room) => `shared-core/${room}`));

/** @param {string[]} packages */
const npm = (...packages) => packages.map((name) => `(^|/)node_modules/${name}/`);

const anyPackage = '(^|/)node_modules/';
const production = inside('shared-core', 'main', 'renderer');
const vocabulary = ['^shared-core/(assert-never|result|field-problem|message-of)\\.ts$'];
const schemas = npm('zod');

/**
 * @param {string} name
 * @param {string} comment
 * @param {Rule['from']} from
 * @param {Rule['to']} to
 * @returns {Rule}
 */
const forbid = (name, comment, from, to) => ({ name, comment, severity: 'error', from, to });

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

const coreRules = [
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

const mainRules = [
  forbid(
    'main-knows-no-page',
    'The main process never draws: pass data over the contract, and let the renderer word it.',
    { path: inside('main') },
    { path: inside('renderer') },
  ),
  forbid(
    'store-without-electron',
    'The store runs in a worker and in tests, where Electron is not: take paths and versions as arguments.',
    { path: inside('main/store', 'main/files', 'main/demo', 'main/png') },
    { path: [...npm('electron'), '^main/(ipc|preload|security|setup|command-line)/', '^main/[^/]+\\.ts$'] },
  ),
  forbid(
    'sql-in-store-only',
    'Only the store, and the backups that run in its thread, open SQLite: ask the store by a function of its area.',
    { path: inside('main'), pathNot: inside('main/store', 'main/files', 'main/setup') },
    { path: npm('better-sqlite3') },
  ),
  forbid(
    'preload-is-thin',
    'The preload script hands the contract over and does nothing else: no store, no Node, no package.',
    { path: inside('main/preload') },
    { pathNot: [...inside('main/preload'), ...core('contract'), ...vocabulary, ...npm('electron')] },
  ),
  forbid(
    'preload-is-a-program',
    'The preload script runs beside the page, in its own process: nothing can import it.',
    { pathNot: [...inside('main/preload'), ...inside('test')] },
    { path: inside('main/preload') },
  ),
  forbid(
    'setup-stands-alone',
    'Set-up runs before anything is installed or built: it knows none of the program and loads packages only later, by import().',
    { path: inside('main/setup') },
    { path: production, pathNot: inside('main/setup') },
  ),
  forbid(
    'setup-stays-out',
    'The program does not depend on how it was set up.',
    { path: production, pathNot: inside('main/setup') },
    { path: inside('main/setup') },
  ),
  forbid(
    'command-line-without-window',
    'The command line runs in plain Node: it may use shared-core and Node, not Electron, the store or the window.',
    { path: inside('main/command-line') },
    { path: [...npm('electron', 'better-sqlite3'), ...inside('main')], pathNot: inside('main/command-line') },
  ),
];

/** The rooms of the store from bottom to top, each with the reason why it knows none above it. */
const STORE_ROOMS = [
  ['base', 'Rows, handles and the clock serve every room.'],
  ['migrations', 'A step of the file format is frozen; it must not change with the code of an area.'],
  ['ledger', 'Entries and their sums know pieces by number, not why they were booked.'],
  ['history', 'A change records rows and bookings of any area without knowing the area.'],
  ['opening', 'The file is opened before any area can read it.'],
  ['workshop', 'Settings and logged time hold for every project.'],
  ['projects', 'A project and its stages exist without trips, schedule and fabric.'],
  ['trips', 'A trip belongs to a stage.'],
  ['dates', 'The schedule reads projects and trips.'],
  ['stash', 'Fabric exists before it is used.'],
  ['fabric-use', 'Using fabric needs the stash and projects, but no plan and no list.'],
  ['import-export', 'A table is read into the stash and written from it.'],
  ['cutting', 'A cutting plan books fabric; the shopping list reads its plans.'],
  ['shopping', 'The shopping list reads all areas, and none needs it.'],
  ['backups', 'A backup knows files, not areas.'],
  ['thread', 'The thread puts all areas together.'],
];

const storeRules = STORE_ROOMS.slice(0, -1).map(([room, reason], index) =>
  forbid(
    `store-${room}`,
    `${reason} Move what a lower room needs down, or pass it in.`,
    { path: inside(`main/store/${room}`) },
    { path: inside(...STORE_ROOMS.slice(index + 1).map(([above]) => `main/store/${above}`)) },
  ),
);

const rendererRules = [
  forbid(
    'renderer-is-sandboxed',
    'The page has no Electron and nothing of the main process: ask over the bridge.',
    { path: inside('renderer') },
    { path: [...inside('main'), ...npm('electron', 'better-sqlite3')] },
  ),
  forbid(
    'renderer-without-node',
    'The page has no Node: ask over the bridge.',
    { path: inside('renderer') },
    { dependencyTypes: ['core'] },
  ),
  forbid(
    'features-are-apart',
    'A feature does not know its neighbors: move what both need to shared, ui, text or shared-core, or compose them in app.',
    { path: '^renderer/features/([^/]+)/' },
    { path: '^renderer/features/', pathNot: '^renderer/features/$1/' },
  ),
  forbid(
    'shared-knows-no-feature',
    'What features share must not depend on one of them: pass down what differs.',
    { path: inside('renderer/shared') },
    { path: inside('renderer/features') },
  ),
  forbid(
    'app-composes',
    'Only the entry file and app itself know app: pass down what a part needs.',
    { path: inside('renderer'), pathNot: [...inside('renderer/app'), '^renderer/main\\.tsx$'] },
    { path: inside('renderer/app') },
  ),
  forbid(
    'ui-knows-no-data',
    'Shared controls and words get what they show as arguments: no features, no bridge.',
    { path: inside('renderer/ui', 'renderer/text') },
    { path: inside('renderer/features', 'renderer/shared', 'renderer/bridge') },
  ),
  forbid(
    'words-without-controls',
    'Words are plain functions: controls use them, not the other way round.',
    { path: inside('renderer/text') },
    { path: inside('renderer/ui') },
  ),
  forbid(
    'bridge-is-plain',
    'The bridge asks and answers: it draws nothing.',
    { path: inside('renderer/bridge') },
    { path: inside('renderer/features', 'renderer/shared', 'renderer/ui') },
  ),
];

const generalRules = [
  forbid(
    'no-cycles',
    'Two files that need each other are one, or need a third beneath both. Type-only imports count.',
    {},
    { circular: true },
  ),
  forbid(
    'production-knows-no-test',
    'Nothing that ships may lean on test files.',
    { path: production },
    { path: inside('test') },
  ),
  forbid(
    'tests-are-apart',
    'A test does not import another: move what both need to test/helpers.',
    { path: inside('test') },
    { path: '\\.(test|spec)\\.tsx?$' },
  ),
  forbid(
    'resolvable',
    'This import leads nowhere: mend the path or install the package.',
    {},
    { couldNotResolve: true },
  ),
];

/** @type {import('dependency-cruiser').IConfiguration} */
export default {
  forbidden: [...coreRules, ...mainRules, ...storeRules, ...rendererRules, ...generalRules],
  options: {
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    doNotFollow: { path: anyPackage },
    exclude: { path: '\\.(css|woff2|html)$|^vite/client$' },
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'types', 'node', 'default'],
      extensions: ['.ts', '.tsx', '.mjs', '.js', '.cjs', '.json', '.d.ts'],
    },
  },
};
