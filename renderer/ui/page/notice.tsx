import type { ReactNode } from 'react';
import type { Note } from '#core/calculators/explanation';
import { classes } from '../base/classes';
import { SentenceText } from '../answers/typeset';
import styles from './notice.module.css';

const WORDS: Readonly<Record<Note['kind'], string>> = {
  caution: 'Caution',
  warning: 'Watch out',
  tip: 'Good to know',
};

interface NoticeProps {
  /** caution: someone may be hurt; warning: the project may be damaged; tip: good to know. */
  readonly kind: Note['kind'];
  readonly title?: string;
  readonly children: ReactNode;
}

/** A few sentences set apart. Their kind is named in words, not only by color. */
export function Notice({ kind, title = WORDS[kind], children }: NoticeProps) {
  return (
    <div className={classes(styles['notice'], styles[kind])} role="note">
      <strong className={styles['kind']}>{title}</strong>
      <div>{children}</div>
    </div>
  );
}

const ORDER: readonly Note['kind'][] = ['caution', 'warning', 'tip'];

/** The notes of a calculation, one notice for each kind, cautions first. */
export function Notes({ notes }: { readonly notes: readonly Note[] }) {
  return ORDER.map((kind) => {
    const ofKind = notes.filter((note) => note.kind === kind);
    if (ofKind.length === 0) return null;
    return (
      <Notice key={kind} kind={kind}>
        {ofKind.map((note) => (
          <p key={note.says}>
            <SentenceText sentence={note} />
          </p>
        ))}
      </Notice>
    );
  });
}
