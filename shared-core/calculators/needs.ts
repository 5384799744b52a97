import type { Need, NeededPatch } from '#core/domain/need';
import type { PatchList } from '#core/domain/patch-list';
import { type Length, lengthFromExact, lengthFromUnits, UNITS_PER_MILLIMETER } from '#core/units/length';

/** Makers of what calculators ask for, so that each says it in the same way. */

/** Patches to cut from one fabric, each side rounded up to the next base unit; patches of no size or number are left out. */
export function fabricNeed(
  name: string,
  patches: readonly NeededPatch[],
  { fabricWidth, extraPercent = 0 }: { readonly fabricWidth: number; readonly extraPercent?: number },
): Need {
  const asked = patches.filter(({ length, count }) => length > 0 && count > 0).map(roundedUp);
  return {
    name,
    kind: 'yardage',
    amount: { measure: 'patches', patches: asked },
    fabricWidth: whole(fabricWidth),
    extraPercent,
    package: null,
  };
}

/** One need for each fabric of the patch list. */
export function needsOfPatchList(
  patchList: PatchList,
  {
    fabricWidth,
    safetyExtraPercent = 0,
  }: { readonly fabricWidth: Length; readonly safetyExtraPercent?: number },
): readonly Need[] {
  const fabrics = [...new Set(patchList.map(({ fabric }) => fabric))];
  return fabrics.map((name) =>
    fabricNeed(
      name,
      patchList.filter(({ fabric }) => fabric === name),
      { fabricWidth, extraPercent: safetyExtraPercent },
    ),
  );
}

export function squarePatch(side: number, count = 1): NeededPatch {
  return { width: side, length: side, count, mayTurn: true };
}

/** A length of thread. Thread has no width that matters; a need names one above zero. */
export function threadNeed(name: string, length: number): Need {
  return {
    name,
    kind: 'thread',
    amount: { measure: 'thread', length },
    fabricWidth: lengthFromUnits(UNITS_PER_MILLIMETER),
    extraPercent: 0,
    package: null,
  };
}

/** A length of cord or the like, a notion that shops cut from a roll. Like thread it has no width that matters. */
export function cordNeed(name: string, length: number): Need {
  return { ...threadNeed(name, length), kind: 'notions', amount: { measure: 'notion', length } };
}

function roundedUp({ width, length, count, mayTurn }: NeededPatch): NeededPatch {
  return { width: whole(width), length: whole(length), count, mayTurn };
}

function whole(exact: number): Length {
  return lengthFromExact(exact, 'up');
}
