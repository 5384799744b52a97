import type { PatternListInput, PatternPatch } from '#core/calculators/patches/pattern-list/input';
import type { ListPatch, ListReading, ListShape } from '#core/cutting-list/list-reading';
import type { PatternDetails } from '#core/domain/pattern';
import type { Length } from '#core/units/length';

/** The fields of the question “From a pattern” that a cutting list fills. */
export type PatternFields = Pick<PatternListInput, 'patches' | 'stated' | 'bindingStrips' | 'finishedSize'>;

const CUT_AS: Readonly<Record<ListShape, PatternPatch['cutAs']>> = {
  square: 'patch',
  rectangle: 'patch',
  strip: 'strip',
  'half-square-triangle': 'cut-once',
  'half-rectangle-triangle': 'cut-once',
  'quarter-square-triangle': 'cut-twice',
};

/** What patches are called whose fabric the list does not name. */
const UNNAMED_FABRIC = 'Fabric not named';

/**
 * The patches of a list with the fabrics chosen for them. Strips for the binding are no patches: the binding has a stage of its own.
 * `fabricWidth` is the length of a strip across the fabric.
 */
export function patternFields(
  reading: ListReading,
  fabrics: PatternDetails['fabrics'],
  fabricWidth: Length,
): PatternFields {
  const binding = reading.patches.filter(isBinding);
  const [strip] = binding;
  const finished = reading.stated.find(({ what }) => what === 'finished-size');
  return {
    patches: mergedPatches(
      reading.patches
        .filter((patch) => !isBinding(patch))
        .map(({ role, shape, width, length, cut }) => ({
          fabric: fabricOf(fabrics, role),
          cutAs: CUT_AS[shape],
          width,
          length: length ?? fabricWidth,
          count: cut,
        })),
    ),
    stated: reading.stated.flatMap((stated) =>
      stated.what !== 'fabric' || stated.role === null || isLayer(stated.role)
        ? []
        : [{ fabric: fabricOf(fabrics, stated.role), length: stated.length }],
    ),
    bindingStrips:
      strip === undefined
        ? []
        : [{ width: strip.width, count: binding.reduce((sum, { cut }) => sum + cut, 0) }],
    finishedSize:
      finished?.what === 'finished-size' ? [{ width: finished.width, length: finished.length }] : [],
  };
}

/** The fabric chosen for a fabric of the list, or its name on the list. */
function fabricOf(fabrics: PatternDetails['fabrics'], role: string | null): string {
  const chosen = fabrics.find((one) => one.role === role)?.fabric ?? '';
  return chosen === '' ? (role ?? UNNAMED_FABRIC) : chosen;
}

function isBinding({ shape, role, purpose }: ListPatch): boolean {
  return shape === 'strip' && /\bbinding\b/iu.test(purpose ?? role ?? '');
}

/** Binding, backing and batting are asked for by stages of their own. */
function isLayer(role: string): boolean {
  return /\b(?:binding|backing|batting)\b/iu.test(role);
}

/** Equal patches in one line, in the order in which each first comes. */
function mergedPatches(patches: readonly PatternPatch[]): readonly PatternPatch[] {
  const merged = new Map<string, PatternPatch>();
  for (const patch of patches) {
    const key = JSON.stringify([patch.fabric, patch.cutAs, patch.width, patch.length]);
    const before = merged.get(key)?.count ?? 0;
    merged.set(key, { ...patch, count: before + patch.count });
  }
  return [...merged.values()];
}
