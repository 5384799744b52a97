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

/** A field that holds typed text until it is committed. `commit` answers whether the text was taken. */
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
  /** Called once every field has been taken; with a field that was not, the first such gets the focus instead. */
  readonly onSubmit: () => void;
  readonly children: ReactNode;
}

/** A form whose fields commit before it does: what is in a field when Enter or the button is pressed counts. */
export function Form({ id, label, className, onSubmit, children }: FormProps) {
  const [fields] = useState(fieldSet);
  const latestSubmit = useRef(onSubmit);
  useLayoutEffect(() => {
    latestSubmit.current = onSubmit;
  });
  const submit = (event: SubmitEvent) => {
    event.preventDefault();
    event.stopPropagation();
    let firstRefused: TypedFieldHandle | undefined;
    flushSync(() => {
      for (const field of fields.all) {
        if (!field.commit()) firstRefused ??= field;
      }
    });
    if (firstRefused === undefined) latestSubmit.current();
    else firstRefused.focus();
  };
  return (
    <FormContext value={fields}>
      <form id={id} aria-label={label} className={className} onSubmit={submit} noValidate>
        {children}
      </form>
    </FormContext>
  );
}

/** Enters a typed field into the form around it, if there is one. */
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
