import type { KeptWithTicks } from '#core/cutting/tree/kept-plan';
import { fabricOf, type CuttingSetup } from '#core/domain/cutting-setup';
import { type FabricId, fabricIdSchema } from '#core/domain/ids';
import { settingsOfProject } from '#core/domain/workshop';
import { yardageStep } from '#core/units/format-length';
import { useWorkshop } from '#renderer/bridge/workshop';
import { useDisplay } from '#renderer/ui/base/display';
import type { PlanStash } from './job-of-setup';
import { useFabricsInStash, type WorkAtHand } from './use-work-at-hand';

/** The part of the stash that a plan may use, with the fabrics it has already cut into; undefined until it is read. */
export function usePlanStash(
  setup: CuttingSetup,
  work: WorkAtHand | undefined,
  saved: KeptWithTicks | null,
): PlanStash | undefined {
  const { settings } = useWorkshop();
  const { length } = useDisplay();
  const started = saved === null ? [] : startedFabrics(saved);
  const ids = [...new Set([...setup.lines.flatMap((line) => fabricOf(setup, line) ?? []), ...started])];
  const fabrics = useFabricsInStash(ids);
  const lead = work?.spreads[0]?.project;
  if (work === undefined || fabrics === undefined) return undefined;
  const usual = lead === undefined ? settings : settingsOfProject(settings, lead.settingChanges);
  return {
    fabrics,
    ownHolds: work.ownHolds,
    usualWidth: usual.fabricWidth,
    lengthStep: yardageStep(length),
  };
}

function startedFabrics({ plan, ticked }: KeptWithTicks): readonly FabricId[] {
  return plan.pieces
    .filter(({ pieceId }) => ticked.some((step) => step.pieceId === pieceId))
    .flatMap(({ fabric }) => {
      const id = fabricIdSchema.safeParse(fabric);
      return id.success ? [id.data] : [];
    });
}
