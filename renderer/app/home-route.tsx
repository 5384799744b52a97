import { useOpening } from '#renderer/bridge/workshop';
import { BenchPage } from '#renderer/features/bench/bench-page';
import { OpeningPage } from '#renderer/features/opening/opening-page';

/** The bench; for a notebook in which nothing has been written yet, the choice of how to begin. */
export function HomeRoute() {
  const opening = useOpening();
  if (opening === undefined) return null;
  return opening.isEmpty && !opening.isDemo ? <OpeningPage workshop={opening.workshop} /> : <BenchPage />;
}
