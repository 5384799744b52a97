import { useRead } from '#renderer/bridge/query';
import { TextField } from '#renderer/ui/fields/text-field';

interface PlaceFieldProps {
  readonly label: string;
  readonly help?: string;
  readonly value: string;
  readonly autoFocus?: boolean;
  readonly onChange: (path: string) => void;
}

/** A place by its names from the room down. Existing places are suggested while typing. */
export function PlaceField({ value, onChange, ...rest }: PlaceFieldProps) {
  const { value: places } = useRead('place:list', {});
  return (
    <TextField
      {...rest}
      isOptional
      value={value}
      maximum={120}
      placeholder="Sewing room, shelf 2"
      suggestions={(places ?? []).map(({ path }) => path)}
      onChange={onChange}
    />
  );
}
