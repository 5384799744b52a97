import { type ReactNode, useId } from 'react';
import layout from '#renderer/ui/page/layout.module.css';

interface LineSectionProps {
  readonly title: string;
  /** The lines, each an `li`. */
  readonly children: ReactNode;
}

/** A titled list of lines. */
export function LineSection({ title, children }: LineSectionProps) {
  const titleId = useId();
  return (
    <section aria-labelledby={titleId}>
      <h2 id={titleId} className={layout['heading']}>
        {title}
      </h2>
      <ul className={layout['lines']}>{children}</ul>
    </section>
  );
}
