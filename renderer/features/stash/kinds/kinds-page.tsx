import { useState } from 'react';
import { measureOfKind, type StashKind } from '#core/domain/stash-kind';
import type { LengthDisplay } from '#core/units/unit-system';
import { useRead, useWrite } from '#renderer/bridge/query';
import { pieceSize } from '#renderer/features/stash/fabric-words';
import styles from '#renderer/features/stash/places/places.module.css';
import { Button } from '#renderer/ui/page/button';
import { useDisplay } from '#renderer/ui/base/display';
import { Page } from '#renderer/ui/page/page';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { Typeset } from '#renderer/ui/answers/typeset';
import { formatLength } from '#core/units/format-length';
import { KindDialog } from './kind-dialog';

/** The kinds of things in the stash, in the maker's words, each with the size it usually has. */
export function KindsPage() {
  const { value: kinds, problem } = useRead('kind:list', {});
  const [asked, setAsked] = useState<StashKind | 'new' | null>(null);
  const keeping = useWrite('kind:keep');
  const deleting = useWrite('kind:delete');
  const hide = ({ id, ...details }: StashKind) =>
    void keeping.write({ kindId: id, details: { ...details, isHidden: !details.isHidden } });
  return (
    <Page
      title="Kinds"
      under="What a piece can be, and the size it usually has. What is put away is no longer offered."
      back={{ to: '/stash', words: 'Stash' }}
      action={
        <Button look="main" onClick={() => setAsked('new')}>
          Add a kind
        </Button>
      }
    >
      <ProblemNotice problem={problem ?? keeping.problem ?? deleting.problem} />
      <ul className={styles['places']} aria-label="Kinds">
        {kinds?.map((kind) => (
          <KindLine
            key={kind.id}
            kind={kind}
            onChange={() => setAsked(kind)}
            onHide={() => hide(kind)}
            onDelete={() => void deleting.write({ kindId: kind.id })}
          />
        ))}
      </ul>
      {asked !== null && <KindDialog kind={asked === 'new' ? null : asked} onClose={() => setAsked(null)} />}
    </Page>
  );
}

interface KindLineProps {
  readonly kind: StashKind;
  readonly onChange: () => void;
  readonly onHide: () => void;
  readonly onDelete: () => void;
}

function KindLine({ kind, onChange, onHide, onDelete }: KindLineProps) {
  const display = useDisplay().length;
  return (
    <li className={styles['kind']} data-is-hidden={kind.isHidden}>
      <span className={styles['name']}>
        <Typeset text={kind.name} />
      </span>
      <span className={styles['count']}>
        <Typeset text={kind.isHidden ? 'put away' : usualWords(kind, display)} />
      </span>
      <span className={styles['actions']}>
        <Button look="quiet" isSmall aria-label={`Change ${kind.name}`} onClick={onChange}>
          Change
        </Button>
        <Button
          look="quiet"
          isSmall
          aria-label={`${kind.isHidden ? 'Offer' : 'Put away'} ${kind.name}`}
          onClick={onHide}
        >
          {kind.isHidden ? 'Offer again' : 'Put away'}
        </Button>
        <Button look="quiet" isSmall aria-label={`Delete ${kind.name}`} onClick={onDelete}>
          Delete
        </Button>
      </span>
    </li>
  );
}

/** `42 × 2½ in, 40 together`. */
function usualWords({ form, width, length, count }: StashKind, display: LengthDisplay): string {
  const measure = measureOfKind(form);
  if (measure === 'count')
    return count === null || count === 1 ? 'counted' : `counted, ${String(count)} together`;
  const size =
    width !== null && length !== null
      ? pieceSize({ width, length }, display)
      : width === null
        ? 'any size'
        : `${formatLength(width, display)} wide`;
  return measure === 'pack' && count !== null ? `${size}, ${String(count)} together` : size;
}
