import { useOpening } from '#renderer/bridge/workshop';
import { BenchPage } from '#renderer/features/bench/bench-page';
import { OpeningPage } from '#renderer/features/opening/opening-page';

/** The bench, or in an empty notebook the choice of how to start. */
export function HomeRoute() {
  const opening = useOpening();
  if (opening === undefined) return null;
  return opening.isEmpty && !opening.isDemo ? <OpeningPage workshop={opening.workshop} /> : <BenchPage />;
}
