import type { JobPlan } from '#core/cutting/tree/cutting-job';
import type { CuttingSetup } from '#core/domain/cutting-setup';
import { patchLabel } from '#renderer/text/cut-words';
import { sizeWords } from '#renderer/text/size-words';
import { useDisplay } from '#renderer/ui/base/display';
import { Notice } from '#renderer/ui/page/notice';
import { Typeset } from '#renderer/ui/answers/typeset';
import { helpWords, unplacedWords } from '../planning/cutting-plan-words';

/** Patches that no plan can place, each with the reason and what would help; nothing when all are placed. */
export function Unplaced({ plan, setup }: { readonly plan: JobPlan; readonly setup: CuttingSetup }) {
  const { length } = useDisplay();
  if (plan.unplaced.length === 0) return null;
  return (
    <Notice kind="warning" title="Can’t be cut">
      {plan.unplaced.map((one) => {
        const index = setup.lines.findIndex(({ id }) => id === one.patch);
        const line = setup.lines[index];
        if (line === undefined) return null;
        const what = `${patchLabel(index)}, ${String(one.copies)} of ${sizeWords(line, length)}`;
        return (
          <p key={one.patch}>
            <Typeset text={`${what}: ${unplacedWords(one.reason)}. ${helpWords(one.helps, length)}`} />
          </p>
        );
      })}
    </Notice>
  );
}
