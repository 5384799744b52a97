import { useState } from 'react';
import { measureOfKind, type StashKind } from '#core/domain/stash-kind';
import type { LengthDisplay } from '#core/units/unit-system';
import { useRead, useWrite } from '#renderer/bridge/query';
import { pieceSize } from '#renderer/features/stash/fabric-words';
import { Button } from '#renderer/ui/page/button';
import { classes } from '#renderer/ui/base/classes';
import { useDisplay } from '#renderer/ui/base/display';
import layout from '#renderer/ui/page/layout.module.css';
import { Page } from '#renderer/ui/page/page';
import { ProblemNotice } from '#renderer/ui/page/problem-notice';
import { Typeset } from '#renderer/ui/answers/typeset';
import { formatLength } from '#core/units/format-length';
import styles from './kinds.module.css';
import { KindDialog } from './kind-dialog';

/** The maker's kinds of fabric and other things in the stash, each with its usual size. */
export function KindsPage() {
  const { value: kinds, problem } = useRead('kind:list', {});
  const [edited, setEdited] = useState<StashKind | 'new' | null>(null);
  const saving = useWrite('kind:save');
  const deleting = useWrite('kind:delete');
  const hide = ({ id, ...details }: StashKind) =>
    void saving.write({ kindId: id, details: { ...details, isHidden: !details.isHidden } });
  return (
    <Page
      title="Kinds"
      under="The kinds of fabric and supplies you keep, with their usual sizes. A hidden kind is no longer offered."
      back={{ to: '/stash', words: 'Stash' }}
      action={
        <Button look="main" onClick={() => setEdited('new')}>
          Add a kind
        </Button>
      }
    >
      <ProblemNotice problem={problem ?? saving.problem ?? deleting.problem} />
      <ul className={classes(layout['lines'], styles['kinds'])} aria-label="Kinds">
        {kinds?.map((kind) => (
          <KindLine
            key={kind.id}
            kind={kind}
            onChange={() => setEdited(kind)}
            onHide={() => hide(kind)}
            onDelete={() => void deleting.write({ kindId: kind.id })}
          />
        ))}
      </ul>
      {edited !== null && (
        <KindDialog kind={edited === 'new' ? null : edited} onClose={() => setEdited(null)} />
      )}
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
      <span className={layout['quiet']}>
        <Typeset text={kind.isHidden ? 'hidden' : usualWords(kind, display)} />
      </span>
      <span className={layout['row']}>
        <Button look="quiet" isSmall aria-label={`Change ${kind.name}`} onClick={onChange}>
          Change
        </Button>
        <Button
          look="quiet"
          isSmall
          aria-label={`${kind.isHidden ? 'Show' : 'Hide'} ${kind.name}`}
          onClick={onHide}
        >
          {kind.isHidden ? 'Show' : 'Hide'}
        </Button>
        <Button look="quiet" isSmall aria-label={`Delete ${kind.name}`} onClick={onDelete}>
          Delete
        </Button>
      </span>
    </li>
  );
}

/** `42 × 2½ in, pack of 40`. */
function usualWords({ form, width, length, count }: StashKind, display: LengthDisplay): string {
  const measure = measureOfKind(form);
  if (measure === 'count')
    return count === null || count === 1 ? 'counted' : `counted, pack of ${String(count)}`;
  const size =
    width !== null && length !== null
      ? pieceSize({ width, length }, display)
      : width === null
        ? 'any size'
        : `${formatLength(width, display)} wide`;
  return measure === 'pack' && count !== null ? `${size}, pack of ${String(count)}` : size;
}
