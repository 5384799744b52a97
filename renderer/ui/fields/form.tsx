import {
  createContext,
  type ReactNode,
  type SubmitEvent,
  useContext,
  useEffect,
  useLayoutEffect,
  useRef,
  useState,
} from 'react';
import { flushSync } from 'react-dom';

/** A field that holds typed text until it is committed. `commit` returns whether the text was valid. */
export interface TypedFieldHandle {
  readonly commit: () => boolean;
  readonly focus: () => void;
}

interface FormFields {
  readonly add: (field: TypedFieldHandle) => () => void;
}

const FormContext = createContext<FormFields | null>(null);

interface FormProps {
  /** For a button outside the form: `<Button type="submit" form={id}>`. */
  readonly id?: string;
  readonly label?: string;
  readonly className?: string | undefined;
  /** Called once every field is valid. Otherwise the first invalid field gets the focus. */
  readonly onSubmit: () => void;
  readonly children: ReactNode;
}

/** A form that commits all its fields before it submits, so that text typed just before Enter counts. */
export function Form({ id, label, className, onSubmit, children }: FormProps) {
  const [fields] = useState(fieldSet);
  const latestSubmit = useRef(onSubmit);
  useLayoutEffect(() => {
    latestSubmit.current = onSubmit;
  });
  const submit = (event: SubmitEvent) => {
    event.preventDefault();
    event.stopPropagation();
    let firstInvalid: TypedFieldHandle | undefined;
    flushSync(() => {
      for (const field of fields.all) {
        if (!field.commit()) firstInvalid ??= field;
      }
    });
    if (firstInvalid === undefined) latestSubmit.current();
    else firstInvalid.focus();
  };
  return (
    <FormContext value={fields}>
      <form id={id} aria-label={label} className={className} onSubmit={submit} noValidate>
        {children}
      </form>
    </FormContext>
  );
}

/** Registers a typed field with the form around it, if there is one. */
export function useFormField(handle: TypedFieldHandle): void {
  const form = useContext(FormContext);
  const latest = useRef(handle);
  useLayoutEffect(() => {
    latest.current = handle;
  });
  useEffect(
    () => form?.add({ commit: () => latest.current.commit(), focus: () => latest.current.focus() }),
    [form],
  );
}

function fieldSet(): FormFields & { readonly all: Set<TypedFieldHandle> } {
  const all = new Set<TypedFieldHandle>();
  return {
    all,
    add: (field) => {
      all.add(field);
      return () => {
        all.delete(field);
      };
    },
  };
}
