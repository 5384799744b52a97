import { CAUTIONS } from '#core/domain/cautions';
import layout from '#renderer/ui/page/layout.module.css';
import { Notice } from '#renderer/ui/page/notice';

/** The safe-sleep caution, shown for a kind that is a crib size by its name, such as `Batting, crib package`. */
export function CribCaution({ kindName }: { readonly kindName: string }) {
  if (!/\b(?:crib|baby)\b/iu.test(kindName)) return null;
  return (
    <div className={layout['whole']}>
      <Notice kind="caution">{CAUTIONS.crib}</Notice>
    </div>
  );
}
