import { useId } from 'react';
import type { CenterTemplate, TemplatePage } from '#core/calculators/center/center-template/center-template';
import type { Length } from '#core/units/length';
import { LengthText } from '#renderer/ui/answers/typeset';
import { TemplateParts } from './template-parts';
import styles from './template.module.css';

interface TemplatePageProps {
  readonly template: CenterTemplate;
  readonly page: TemplatePage;
  readonly pieceName: string;
  readonly diameter: Length;
  readonly seamAllowance: Length;
  readonly part: 'whole' | 'quarter';
}

const UNITS_PER_MM = 320;

/** The printed page is a hair narrower than the paper's name says; what reached over it would shrink the whole sheet. */
const HAIR_MM = 0.4;

/** One sheet of the template, in millimeters that stay millimeters: drawn whole, clipped to the page. */
export function TemplatePageView(props: TemplatePageProps) {
  const { template, page } = props;
  const clipId = useId();
  const [width, height] = [page.width / UNITS_PER_MM, page.height / UNITS_PER_MM];
  const { window } = page;
  return (
    <section
      className={styles['page']}
      style={{ width: mm(width - HAIR_MM), height: mm(height - HAIR_MM) }}
      aria-label={`Sheet ${page.name}`}
    >
      <svg
        className={styles['drawing']}
        style={{ width: mm(width), height: mm(height) }}
        viewBox={`0 0 ${String(page.width)} ${String(page.height)}`}
        role="img"
        aria-label={`Template of the hole, sheet ${page.name}`}
      >
        <clipPath id={clipId}>
          <rect x={window.x} y={window.y} width={window.width} height={window.height} />
        </clipPath>
        <g clipPath={`url(#${clipId})`}>
          <g transform={`translate(${String(page.shift.x)} ${String(page.shift.y)})`}>
            <TemplateParts parts={template.parts} />
          </g>
        </g>
        <TemplateParts parts={page.marks} />
      </svg>
      <TemplateWords {...props} />
    </section>
  );
}

/** At the foot, beside the squares: what this is, which line is which, and how to check and join it. */
function TemplateWords({ template, pieceName, diameter, seamAllowance, part }: TemplatePageProps) {
  return (
    <div className={styles['foot']}>
      <p className={styles['what']}>
        <strong>{pieceName}</strong>: hole <LengthText length={diameter} /> across
        {part === 'quarter' && ', a quarter'}
      </p>
      <p className={styles['key']}>
        <span>
          <Stroke tone="cut" />
          cut
        </span>
        <span>
          <Stroke tone="seam" />
          seam, <LengthText length={seamAllowance} /> outside: stay-stitch first
        </span>
      </p>
      <p>
        Print at 100 %, not fitted to the page. Measure both squares first: if they are off, do not cut by
        this sheet.
        {template.pages.length > 1 && ' Join sheets cross on cross, at the dotted lines.'}
        {part === 'quarter' && ' Fold the piece twice and lay the corner on the folded corner.'}
      </p>
    </div>
  );
}

function Stroke({ tone }: { readonly tone: 'cut' | 'seam' }) {
  return (
    <svg width="34" height="6" viewBox="0 0 2880 508" aria-hidden="true">
      <TemplateParts parts={[{ part: 'line', from: { x: 0, y: 254 }, to: { x: 2880, y: 254 }, tone }]} />
    </svg>
  );
}

function mm(size: number): string {
  return `${String(size)}mm`;
}
