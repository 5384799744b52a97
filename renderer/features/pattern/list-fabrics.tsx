import type { PatternDetails } from '#core/domain/pattern';
import { useFabricNamed, useFabricNames } from '#renderer/shared/fabric-names';
import { TextField } from '#renderer/ui/fields/text-field';
import layout from '#renderer/ui/page/layout.module.css';

interface ListFabricsProps {
  /** Fabrics as the list names them. */
  readonly roles: readonly string[];
  readonly fabrics: PatternDetails['fabrics'];
  readonly onChange: (fabrics: PatternDetails['fabrics']) => void;
}

/** Which fabric of the stash each fabric of the list is cut from. */
export function ListFabrics({ roles, fabrics, onChange }: ListFabricsProps) {
  if (roles.length === 0) return null;
  const choose = (role: string, fabric: string) => {
    const others = fabrics.filter((one) => one.role !== role);
    onChange(fabric === '' ? others : [...others, { role, fabric }]);
  };
  return (
    <section className={layout['part']} aria-labelledby="list-fabrics">
      <h2 id="list-fabrics" className={layout['heading']}>
        Your fabrics
      </h2>
      <div className={layout['fields']}>
        {roles.map((role) => (
          <RoleField
            key={role}
            role={role}
            fabric={fabrics.find((one) => one.role === role)?.fabric ?? ''}
            onChange={(fabric) => choose(role, fabric)}
          />
        ))}
      </div>
    </section>
  );
}

interface RoleFieldProps {
  readonly role: string;
  readonly fabric: string;
  readonly onChange: (fabric: string) => void;
}

function RoleField({ role, fabric, onChange }: RoleFieldProps) {
  const inStash = useFabricNames(fabric);
  const named = useFabricNamed(fabric === '' ? role : fabric);
  return (
    <TextField
      label={role}
      help={
        named === null
          ? 'Type a few letters to choose it from the stash. Left empty, it is to be bought under this name.'
          : 'It is in the stash.'
      }
      value={fabric}
      maximum={120}
      suggestions={inStash}
      isOptional
      onChange={onChange}
    />
  );
}
