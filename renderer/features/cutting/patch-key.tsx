import type { CuttingSetup } from '#core/domain/cutting-setup';
import { patchLabel, sizeWords } from '#renderer/text/cut-words';
import { useDisplay } from '#renderer/ui/display';
import { Typeset } from '#renderer/ui/typeset';
import styles from './table.module.css';

/** What each letter stands for. */
export function PatchKey({ setup }: { readonly setup: CuttingSetup }) {
  const { length } = useDisplay();
  return (
    <ul className={styles['key']} aria-label="Patches">
      {setup.lines.map((line, index) => (
        <li key={line.id}>
          <strong>{patchLabel(index)}</strong>{' '}
          <Typeset text={`${String(line.count)} of ${sizeWords(line, length)}, ${line.fabric}`} />
        </li>
      ))}
    </ul>
  );
}
