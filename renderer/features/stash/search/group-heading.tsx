import type { FabricGroup } from '#core/contract/stash';
import { pieceKindSchema } from '#core/domain/stash';
import type { StashGrouping } from '#core/domain/stash-filter';
import { KIND_WORDS } from '#renderer/features/stash/fabric-words';
import { useDisplay } from '#renderer/ui/base/display';
import styles from './search.module.css';

interface GroupHeadingProps {
  readonly by: StashGrouping;
  readonly group: FabricGroup;
  readonly isFolded: boolean;
  readonly onFold: () => void;
}

/** The name of a group and its number of fabrics. Pressing it closes or opens the group. */
export function GroupHeading({ by, group, isFolded, onFold }: GroupHeadingProps) {
  const { locale } = useDisplay();
  const count = new Intl.NumberFormat(locale).format(group.fabrics);
  return (
    <h2 className={styles['group']}>
      <button type="button" className={styles['groupButton']} aria-expanded={!isFolded} onClick={onFold}>
        <span aria-hidden className={styles['groupMark']}>
          {isFolded ? '+' : '−'}
        </span>
        <span className={styles['groupName']}>{groupName(by, group)}</span>
        <span className={styles['groupCount']}>
          {count} {group.fabrics === 1 ? 'fabric' : 'fabrics'}
        </span>
      </button>
    </h2>
  );
}

const NO_GROUP: Readonly<Record<StashGrouping, string>> = {
  place: 'No place',
  kind: 'Used up',
  color: 'No color',
  supplier: 'No shop',
};

function groupName(by: StashGrouping, { key, name }: FabricGroup): string {
  if (key === '') return NO_GROUP[by];
  if (by === 'kind') {
    const kind = pieceKindSchema.options.find((one) => one === key);
    return kind === undefined ? name : KIND_WORDS[kind].name;
  }
  return by === 'color' ? name.charAt(0).toUpperCase() + name.slice(1) : name;
}
