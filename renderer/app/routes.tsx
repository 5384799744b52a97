import { type ComponentType, createElement, lazy, Suspense } from 'react';
import { createHashRouter, type RouteObject, useParams } from 'react-router';
import { type Screen, SCREENS } from '#core/contract/screens';
import { contactIdSchema, fabricIdSchema, projectIdSchema, stageIdSchema } from '#core/domain/ids';
import { FaultPage, NotFoundPage } from './fault-page';
import { Frame } from './frame';
import { HomeRoute } from './home-route';

/** The ids an address can hold, by their name in it. */
const IDS = {
  projectId: projectIdSchema,
  stageId: stageIdSchema,
  contactId: contactIdSchema,
  fabricId: fabricIdSchema,
} as const;

type Ids = Readonly<Partial<Record<keyof typeof IDS, string>>>;

/** Every file of a feature that is a page, loaded when it is first opened. */
const pageFiles = import.meta.glob<Readonly<Record<string, ComponentType<Ids>>>>('../features/**/*-page.tsx');

/** The component of a page, by its file below `features`. Throws for a page that is not there. */
export async function loadPage(page: string): Promise<ComponentType<Ids>> {
  const file = await pageFiles[`../features/${page}.tsx`]?.();
  const component = file?.[componentName(page)];
  if (component === undefined) throw new Error(`There is no page ${page}`);
  return component;
}

/** The addresses of the notebook. Sheets are drawn without the frame, for paper. */
export function makeRouter() {
  return createHashRouter([
    {
      path: '/',
      element: <Frame />,
      errorElement: <FaultPage />,
      children: [
        {
          errorElement: <FaultPage />,
          children: [...SCREENS.map(routeOf), { path: '*', element: <NotFoundPage /> }],
        },
      ],
    },
    {
      path: '/sheets/*',
      errorElement: <FaultPage />,
      element: <Suspense fallback={null}>{createElement(lazyPage('sheets/sheet-page'))}</Suspense>,
    },
  ]);
}

function routeOf(screen: Screen): RouteObject {
  if (screen.path === '') return { index: true, element: <HomeRoute /> };
  return { path: screen.path, element: <ScreenPage path={screen.path} page={lazyPage(screen.page)} /> };
}

interface ScreenPageProps {
  readonly path: string;
  readonly page: ComponentType<Ids>;
}

/** Hands a page the ids of its address. An address whose id cannot be one is a page that does not exist. */
function ScreenPage({ path, page }: ScreenPageProps) {
  const ids = readIds(path, useParams());
  if (ids === null) return <NotFoundPage />;
  // A page of another project starts afresh.
  return createElement(page, { key: Object.values(ids).join(' '), ...ids });
}

function readIds(path: string, params: Readonly<Partial<Record<string, string>>>): Ids | null {
  const ids: Partial<Record<keyof typeof IDS, string>> = {};
  for (const name of Object.keys(IDS) as (keyof typeof IDS)[]) {
    if (!path.includes(`:${name}`)) continue;
    const read = IDS[name].safeParse(params[name]);
    if (!read.success) return null;
    ids[name] = read.data;
  }
  return ids;
}

function lazyPage(page: string): ComponentType<Ids> {
  return lazy(async () => ({ default: await loadPage(page) }));
}

/** `stash/places/places-page` to `PlacesPage`. */
function componentName(page: string): string {
  const words = page.slice(page.lastIndexOf('/') + 1).split('-');
  return words.map((word) => word.charAt(0).toUpperCase() + word.slice(1)).join('');
}
