import { useRef } from 'react';
import type { CuttingWish } from '#core/domain/cutting-setup';
import { Button } from '#renderer/ui/page/button';
import { WISH_WORDS } from '../planning/cutting-plan-words';
import layout from '#renderer/ui/page/layout.module.css';
import desk from './desk.module.css';
import styles from './wish-order.module.css';

interface WishOrderProps {
  readonly wishes: readonly CuttingWish[];
  readonly onChange: (wishes: readonly CuttingWish[]) => void;
}

/** The order of what matters most. Moving a wish up takes the focus along with it. */
export function WishOrder({ wishes, onChange }: WishOrderProps) {
  const list = useRef<HTMLOListElement>(null);
  const moveUp = (index: number) => {
    const [above, wish] = [wishes[index - 1], wishes[index]];
    if (above === undefined || wish === undefined) return;
    onChange(wishes.toSpliced(index - 1, 2, wish, above));
    const buttons = list.current?.querySelectorAll('button');
    buttons?.[Math.max(0, index - 2)]?.focus();
  };
  return (
    <fieldset>
      <legend className={layout['legend']}>What matters most, first</legend>
      <ol ref={list} className={styles['wishes']}>
        {wishes.map((wish, index) => (
          <li key={wish} className={styles['wish']}>
            <span className={desk['letter']}>{index + 1}</span>
            <span>{WISH_WORDS[wish]}</span>
            {index > 0 && (
              <Button
                look="quiet"
                isSmall
                aria-label={`Move up: ${WISH_WORDS[wish]}`}
                onClick={() => moveUp(index)}
              >
                Move up
              </Button>
            )}
          </li>
        ))}
      </ol>
    </fieldset>
  );
}
