import type { CuttingSetup } from '#core/domain/cutting-setup';
import { counted } from '#renderer/text/cut-words';
import { Checkbox } from '#renderer/ui/fields/checkbox';
import { Button } from '#renderer/ui/page/button';
import layout from '#renderer/ui/page/layout.module.css';
import { copiesIn, type PatchSource } from './patch-sources';
import { isBehind, isTaken, withoutSource, withSource } from './setup-changes';

interface PatchSourceRowProps {
  readonly source: PatchSource;
  readonly setup: CuttingSetup;
  readonly onChange: (setup: CuttingSetup) => void;
}

/** A saved answer with a list of patches, which the plan uses or not. */
export function PatchSourceRow({ source, setup, onChange }: PatchSourceRowProps) {
  const patches = counted(copiesIn(source.patches), 'patch', 'patches');
  return (
    <div>
      <Checkbox
        label={`${source.title}, saved with “${source.stageName}”: ${patches}`}
        isChecked={isTaken(setup, source)}
        help={source.isOld ? 'The project has changed since. Save the answer again on its stage.' : undefined}
        onChange={(isChecked) =>
          onChange(isChecked ? withSource(setup, source) : withoutSource(setup, source))
        }
      />
      {isBehind(setup, source) && (
        <p className={layout['quiet']}>
          There’s a newer version of this list.{' '}
          <Button look="quiet" isSmall onClick={() => onChange(withSource(setup, source))}>
            Use the new list
          </Button>
        </p>
      )}
    </div>
  );
}
