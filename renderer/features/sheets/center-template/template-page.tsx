import { useId } from 'react';
import type { CenterTemplate, TemplatePage } from '#core/calculators/center/center-template/center-template';
import { CAUTIONS } from '#core/domain/cautions';
import type { Length } from '#core/units/length';
import { LengthText } from '#renderer/ui/answers/typeset';
import { cssMillimeters, PaperPage } from '../paper/paper-page';
import { TemplateParts } from './template-parts';
import styles from './template.module.css';

interface TemplatePageProps {
  readonly template: CenterTemplate;
  readonly page: TemplatePage;
  readonly projectName: string;
  readonly diameter: Length;
  readonly seamAllowance: Length;
  readonly part: 'whole' | 'quarter';
}

/** One page of the template at true size: the whole template is drawn and clipped to the page. */
export function TemplatePageView(props: TemplatePageProps) {
  const { template, page } = props;
  const clipId = useId();
  const { width, height, window } = page;
  return (
    <PaperPage width={width} height={height} label={`Sheet ${page.name}`}>
      <svg
        className={styles['drawing']}
        style={{ width: cssMillimeters(width), height: cssMillimeters(height) }}
        viewBox={`0 0 ${String(width)} ${String(height)}`}
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
    </PaperPage>
  );
}

/** At the bottom, beside the test squares: what this is, which line is which, and how to check, join and use it. */
function TemplateWords({ template, projectName, diameter, seamAllowance, part }: TemplatePageProps) {
  return (
    <div className={styles['foot']}>
      <p className={styles['what']}>
        <strong>{projectName}</strong>: hole <LengthText length={diameter} /> across
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
        Print at 100%, not fitted to the page. Measure both squares; if they are off, don’t cut.
        {template.pages.length > 1 && ' Join the sheets cross on cross, at the dotted lines.'}
        {part === 'quarter' &&
          ' Fold twice, set the corner on the fold’s corner and trace. Unfold, then cut one layer.'}
      </p>
      <p>
        <strong>Caution:</strong> {CAUTIONS.rotaryBlade}
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
