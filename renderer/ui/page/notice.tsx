import type { ReactNode } from 'react';
import type { Note } from '#core/calculators/explanation';
import { classes } from '../base/classes';
import { SentenceText } from '../answers/typeset';
import styles from './notice.module.css';

const WORDS: Readonly<Record<Note['kind'], string>> = {
  caution: 'Take care',
  warning: 'Mind',
  tip: 'Good to know',
};

interface NoticeProps {
  /** caution: somebody may be hurt; warning: the piece may be; tip: good to know. */
  readonly kind: Note['kind'];
  readonly title?: string;
  readonly children: ReactNode;
}

/** A few sentences set apart, their weight said in words as well as in color. */
export function Notice({ kind, title = WORDS[kind], children }: NoticeProps) {
  return (
    <div className={classes(styles['notice'], styles[kind])} role="note">
      <strong className={styles['kind']}>{title}</strong>
      <div>{children}</div>
    </div>
  );
}

const ORDER: readonly Note['kind'][] = ['caution', 'warning', 'tip'];

/** The notes of a calculation, each kind set apart once, those that protect somebody first. */
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
