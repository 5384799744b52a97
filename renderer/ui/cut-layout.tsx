import { type KeyboardEvent, useId, useState } from 'react';
import type { CutTree, PlacedPatch } from '#core/cutting/cut-plan';
import { type CutStep, cutSteps } from '#core/cutting/cut-steps';
import { placedPatches } from '#core/cutting/cut-tree';
import type { Leftover, OrderedCut } from '#core/cutting/cutting-job';
import { leftoversOf } from '#core/cutting/piece-plan';
import { formatLength } from '#core/units/format-length';
import { lengthFromUnits } from '#core/units/length';
import { classes } from './classes';
import { frameCloth, type ClothFrame, inkOn, restsIn } from './cut-layout-frame';
import { Break, Cuts, PrintArrow, StepNumbers } from './cut-layout-parts';
import { DimensionLine } from './dimension-line';
import { useDisplay } from './display';
import { Typeset } from './typeset';
import styles from './cut-layout.module.css';

/** A kind of patch as a drawing names it. */
export interface LayoutPatch {
  readonly key: string;
  readonly label: string;
  /** `2½ × 4½ in`, as it is cut. */
  readonly size: string;
}

export interface CutLayoutProps {
  /** What this cloth is, for who cannot see it. */
  readonly title: string;
  readonly tree: CutTree;
  readonly cuts: readonly OrderedCut[];
  /** The strips as they are cut one after the other; without them, as they come. */
  readonly steps?: readonly Pick<CutStep, 'from' | 'length'>[];
  readonly patchAt: (index: number) => LayoutPatch;
  /** The fabric's color; null for cloth that is not there yet. */
  readonly swatch: string | null;
  readonly print: 'any' | 'one-way' | 'two-way';
  /** Length from the near end that is cut already, 1/320 mm. */
  readonly done: number;
  readonly maxWidth?: number;
  readonly maxHeight?: number;
  /** The kind of patch that is looked at, here or elsewhere on the page. */
  readonly spotlight?: string | null;
  readonly onSpotlight?: (key: string | null) => void;
}

/**
 * A piece of cloth with its cuts, to scale: near end on the left, selvages above and below, as it lies on the table. The arrow
 * keys walk along the patches.
 */
export function CutLayout(props: CutLayoutProps) {
  const { title, tree, patchAt, spotlight = null, onSpotlight } = props;
  const frame = frameCloth(tree, props.maxWidth ?? 620, props.maxHeight ?? 380);
  const placed = placedPatches(tree);
  const [current, setCurrent] = useState<number | null>(null);
  const { length: display } = useDisplay();
  const size = (units: number) => formatLength(lengthFromUnits(Math.round(units)), display);
  const goTo = (next: number | null) => {
    setCurrent(next);
    const patch = next === null ? undefined : placed[next];
    onSpotlight?.(patch === undefined ? null : patchAt(patch.patch).key);
  };
  const hearKey = (event: KeyboardEvent) => {
    const step = STEPS[event.key];
    if (step === undefined || placed.length === 0) return;
    event.preventDefault();
    goTo(Math.min(placed.length - 1, Math.max(0, (current ?? -1) + step)));
  };
  const isStill = onSpotlight === undefined;
  return (
    <figure className={styles['figure']}>
      <div
        role="group"
        aria-label={isStill ? title : `${title}. The arrow keys go from patch to patch.`}
        tabIndex={isStill ? undefined : 0}
        className={styles['cloth']}
        onKeyDown={isStill ? undefined : hearKey}
        onBlur={isStill ? undefined : () => goTo(null)}
        onMouseLeave={isStill ? undefined : () => goTo(null)}
      >
        <svg
          className={styles['drawing']}
          width={frame.drawingWidth}
          height={frame.drawingHeight}
          viewBox={`0 0 ${String(frame.drawingWidth)} ${String(frame.drawingHeight)}`}
          aria-hidden="true"
        >
          <Rests tree={tree} frame={frame} swatch={props.swatch} sizeOf={size} />
          {placed.map((patch, index) => (
            <Patch
              key={index}
              patch={patch}
              kind={patchAt(patch.patch)}
              frame={frame}
              swatch={props.swatch}
              isDone={patch.y + patch.height <= props.done}
              isLit={spotlight === patchAt(patch.patch).key}
              isDim={spotlight !== null && spotlight !== patchAt(patch.patch).key}
              isCurrent={current === index}
              onEnter={isStill ? undefined : () => goTo(index)}
            />
          ))}
          <Cuts cuts={props.cuts} frame={frame} />
          <StepNumbers steps={props.steps ?? cutSteps(tree)} done={props.done} frame={frame} />
          {frame.isBroken && <Break frame={frame} />}
          <DimensionLine
            from={{ x: frame.toX(0), y: frame.toY(tree.width) }}
            to={{ x: frame.toX(0), y: frame.toY(0) }}
            offset={18}
            text={size(tree.width)}
          />
          {props.print !== 'any' && <PrintArrow frame={frame} isBoth={props.print === 'two-way'} />}
        </svg>
      </div>
      {!isStill && (
        <figcaption className={styles['caption']} aria-live="polite">
          <Typeset text={captionOf(placed, current, patchAt, size) ?? ' '} />
        </figcaption>
      )}
    </figure>
  );
}

const STEPS: Readonly<Record<string, number>> = {
  ArrowRight: 1,
  ArrowDown: 1,
  ArrowLeft: -1,
  ArrowUp: -1,
};

/** `B, 2½ × 4½ in: 10 in from the near end, 5 in from the selvage`. */
function captionOf(
  placed: readonly PlacedPatch[],
  current: number | null,
  patchAt: CutLayoutProps['patchAt'],
  size: (units: number) => string,
): string | null {
  const patch = current === null ? undefined : placed[current];
  if (patch === undefined) return null;
  const { label, size: words } = patchAt(patch.patch);
  const turned = patch.turned ? ', turned' : '';
  return `${label}, ${words}${turned}: ${size(patch.y)} from the near end, ${size(patch.x)} from the upper edge`;
}

interface PatchProps {
  readonly patch: PlacedPatch;
  readonly kind: LayoutPatch;
  readonly frame: ClothFrame;
  readonly swatch: string | null;
  readonly isDone: boolean;
  readonly isLit: boolean;
  readonly isDim: boolean;
  readonly isCurrent: boolean;
  readonly onEnter: (() => void) | undefined;
}

const LEAST_FOR_LABEL = 13;

function Patch({ patch, kind, frame, swatch, isDone, isLit, isDim, isCurrent, onEnter }: PatchProps) {
  const [width, height] = [patch.height * frame.scale, patch.width * frame.scale];
  const [x, y] = [frame.toX(patch.y), frame.toY(patch.x)];
  const hasLabel = height >= LEAST_FOR_LABEL && width >= LEAST_FOR_LABEL - 4 + 5 * (kind.label.length - 1);
  return (
    <g opacity={isDim ? 0.4 : isDone && !isLit ? 0.55 : 1} onMouseEnter={onEnter}>
      <rect
        x={x}
        y={y}
        width={width}
        height={height}
        className={classes(
          styles['patch'],
          swatch === null && styles['newCloth'],
          (isLit || isCurrent) && styles['lit'],
          isCurrent && styles['current'],
        )}
        {...(swatch === null ? {} : { fill: swatch })}
      />
      {hasLabel && (
        <text
          x={x + width / 2}
          y={y + height / 2}
          className={classes(styles['label'], swatch === null && styles['onNewCloth'])}
          {...(swatch === null ? {} : { fill: inkOn(swatch) })}
        >
          {isDone ? `${kind.label} ✓` : kind.label}
        </text>
      )}
    </g>
  );
}

interface RestsProps {
  readonly tree: CutTree;
  readonly frame: ClothFrame;
  readonly swatch: string | null;
  readonly sizeOf: (units: number) => string;
}

/** Margins and scraps, and the leftovers worth keeping with their sizes. */
function Rests({ tree, frame, swatch, sizeOf }: RestsProps) {
  const pattern = useId();
  const rect = (one: Leftover) => ({
    x: frame.toX(one.y),
    y: frame.toY(one.x),
    width: Math.max(0, Math.min(frame.toX(one.y + one.length), frame.toX(frame.shown)) - frame.toX(one.y)),
    height: one.width * frame.scale,
  });
  return (
    <>
      <pattern id={pattern} width={5} height={5} patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <line x1={0} y1={0} x2={0} y2={5} className={styles['hatch']} />
      </pattern>
      {restsIn(tree).map((one, index) => (
        <rect key={index} {...rect(one)} fill={`url(#${pattern})`} className={styles['scrap']} />
      ))}
      {leftoversOf(tree).map((one, index) => {
        const { x, y, width, height } = rect(one);
        const words = `${sizeOf(one.width)} × ${sizeOf(one.length)}`;
        const isUpright = width < 110;
        const hasWords = Math.max(width, height) >= 110 && Math.min(width, height) >= 16;
        const [cx, cy] = [x + width / 2, y + height / 2];
        return (
          <g key={index}>
            <rect
              {...{ x, y, width, height }}
              className={styles['leftover']}
              fill={swatch ?? 'var(--cloth)'}
            />
            {hasWords && (
              <text
                x={cx}
                y={cy}
                className={styles['keep']}
                transform={isUpright ? `rotate(-90 ${String(cx)} ${String(cy)})` : undefined}
              >
                keep {words}
              </text>
            )}
          </g>
        );
      })}
    </>
  );
}
