import type { CuttingSetup } from '#core/domain/cutting-setup';
import { patchLabel } from '#renderer/text/cut-words';
import { sizeWords } from '#renderer/text/size-words';
import { useDisplay } from '../base/display';
import { Typeset } from '../answers/typeset';

interface PatchKeyProps extends Pick<CuttingSetup, 'lines'> {
  readonly className: string | undefined;
}

/** The patch that each letter of a cutting plan means. */
export function PatchKey({ lines, className }: PatchKeyProps) {
  const { length } = useDisplay();
  return (
    <ul className={className} aria-label="Patches">
      {lines.map((line, index) => (
        <li key={line.id}>
          <strong>{patchLabel(index)}</strong>{' '}
          <Typeset text={`${String(line.count)} of ${sizeWords(line, length)}, ${line.fabric}`} />
        </li>
      ))}
    </ul>
  );
}
