import { type KeyboardEvent, type MouseEvent, useMemo, useState } from 'react';
import type { CutTree } from '#core/domain/cutting-plan';
import type { PlacedPatch } from '#core/cutting/tree/cut-plan';
import { type CutStep, cutSteps } from '#core/cutting/tree/cut-steps';
import { placedPatches } from '#core/cutting/tree/cut-tree';
import type { OrderedCut } from '#core/cutting/tree/cutting-job';
import type { PrintRuns } from '#core/domain/stash';
import { formatLength } from '#core/units/format-length';
import { lengthFromUnits } from '#core/units/length';
import { sizeWords } from '#renderer/text/size-words';
import { type FabricFrame, frameFabric, type LayoutPatch } from './cut-layout-frame';
import { Break, Cuts, PrintArrow, Rests, StepNumbers } from './cut-layout-parts';
import { Patches } from './cut-layout-patches';
import { patchAfterKey, patchUnder } from './cut-layout-walk';
import { DimensionLine } from './dimension-line';
import { classes } from '../base/classes';
import { useDisplay } from '../base/display';
import { Typeset } from '../answers/typeset';
import drawing from './drawing.module.css';
import styles from './cut-layout.module.css';

export interface CutLayoutProps {
  /** The name of this fabric for a screen reader. */
  readonly title: string;
  readonly tree: CutTree;
  readonly cuts: readonly OrderedCut[];
  /** The strips in the order of cutting. By default, in the order of the plan; with an empty list, none is numbered. */
  readonly steps?: readonly Pick<CutStep, 'from' | 'length'>[];
  readonly patchAt: (index: number) => LayoutPatch;
  /** The fabric's color; null for fabric still to be bought. */
  readonly swatch: string | null;
  readonly print: 'any' | 'one-way' | 'two-way';
  /** Whether the print runs along the piece or across it. */
  readonly printRuns: PrintRuns;
  /** The length from the near end that is cut already, in 1/320 mm. */
  readonly done: number;
  /** Draws a small piece whole, without shortening its uncut end. */
  readonly isWhole?: boolean;
  readonly maxWidth?: number;
  readonly maxHeight?: number;
  /** The kind of patch that is selected, here or elsewhere on the page. */
  readonly spotlight?: string | null;
  readonly onSpotlight?: (key: string | null) => void;
}

/**
 * A piece of fabric with its cuts, to scale, as on the cutting table: near end on the left, selvages above and below. The arrow
 * keys go from patch to patch, Home and End to the first and the last.
 */
export function CutLayout(props: CutLayoutProps) {
  const { title, tree, patchAt, maxWidth = 620, maxHeight = 380, isWhole = false } = props;
  const { spotlight = null, onSpotlight } = props;
  const frame = useMemo(
    () => frameFabric(tree, maxWidth, maxHeight, isWhole),
    [tree, maxWidth, maxHeight, isWhole],
  );
  const placed = useMemo(() => placedPatches(tree), [tree]);
  const ownSteps = useMemo(() => cutSteps(tree), [tree]);
  const steps = props.steps ?? ownSteps;
  const { length: display } = useDisplay();
  const size = (units: number) => formatLength(lengthFromUnits(Math.round(units)), display);
  const { current, goTo, onKeyDown, onMouseMove } = usePatchWalk(placed, frame, (patch) =>
    onSpotlight?.(patch === null ? null : patchAt(patch.patch).key),
  );
  const isStill = onSpotlight === undefined;
  return (
    <figure className={styles['figure']}>
      <div
        role="group"
        aria-label={isStill ? title : `${title}. The arrow keys go from patch to patch.`}
        tabIndex={isStill ? undefined : 0}
        className={styles['fabric']}
        onKeyDown={isStill ? undefined : onKeyDown}
        onBlur={isStill ? undefined : () => goTo(null)}
        onMouseLeave={isStill ? undefined : () => goTo(null)}
      >
        <svg
          className={drawing['drawing']}
          width={frame.drawingWidth}
          height={frame.drawingHeight}
          viewBox={`0 0 ${String(frame.drawingWidth)} ${String(frame.drawingHeight)}`}
          aria-hidden="true"
          onMouseMove={isStill ? undefined : onMouseMove}
        >
          <Rests tree={tree} frame={frame} swatch={props.swatch} sizeOf={(one) => sizeWords(one, display)} />
          <Patches
            placed={placed}
            frame={frame}
            patchAt={patchAt}
            spotlight={spotlight}
            current={current}
            swatch={props.swatch}
            done={props.done}
          />
          <Cuts cuts={props.cuts} frame={frame} />
          <StepNumbers steps={steps} done={props.done} frame={frame} />
          {frame.isBroken && <Break frame={frame} />}
          <DimensionLine
            from={{ x: frame.toX(0), y: frame.toY(tree.width) }}
            to={{ x: frame.toX(0), y: frame.toY(0) }}
            offset={18}
            text={size(tree.width)}
          />
          {props.print !== 'any' && (
            <PrintArrow frame={frame} isBoth={props.print === 'two-way'} runs={props.printRuns} />
          )}
        </svg>
      </div>
      {!isStill && (
        <figcaption className={classes(drawing['caption'], styles['caption'])} aria-live="polite">
          <Typeset
            text={captionOf(current === null ? undefined : placed[current], steps, patchAt, size) ?? ' '}
          />
        </figcaption>
      )}
    </figure>
  );
}

/** The patch under the mouse, or the one that the arrow keys are at. */
function usePatchWalk(
  placed: readonly PlacedPatch[],
  frame: FabricFrame,
  onChange: (patch: PlacedPatch | null) => void,
) {
  const [current, setCurrent] = useState<number | null>(null);
  const goTo = (next: number | null) => {
    if (next === current) return;
    setCurrent(next);
    onChange(next === null ? null : (placed[next] ?? null));
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const next = patchAfterKey(placed, current, event.key);
    if (next === undefined) return;
    event.preventDefault();
    goTo(next);
  };
  const onMouseMove = (event: MouseEvent<SVGSVGElement>) => {
    const box = event.currentTarget.getBoundingClientRect();
    const unitsPerPixel = frame.drawingWidth / box.width / frame.scale;
    goTo(
      patchUnder(placed, {
        x: (event.clientY - box.top) * unitsPerPixel - frame.toY(0) / frame.scale,
        y: (event.clientX - box.left) * unitsPerPixel - frame.toX(0) / frame.scale,
      }),
    );
  };
  return { current, goTo, onKeyDown, onMouseMove };
}

/** `B, 2½ × 4½ in, for Autumn ring: strip 3, 10 in from the near end, 5 in from the upper edge` */
function captionOf(
  patch: PlacedPatch | undefined,
  steps: NonNullable<CutLayoutProps['steps']>,
  patchAt: CutLayoutProps['patchAt'],
  size: (units: number) => string,
): string | null {
  if (patch === undefined) return null;
  const { label, size: words, goesTo } = patchAt(patch.patch);
  const turned = patch.turned ? ', turned' : '';
  const purpose = goesTo === '' ? '' : `, for ${goesTo}`;
  const place = steps.findIndex(({ from, length }) => patch.y < from + length);
  const strip = place < 0 ? '' : `strip ${String(place + 1)}, `;
  return `${label}, ${words}${turned}${purpose}: ${strip}${size(patch.y)} from the near end, ${size(patch.x)} from the upper edge`;
}
