import type { KeptWithTicks } from '#core/cutting/tree/kept-plan';
import { fabricOf, type CuttingSetup } from '#core/domain/cutting-setup';
import { type FabricId, fabricId } from '#core/domain/ids';
import { settingsOfProject } from '#core/domain/workshop';
import { yardageStep } from '#core/units/format-length';
import { useWorkshop } from '#renderer/bridge/workshop';
import { useDisplay } from '#renderer/ui/base/display';
import type { Shelf } from './job-of-setup';
import { useFabricOnShelf, type WorkAtHand } from './use-work-at-hand';

/** What is on the shelf for a plan, with the fabrics it has begun to cut; undefined until it is read. */
export function useShelf(
  setup: CuttingSetup,
  work: WorkAtHand | undefined,
  kept: KeptWithTicks | null,
): Shelf | undefined {
  const { settings } = useWorkshop();
  const { length } = useDisplay();
  const begun = kept === null ? [] : begunFabrics(kept);
  const ids = [...new Set([...setup.lines.flatMap((line) => fabricOf(setup, line) ?? []), ...begun])];
  const fabrics = useFabricOnShelf(ids);
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

function begunFabrics({ plan, ticked }: KeptWithTicks): readonly FabricId[] {
  return plan.pieces
    .filter(({ pieceId }) => ticked.some((step) => step.pieceId === pieceId))
    .flatMap(({ fabric }) => {
      const id = fabricId.safeParse(fabric);
      return id.success ? [id.data] : [];
    });
}
