import type { Note } from '../explanation';
import { PIECING_CAUTIONS } from '../patches/piecing-cautions';
import { areaQuantity } from '../quantities';
import type { CountedBlock, TopWork } from './work';

export function topNotes({ assembly, counted, input, needed }: TopWork): readonly Note[] {
  return [
    ...assembly.misfits,
    ...counted.flatMap(blockMisfit),
    ...unlistedFabrics(needed.strips, input.fabrics),
    ...PIECING_CAUTIONS,
  ];
}

/** A warning if the units cover more or less than the block, apart from rounding: two units of length along its edge. */
function blockMisfit({ block, totals }: CountedBlock): readonly Note[] {
  if (block.units.length === 0) {
    const says = `${block.name} has no patches yet, so no fabric is counted for it.`;
    return [{ kind: 'warning', says, values: {} }];
  }
  const off = totals.area - block.width * block.length;
  if (Math.abs(off) < 2 * (block.width + block.length)) return [];
  const says =
    off > 0
      ? `The patches of ${block.name} cover {off} more than the block.`
      : `The patches of ${block.name} leave {off} of the block uncovered.`;
  return [{ kind: 'warning', says, values: { off: areaQuantity(Math.abs(off)) } }];
}

function unlistedFabrics(
  strips: readonly { readonly fabric: string }[],
  fabrics: readonly { readonly label: string }[],
): readonly Note[] {
  const used = new Set(strips.map(({ fabric }) => fabric));
  const listed = new Set(fabrics.map(({ label }) => label));
  return [...used]
    .filter((fabric) => !listed.has(fabric))
    .map((fabric) => ({
      kind: 'tip',
      says: `${fabric} is not in the list of fabrics, so its patches may be turned.`,
      values: {},
    }));
}
