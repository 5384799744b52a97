import { memo, useMemo } from 'react';
import type { PlacedPatch } from '#core/cutting/tree/cut-plan';
import { classes } from '../base/classes';
import { type FabricFrame, inkOn, type LayoutPatch } from './cut-layout-frame';
import styles from './cut-layout.module.css';

interface PatchesProps {
  readonly placed: readonly PlacedPatch[];
  readonly frame: FabricFrame;
  readonly patchAt: (index: number) => LayoutPatch;
  readonly swatch: string | null;
  /** The length from the near end that is cut already. */
  readonly done: number;
  readonly spotlight: string | null;
  readonly current: number | null;
}

/**
 * All patches of a fabric, with one path and one text for each kind. A thousand patches drawn one by one would block the page.
 */
export function Patches({ placed, frame, patchAt, swatch, done, spotlight, current }: PatchesProps) {
  const groups = useMemo(() => groupPatches(placed, done), [placed, done]);
  const patch = current === null ? undefined : placed[current];
  return (
    <>
      {groups.map(({ kind, isDone, patches }) => {
        const { key, label } = patchAt(kind);
        const isLit = spotlight === key;
        return (
          <g
            key={`${String(kind)} ${String(isDone)}`}
            opacity={spotlight !== null && !isLit ? 0.4 : isDone && !isLit ? 0.55 : 1}
          >
            <OneKind
              patches={patches}
              frame={frame}
              label={label}
              swatch={swatch}
              isDone={isDone}
              isLit={isLit}
            />
          </g>
        );
      })}
      {patch !== undefined && (
        <path
          d={outlines([patch], frame)}
          className={classes(styles['lit'], styles['current'])}
          fill="none"
        />
      )}
    </>
  );
}

interface OneKindProps {
  readonly patches: readonly PlacedPatch[];
  readonly frame: FabricFrame;
  readonly label: string;
  readonly swatch: string | null;
  readonly isDone: boolean;
  readonly isLit: boolean;
}

const OneKind = memo(({ patches, frame, label, swatch, isDone, isLit }: OneKindProps) => {
  const letters = useMemo(
    () => lettersOn(patches, frame, isDone ? `${label}✓` : label),
    [patches, frame, label, isDone],
  );
  const shape = useMemo(() => outlines(patches, frame), [patches, frame]);
  return (
    <>
      <path
        d={shape}
        className={classes(styles['patch'], swatch === null && styles['newFabric'], isLit && styles['lit'])}
        {...(swatch === null ? {} : { fill: swatch })}
      />
      {letters.text !== '' && (
        <text
          x={letters.x}
          y={letters.y}
          className={classes(styles['label'], swatch === null && styles['onNewFabric'])}
          {...(swatch === null ? {} : { fill: inkOn(swatch) })}
        >
          {letters.text}
        </text>
      )}
    </>
  );
});
OneKind.displayName = 'OneKind';

interface PatchGroup {
  readonly kind: number;
  readonly isDone: boolean;
  readonly patches: PlacedPatch[];
}

function groupPatches(placed: readonly PlacedPatch[], done: number): readonly PatchGroup[] {
  const groups = new Map<string, PatchGroup>();
  for (const patch of placed) {
    const isDone = patch.y + patch.height <= done;
    const key = `${String(patch.patch)} ${String(isDone)}`;
    const known = groups.get(key);
    if (known === undefined) groups.set(key, { kind: patch.patch, isDone, patches: [patch] });
    else known.patches.push(patch);
  }
  return [...groups.values()];
}

function outlines(patches: readonly PlacedPatch[], frame: FabricFrame): string {
  return patches
    .map((patch) => {
      const [across, along] = [fixed(patch.width * frame.scale), fixed(patch.height * frame.scale)];
      return `M${fixed(frame.toX(patch.y))} ${fixed(frame.toY(patch.x))}h${along}v${across}h-${along}z`;
    })
    .join('');
}

const LEAST_FOR_LABEL = 13;
const LETTER = 9;

/** One text element with a position for every letter, in the middle of each patch that has room for it. */
function lettersOn(
  patches: readonly PlacedPatch[],
  frame: FabricFrame,
  label: string,
): { readonly text: string; readonly x: string; readonly y: string } {
  const [width, height] = [LEAST_FOR_LABEL - 4 + LETTER * 0.6 * (label.length - 1), LEAST_FOR_LABEL];
  const roomy = patches.filter(
    (patch) => patch.width * frame.scale >= height && patch.height * frame.scale >= width,
  );
  const places = roomy.flatMap((patch) => {
    const middle = frame.toX(patch.y + patch.height / 2);
    const y = fixed(frame.toY(patch.x + patch.width / 2));
    return Array.from(label, (_, at) => ({ x: fixed(middle + LETTER * (at - (label.length - 1) / 2)), y }));
  });
  return {
    text: label.repeat(roomy.length),
    x: places.map(({ x }) => x).join(' '),
    y: places.map(({ y }) => y).join(' '),
  };
}

function fixed(pixels: number): string {
  return pixels.toFixed(2);
}
