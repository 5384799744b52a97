import { lazy, type ReactNode, Suspense } from 'react';
import { createHashRouter, type RouteObject, useParams, useSearchParams } from 'react-router';
import {
  type ContactId,
  contactId,
  type FabricId,
  fabricId,
  type ProjectId,
  projectId,
  type StageId,
  stageId,
} from '#core/domain/ids';
import { FaultPage, NotFoundPage } from './fault-page';
import { Frame } from './frame';
import { HomeRoute } from './home-route';

const ProjectsPage = lazy(async () => ({
  default: (await import('#renderer/features/projects/projects-page')).ProjectsPage,
}));
const NewProjectPage = lazy(async () => ({
  default: (await import('#renderer/features/projects/new-project-page')).NewProjectPage,
}));
const EditProjectPage = lazy(async () => ({
  default: (await import('#renderer/features/projects/edit-project-page')).EditProjectPage,
}));
const SpreadPage = lazy(async () => ({
  default: (await import('#renderer/features/projects/spread-page')).SpreadPage,
}));
const StagePage = lazy(async () => ({
  default: (await import('#renderer/features/stage/stage-page')).StagePage,
}));
const BoardPage = lazy(async () => ({
  default: (await import('#renderer/features/board/board-page')).BoardPage,
}));
const AwayPage = lazy(async () => ({
  default: (await import('#renderer/features/away/away-page')).AwayPage,
}));
const ContactPage = lazy(async () => ({
  default: (await import('#renderer/features/away/contact-page')).ContactPage,
}));
const DaysPage = lazy(async () => ({
  default: (await import('#renderer/features/days/days-page')).DaysPage,
}));
const StashPage = lazy(async () => ({
  default: (await import('#renderer/features/stash/stash-page')).StashPage,
}));
const BringInPage = lazy(async () => ({
  default: (await import('#renderer/features/stash/table/bring-in-page')).BringInPage,
}));
const TakeOutPage = lazy(async () => ({
  default: (await import('#renderer/features/stash/table/take-out-page')).TakeOutPage,
}));
const PlacesPage = lazy(async () => ({
  default: (await import('#renderer/features/stash/places/places-page')).PlacesPage,
}));
const KindsPage = lazy(async () => ({
  default: (await import('#renderer/features/stash/kinds/kinds-page')).KindsPage,
}));
const InsightPage = lazy(async () => ({
  default: (await import('#renderer/features/stash/insight/insight-page')).InsightPage,
}));
const ShoppingPage = lazy(async () => ({
  default: (await import('#renderer/features/stash/shopping/shopping-page')).ShoppingPage,
}));
const FabricPage = lazy(async () => ({
  default: (await import('#renderer/features/stash/fabric/fabric-page')).FabricPage,
}));
const CuttingPage = lazy(async () => ({
  default: (await import('#renderer/features/cutting/cutting-page')).CuttingPage,
}));
const WorkshopPage = lazy(async () => ({
  default: (await import('#renderer/features/workshop/workshop-page')).WorkshopPage,
}));
const SheetPage = lazy(async () => ({
  default: (await import('#renderer/features/sheets/sheet-page')).SheetPage,
}));

const pages: readonly RouteObject[] = [
  { index: true, element: <HomeRoute /> },
  { path: 'projects', element: <ProjectsPage /> },
  { path: 'projects/new', element: <NewProjectPage /> },
  {
    path: 'projects/:projectId',
    element: <OfProject>{(id) => <SpreadPage key={id} projectId={id} />}</OfProject>,
  },
  {
    path: 'projects/:projectId/edit',
    element: <OfProject>{(id) => <EditProjectPage key={id} projectId={id} />}</OfProject>,
  },
  {
    path: 'projects/:projectId/stages/:stageId',
    element: (
      <OfStage>{(project, stage) => <StagePage key={stage} projectId={project} stageId={stage} />}</OfStage>
    ),
  },
  {
    path: 'cutting',
    element: <OfSearchedProject>{(id) => <CuttingPage key={id} projectId={id} />}</OfSearchedProject>,
  },
  { path: 'board', element: <BoardPage /> },
  { path: 'out', element: <AwayPage /> },
  {
    path: 'out/:contactId',
    element: <OfContact>{(id) => <ContactPage key={id} contactId={id} />}</OfContact>,
  },
  { path: 'days', element: <DaysPage /> },
  { path: 'stash', element: <StashPage /> },
  { path: 'stash/bring-in', element: <BringInPage /> },
  { path: 'stash/take-out', element: <TakeOutPage /> },
  { path: 'stash/places', element: <PlacesPage /> },
  { path: 'stash/kinds', element: <KindsPage /> },
  { path: 'stash/insight', element: <InsightPage /> },
  { path: 'stash/:fabricId', element: <OfFabric>{(id) => <FabricPage key={id} fabricId={id} />}</OfFabric> },
  { path: 'shopping', element: <ShoppingPage /> },
  { path: 'workshop', element: <WorkshopPage /> },
  { path: '*', element: <NotFoundPage /> },
];

/** The places of the notebook. Sheets are drawn without the frame, for paper. */
export function makeRouter() {
  return createHashRouter([
    {
      path: '/',
      element: <Frame />,
      errorElement: <FaultPage />,
      children: [{ errorElement: <FaultPage />, children: [...pages] }],
    },
    {
      path: '/sheets/*',
      errorElement: <FaultPage />,
      element: (
        <Suspense fallback={null}>
          <SheetPage />
        </Suspense>
      ),
    },
  ]);
}

/** An address that names no project is a page that does not exist. */
function OfProject({ children }: { readonly children: (id: ProjectId) => ReactNode }) {
  const id = projectId.safeParse(useParams()['projectId']);
  return id.success ? children(id.data) : <NotFoundPage />;
}

/** A page of one project that may be about others too: `?project=ID` names the one it was opened from. */
function OfSearchedProject({ children }: { readonly children: (id: ProjectId) => ReactNode }) {
  const [search] = useSearchParams();
  const id = projectId.safeParse(search.get('project'));
  return id.success ? children(id.data) : <NotFoundPage />;
}

function OfStage({ children }: { readonly children: (project: ProjectId, stage: StageId) => ReactNode }) {
  const params = useParams();
  const [project, stage] = [projectId.safeParse(params['projectId']), stageId.safeParse(params['stageId'])];
  return project.success && stage.success ? children(project.data, stage.data) : <NotFoundPage />;
}

function OfFabric({ children }: { readonly children: (id: FabricId) => ReactNode }) {
  const id = fabricId.safeParse(useParams()['fabricId']);
  return id.success ? children(id.data) : <NotFoundPage />;
}

function OfContact({ children }: { readonly children: (id: ContactId) => ReactNode }) {
  const id = contactId.safeParse(useParams()['contactId']);
  return id.success ? children(id.data) : <NotFoundPage />;
}
