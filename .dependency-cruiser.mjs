import { coreRules } from './test/layers/rules/core-rules.mjs';
import { anyPackage, core, forbid, inside, npm, production, vocabulary } from './test/layers/rules/rule.mjs';

// Who may import whom, type-only imports included. Each rule says why it stands and what to do instead; test/layers
// proves that each one bites.

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
