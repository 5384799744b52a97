import { TypesetSvg } from '../answers/typeset';
import styles from './diagram.module.css';

interface HaloTextProps {
  readonly at: { readonly x: number; readonly y: number };
  readonly text: string;
  readonly anchor?: 'start' | 'middle' | 'end';
  readonly transform?: string;
}

/** Words on a drawing with a rim of paper around them. The whole rim is drawn first, or it would cut into a fraction. */
export function HaloText({ at, text, anchor = 'middle', transform }: HaloTextProps) {
  const shared = { x: at.x, y: at.y, textAnchor: anchor, dominantBaseline: 'central', transform } as const;
  return (
    <>
      <text {...shared} className={styles['halo']} aria-hidden="true">
        <TypesetSvg text={text} />
      </text>
      <text {...shared} className={styles['words']}>
        <TypesetSvg text={text} />
      </text>
    </>
  );
}
