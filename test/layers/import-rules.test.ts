import { describe, expect, test } from 'vitest';
import configuration from '#root/.dependency-cruiser.mjs';
import { brokenRules, type Files } from './cruise-files';

const empty = 'export type Thing = 1;\nexport const thing = 1;\n';
const types = (from: string): string => `import type { Thing } from '${from}';\nexport type Mine = Thing;\n`;
const value = (from: string): string => `import { thing } from '${from}';\nexport const mine = thing;\n`;
const node = (name: string): string => `import * as it from '${name}';\nexport const mine = it;\n`;

/** The rooms of the store from bottom to top. */
const storeRooms =
  'base migrations ledger history opening workshop projects trips dates stash fabric-use import-export cutting shopping backups thread'.split(
    ' ',
  );

type Case = { readonly bad: readonly Files[]; readonly good?: readonly Files[] };

/** Each room may know the one below it, and neither the one above it nor the highest. */
const storeCases = Object.fromEntries(
  storeRooms.slice(0, -1).map((room, index): [string, Case] => {
    const importing = (other: string, make: typeof types): Files => ({
      [`main/store/${room}/one.ts`]: make(`../${other}/two`),
      [`main/store/${other}/two.ts`]: empty,
    });
    const below = storeRooms[index - 1];
    return [
      `store-${room}`,
      {
        bad: [importing(storeRooms[index + 1] ?? '', types), importing('thread', value)],
        ...(below === undefined ? {} : { good: [importing(below, value)] }),
      },
    ];
  }),
);

/** For each rule, projects that break it and, where it says more than its name, one that keeps it. */
const cases: Readonly<Record<string, Case>> = {
  ...storeCases,
  'core-is-pure': {
    bad: [
      { 'shared-core/place.ts': node('node:fs') },
      { 'shared-core/place.ts': node('electron') },
      { 'shared-core/place.ts': node('react') },
      { 'shared-core/place.ts': types('../main/files/photo'), 'main/files/photo.ts': empty },
    ],
  },
  'core-vocabulary': {
    bad: [{ 'shared-core/result.ts': types('./domain/project'), 'shared-core/domain/project.ts': empty }],
    good: [
      { 'shared-core/field-problem.ts': types('#core/units/length'), 'shared-core/units/length.ts': empty },
    ],
  },
  'core-units': {
    bad: [
      { 'shared-core/units/length.ts': types('../geometry/point'), 'shared-core/geometry/point.ts': empty },
      { 'shared-core/units/length.ts': value('#core/domain/fields'), 'shared-core/domain/fields.ts': empty },
    ],
    good: [{ 'shared-core/units/length.ts': value('#core/result'), 'shared-core/result.ts': empty }],
  },
  'core-geometry': {
    bad: [
      { 'shared-core/geometry/point.ts': types('#core/domain/stash'), 'shared-core/domain/stash.ts': empty },
    ],
    good: [
      { 'shared-core/geometry/point.ts': value('#core/units/length'), 'shared-core/units/length.ts': empty },
    ],
  },
  'core-domain': {
    bad: [
      {
        'shared-core/domain/stash.ts': types('#core/calculators/yards'),
        'shared-core/calculators/yards.ts': empty,
      },
      {
        'shared-core/domain/stash.ts': types('#core/geometry/point'),
        'shared-core/geometry/point.ts': empty,
      },
    ],
    good: [{ 'shared-core/domain/stash.ts': node('zod') }],
  },
  'core-calculators': {
    bad: [
      {
        'shared-core/calculators/yards.ts': types('#core/contract/stash'),
        'shared-core/contract/stash.ts': empty,
      },
      {
        'shared-core/calculators/yards.ts': value('#core/cutting/plan'),
        'shared-core/cutting/plan.ts': empty,
      },
    ],
    good: [
      {
        'shared-core/calculators/yards.ts': value('#core/domain/stash'),
        'shared-core/domain/stash.ts': empty,
      },
    ],
  },
  'core-cutting': {
    bad: [
      {
        'shared-core/cutting/plan.ts': types('#core/contract/stash'),
        'shared-core/contract/stash.ts': empty,
      },
    ],
    good: [
      {
        'shared-core/cutting/plan.ts': value('#core/geometry/point'),
        'shared-core/geometry/point.ts': empty,
      },
    ],
  },
  'core-learned': {
    bad: [
      {
        'shared-core/learned/rates.ts': types('#core/contract/clock'),
        'shared-core/contract/clock.ts': empty,
      },
    ],
    good: [
      {
        'shared-core/learned/rates.ts': value('#core/calculators/hand'),
        'shared-core/calculators/hand.ts': empty,
      },
    ],
  },
  'core-planner': {
    bad: [
      { 'shared-core/planner/dates.ts': types('#core/cutting/plan'), 'shared-core/cutting/plan.ts': empty },
    ],
    good: [{ 'shared-core/planner/dates.ts': value('#core/units/days'), 'shared-core/units/days.ts': empty }],
  },
  'core-stash': {
    bad: [
      { 'shared-core/stash/cost.ts': types('#core/contract/stash'), 'shared-core/contract/stash.ts': empty },
      {
        'shared-core/stash/cost.ts': types('#core/calculators/yards'),
        'shared-core/calculators/yards.ts': empty,
      },
    ],
    good: [
      { 'shared-core/stash/cost.ts': value('#core/domain/stash'), 'shared-core/domain/stash.ts': empty },
    ],
  },
  'core-cutting-list': {
    bad: [
      {
        'shared-core/cutting-list/read.ts': types('#core/calculators/yards'),
        'shared-core/calculators/yards.ts': empty,
      },
    ],
    good: [
      {
        'shared-core/cutting-list/read.ts': value('#core/units/length'),
        'shared-core/units/length.ts': empty,
      },
    ],
  },
  'core-fabric-choice': {
    bad: [
      {
        'shared-core/fabric-choice/best.ts': types('#core/contract/stash'),
        'shared-core/contract/stash.ts': empty,
      },
    ],
    good: [
      {
        'shared-core/fabric-choice/best.ts': value('#core/cutting/plan'),
        'shared-core/cutting/plan.ts': empty,
      },
    ],
  },
  'core-calendar-file': {
    bad: [
      {
        'shared-core/calendar-file/write.ts': types('#core/planner/plan'),
        'shared-core/planner/plan.ts': empty,
      },
    ],
    good: [
      {
        'shared-core/calendar-file/write.ts': value('#core/units/days'),
        'shared-core/units/days.ts': empty,
      },
    ],
  },
  'core-contract': {
    bad: [
      {
        'shared-core/contract/stash.ts': types('#core/calculators/yards'),
        'shared-core/calculators/yards.ts': empty,
      },
      {
        'shared-core/contract/dates.ts': types('#core/planner/plan-dates'),
        'shared-core/planner/plan-dates.ts': empty,
      },
    ],
    good: [
      {
        'shared-core/contract/dates.ts': types('#core/planner/schedule'),
        'shared-core/planner/schedule.ts': empty,
      },
      { 'shared-core/contract/stash.ts': value('#core/domain/stash'), 'shared-core/domain/stash.ts': empty },
    ],
  },
  'checker-stands-alone': {
    bad: [
      {
        'shared-core/cutting/check/check-cut-plan.ts': types('../shelf-planner'),
        'shared-core/cutting/shelf-planner.ts': empty,
      },
    ],
    good: [
      {
        'shared-core/cutting/check/check-cut-plan.ts': types('../tree/cut-plan'),
        'shared-core/cutting/tree/cut-plan.ts': empty,
      },
    ],
  },
  'date-checker-stands-alone': {
    bad: [
      {
        'shared-core/planner/check-schedule.ts': types('./plan-dates'),
        'shared-core/planner/plan-dates.ts': empty,
      },
    ],
    good: [
      {
        'shared-core/planner/check-schedule.ts': types('./schedule'),
        'shared-core/planner/schedule.ts': empty,
      },
    ],
  },
  'planner-ignores-checker': {
    bad: [
      {
        'shared-core/cutting/shelf-planner.ts': value('./check/check-cut-plan'),
        'shared-core/cutting/check/check-cut-plan.ts': empty,
      },
    ],
  },
  'main-knows-no-page': {
    bad: [{ 'main/menu.ts': types('#renderer/text/words'), 'renderer/text/words.ts': empty }],
  },
  'store-without-electron': {
    bad: [
      { 'main/store/open.ts': node('electron') },
      { 'main/store/open.ts': types('../ipc/answer'), 'main/ipc/answer.ts': empty },
      { 'main/demo/fabric.ts': types('../window'), 'main/window.ts': empty },
    ],
    good: [{ 'main/store/open.ts': node('better-sqlite3') }],
  },
  'sql-in-store-only': {
    bad: [{ 'main/ipc/answer.ts': node('better-sqlite3') }, { 'main/session.ts': node('better-sqlite3') }],
  },
  'preload-is-thin': {
    bad: [
      { 'main/preload/preload.ts': node('node:path') },
      { 'main/preload/preload.ts': types('../store/stash'), 'main/store/stash.ts': empty },
    ],
    good: [
      { 'main/preload/preload.ts': node('electron') },
      {
        'main/preload/preload.ts': types('#core/contract/channels'),
        'shared-core/contract/channels.ts': empty,
      },
    ],
  },
  'preload-is-a-program': {
    bad: [{ 'main/window.ts': value('./preload/preload'), 'main/preload/preload.ts': empty }],
  },
  'setup-stands-alone': {
    bad: [{ 'main/setup/build.mjs': value('../window.ts'), 'main/window.ts': empty }],
  },
  'setup-stays-out': {
    bad: [
      { 'main/window.ts': value('./setup/paths.mjs'), 'main/setup/paths.mjs': 'export const thing = 1;' },
    ],
  },
  'command-line-without-window': {
    bad: [
      { 'main/command-line/calc.ts': node('electron') },
      { 'main/command-line/calc.ts': types('../store/stash'), 'main/store/stash.ts': empty },
    ],
    good: [
      { 'main/command-line/calc.ts': value('#core/domain/stash'), 'shared-core/domain/stash.ts': empty },
    ],
  },
  'renderer-is-sandboxed': {
    bad: [
      { 'renderer/bridge/call.ts': node('electron') },
      { 'renderer/bridge/call.ts': types('#main/preload/api'), 'main/preload/api.ts': empty },
    ],
  },
  'renderer-without-node': {
    bad: [{ 'renderer/ui/button.tsx': node('node:path') }, { 'renderer/ui/button.tsx': node('path') }],
  },
  'features-are-apart': {
    bad: [
      {
        'renderer/features/stash/list.tsx': types('#renderer/features/stage/list'),
        'renderer/features/stage/list.tsx': empty,
      },
    ],
    good: [
      { 'renderer/features/stash/list.tsx': value('./row'), 'renderer/features/stash/row.tsx': empty },
      { 'renderer/features/stash/list.tsx': value('#renderer/ui/button'), 'renderer/ui/button.tsx': empty },
    ],
  },
  'shared-knows-no-feature': {
    bad: [
      {
        'renderer/shared/trip-dialog.tsx': types('#renderer/features/stage/trip'),
        'renderer/features/stage/trip.tsx': empty,
      },
    ],
    good: [
      {
        'renderer/features/stage/trip.tsx': value('#renderer/shared/dialog'),
        'renderer/shared/dialog.tsx': empty,
      },
      { 'renderer/shared/dialog.tsx': value('#renderer/bridge/call'), 'renderer/bridge/call.ts': empty },
    ],
  },
  'app-composes': {
    bad: [
      { 'renderer/features/stash/list.tsx': types('#renderer/app/routes'), 'renderer/app/routes.tsx': empty },
    ],
    good: [{ 'renderer/main.tsx': value('./app/routes'), 'renderer/app/routes.tsx': empty }],
  },
  'ui-knows-no-data': {
    bad: [
      { 'renderer/ui/button.tsx': types('#renderer/bridge/call'), 'renderer/bridge/call.ts': empty },
      {
        'renderer/text/words.ts': types('#renderer/features/stash/row'),
        'renderer/features/stash/row.tsx': empty,
      },
      { 'renderer/ui/button.tsx': value('#renderer/shared/dialog'), 'renderer/shared/dialog.tsx': empty },
    ],
  },
  'words-without-controls': {
    bad: [{ 'renderer/text/words.ts': types('../ui/button'), 'renderer/ui/button.tsx': empty }],
    good: [{ 'renderer/ui/button.tsx': value('../text/words'), 'renderer/text/words.ts': empty }],
  },
  'bridge-is-plain': {
    bad: [{ 'renderer/bridge/call.ts': types('../ui/button'), 'renderer/ui/button.tsx': empty }],
  },
  'no-cycles': {
    bad: [{ 'main/one.ts': types('./two'), 'main/two.ts': types('./one') }],
  },
  'production-knows-no-test': {
    bad: [{ 'main/menu.ts': types('../test/helpers/launch'), 'test/helpers/launch.ts': empty }],
  },
  'tests-are-apart': {
    bad: [{ 'test/main/menu.test.ts': value('./window.test'), 'test/main/window.test.ts': empty }],
    good: [{ 'test/main/menu.test.ts': value('../helpers/launch'), 'test/helpers/launch.ts': empty }],
  },
  resolvable: { bad: [{ 'main/menu.ts': value('./nowhere') }] },
};

describe('the import rules', () => {
  test('each have a project here that breaks them, and advice for whoever does', () => {
    const rules = configuration.forbidden ?? [];
    expect(Object.keys(cases).sort()).toEqual(rules.map(({ name }) => name).sort());
    expect(rules.filter(({ comment = '' }) => comment.length < 30)).toEqual([]);
  });

  test.for(Object.entries(cases))('%s refuses what breaks it', async ([name, { bad }]) => {
    for (const files of bad) expect(await brokenRules(files), JSON.stringify(files)).toContain(name);
  });

  const kept = Object.entries(cases).filter(([, { good }]) => good !== undefined);
  test.for(kept)('%s lets pass what keeps it', async ([, { good = [] }]) => {
    for (const files of good) expect(await brokenRules(files), JSON.stringify(files)).toEqual([]);
  });
});
