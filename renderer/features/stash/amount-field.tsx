import type { FabricPiece } from '#core/domain/stash';
import { countOfLength } from '#core/domain/stash-kind';
import { type Length, lengthFromExact } from '#core/units/length';
import { LengthField } from '#renderer/ui/fields/length-field';
import { NumberField } from '#renderer/ui/fields/number-field';

interface AmountFieldProps {
  readonly piece: Pick<FabricPiece, 'unitLength'>;
  readonly label: string;
  readonly help?: string;
  readonly value: Length | null;
  readonly autoFocus?: boolean;
  /** In 1/320 mm, for counted fabric too. */
  readonly minimum?: number | undefined;
  readonly maximum?: number | undefined;
  readonly onCommit: (length: Length | null) => void;
}

/** An amount of a piece of fabric: a length, or a number of items, which may be a fraction such as half a spool. */
export function AmountField({ piece, ...field }: AmountFieldProps) {
  const { unitLength } = piece;
  if (unitLength === null) return <LengthField {...field} />;
  const count = (units: number | null | undefined) =>
    units === null || units === undefined ? null : countOfLength(units, unitLength);
  return (
    <NumberField
      {...field}
      value={count(field.value)}
      minimum={field.minimum === 0 ? 0 : 0.01}
      maximum={count(field.maximum) ?? undefined}
      onCommit={(number) =>
        field.onCommit(number === null ? null : lengthFromExact(number * unitLength, 'nearest'))
      }
    />
  );
}
