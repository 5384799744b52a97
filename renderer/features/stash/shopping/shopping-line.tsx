import { Link } from 'react-router';
import type { SavedShoppingLine } from '#core/domain/shopping';
import type { FabricNeed } from '#core/stash/shopping/fabric-need';
import type { LineShare, ShoppingLine } from '#core/stash/shopping/shopping-list';
import { amountToBuy, nameToBuy, shareWords, sizeToBuy, whichFits } from '#renderer/text/shopping-words';
import { Button } from '#renderer/ui/page/button';
import { useDisplay } from '#renderer/ui/base/display';
import layout from '#renderer/ui/page/layout.module.css';
import { Typeset } from '#renderer/ui/answers/typeset';
import styles from './shopping.module.css';

interface NeededLineProps {
  readonly line: ShoppingLine;
  readonly onBuy: () => void;
  readonly onChoose: (need: FabricNeed) => void;
  readonly onLeaveOut: (need: FabricNeed) => void;
}

/** One thing to buy for open projects: how much, of which fabric, and what each project needs of it. */
export function NeededLine({ line, onBuy, onChoose, onLeaveOut }: NeededLineProps) {
  const { length } = useDisplay();
  const { fabric, shares } = line;
  const name = nameToBuy(line);
  return (
    <li className={styles['line']}>
      <p className={styles['amount']}>
        <Typeset text={amountToBuy(line, length)} />
      </p>
      <div className={styles['words']}>
        <p className={layout['name']}>
          {fabric === null ? (
            name
          ) : (
            <>
              <span className={styles['swatch']} style={{ backgroundColor: fabric.swatch }} />
              <Link to={`/stash/${fabric.id}`} className={styles['fabricLink']}>
                {name}
              </Link>
            </>
          )}
        </p>
        <p className={layout['quiet']}>
          <Typeset text={sizeToBuy(line, length)} />
        </p>
        <ul className={styles['shares']}>
          {shares.map((share) => (
            <li key={`${share.need.projectId} ${share.need.source} ${share.need.name}`}>
              <Share
                share={share}
                isOneOfSeveral={shares.length > 1}
                onChoose={onChoose}
                onLeaveOut={onLeaveOut}
              />
            </li>
          ))}
        </ul>
      </div>
      <Button aria-label={`Bought: ${name}`} onClick={onBuy}>
        Bought
      </Button>
    </li>
  );
}

interface ShareProps extends Pick<NeededLineProps, 'onChoose' | 'onLeaveOut'> {
  readonly share: LineShare;
  readonly isOneOfSeveral: boolean;
}

function Share({ share, isOneOfSeveral, onChoose, onLeaveOut }: ShareProps) {
  const { length } = useDisplay();
  const { need } = share;
  const described = `${need.name} for ${need.projectName}`;
  const to =
    need.stageId === null
      ? `/projects/${need.projectId}`
      : `/projects/${need.projectId}/stages/${need.stageId}`;
  return (
    <>
      <span>
        <Link to={to}>{need.projectName}</Link>
        <Typeset text={`: ${shareWords(share, isOneOfSeveral, length)}`} />
      </span>
      <Button
        look="quiet"
        isSmall
        aria-label={`${whichFits(need)}: ${described}`}
        onClick={() => onChoose(need)}
      >
        {whichFits(need)}
      </Button>
      <Button look="quiet" isSmall aria-label={`Leave out: ${described}`} onClick={() => onLeaveOut(need)}>
        Leave out
      </Button>
    </>
  );
}

interface OwnLineProps {
  readonly line: SavedShoppingLine;
  readonly onBuy: () => void;
  readonly onChange: () => void;
  readonly onDelete: () => void;
}

/** A line the maker added. */
export function OwnLine({ line, onBuy, onChange, onDelete }: OwnLineProps) {
  const { words, howMuch, projectId, projectName } = line;
  return (
    <li className={styles['line']}>
      <p className={styles['amount']}>{howMuch}</p>
      <div className={styles['words']}>
        <p className={layout['name']}>{words}</p>
        <div className={styles['shares']}>
          {projectId !== null && projectName !== null && (
            <Link to={`/projects/${projectId}`}>{projectName}</Link>
          )}
          <Button look="quiet" isSmall aria-label={`Change ${words}`} onClick={onChange}>
            Change
          </Button>
          <Button look="quiet" isSmall aria-label={`Delete ${words}`} onClick={onDelete}>
            Delete
          </Button>
        </div>
      </div>
      <Button aria-label={`Bought: ${words}`} onClick={onBuy}>
        Bought
      </Button>
    </li>
  );
}
