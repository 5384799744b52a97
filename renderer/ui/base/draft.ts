import { createContext, useContext, useMemo, useState } from 'react';
import { z } from 'zod';

/**
 * What was entered in a form and is not saved yet. Every change is in the window's storage at once, so it outlasts the page, the
 * dialog and the program. It is gone once the form is saved or its entries are discarded.
 */
export interface FormDraft {
  readonly content: DraftContent;
  /** True while something differs from what the form started with. */
  readonly hasEntries: boolean;
  /** Counts up when the entries are discarded: fields drawn with it as their key start over. */
  readonly discards: number;
  readonly change: (changed: (content: DraftContent) => DraftContent) => void;
  readonly forget: () => void;
}

/** Values by their name, each as its difference from what the form started with, and text that no value was read from yet. */
const draftContentSchema = z.object({
  values: z.record(
    z.string(),
    z.union([z.object({ fields: z.record(z.string(), z.unknown()) }), z.object({ whole: z.unknown() })]),
  ),
  texts: z.record(z.string(), z.string()),
});

type DraftContent = z.infer<typeof draftContentSchema>;
type Difference = DraftContent['values'][string];

const NOTHING: DraftContent = { values: {}, texts: {} };

/** The open workshop file. Each has drafts of its own; empty until it is known. */
export const NotebookContext = createContext('');

/** Deletes the drafts of all notebooks whose names begin like this, except those of one. */
export function forgetOtherNotebooks(prefix: string, kept: string): void {
  for (const key of Object.keys(window.localStorage)) {
    if (key.startsWith(`draft:${prefix}`) && !key.startsWith(`draft:${kept}:`))
      window.localStorage.removeItem(key);
  }
}

/** The draft of one form. `name` is the form with the record it is about: `contact 0192…`, `contact new`. */
export function useFormDraft(name: string): FormDraft {
  const key = `draft:${useContext(NotebookContext)}:${name}`;
  const [held, setHeld] = useState(() => ({ key, content: readDraft(key), discards: 0 }));
  if (held.key !== key) setHeld({ key, content: readDraft(key), discards: held.discards + 1 });
  const { content, discards } = held;
  return useMemo(
    () => ({
      content,
      discards,
      hasEntries: isFilled(content),
      // Read from the storage each time, so that two changes in one step both count.
      change: (changed) => {
        const next = changed(readDraft(key));
        writeDraft(key, next);
        setHeld((before) => ({ ...before, content: next }));
      },
      forget: () => {
        writeDraft(key, NOTHING);
        setHeld((before) => ({ ...before, content: NOTHING, discards: before.discards + 1 }));
      },
    }),
    [key, content, discards],
  );
}

/**
 * State that is part of a draft, used like `useState`. Of a record only the fields that were changed are held; the others follow
 * `start`, so that a draft from before a change elsewhere takes nothing back; a function is called once. `isValid` refuses what an older program left.
 */
export function useDraftValue<Value>(
  draft: FormDraft,
  name: string,
  start: Value | (() => Value),
  isValid?: (stored: unknown) => stored is Value,
): readonly [Value, (next: Value | ((before: Value) => Value)) => void] {
  const [begun] = useState(start);
  const first = isStarter(start) ? begun : start;
  const difference = draft.content.values[name];
  const valueOf = (stored: Difference | undefined): Value => {
    const value = withDifference(first, stored);
    return isValid === undefined || isValid(value) ? value : first;
  };
  const set = (next: Value | ((before: Value) => Value)) => {
    draft.change(({ values, texts }) => {
      const { [name]: before, ...others } = values;
      const changed = differenceOf(first, isUpdate(next) ? next(valueOf(before)) : next);
      return { texts, values: changed === null ? others : { ...others, [name]: changed } };
    });
  };
  return [valueOf(difference), set];
}

/** The draft around the fields of a form; null where nothing is kept; undefined outside of forms, where the page keeps it. */
export const DraftContext = createContext<FormDraft | null | undefined>(undefined);

/** The draft of a page: text in fields that are saved when they are left. */
export const PageDraftContext = createContext<FormDraft | null>(null);

/** Where in a form the fields are, for fields with the same label in several rows. */
export const DraftPlaceContext = createContext('');

/**
 * Text in a field that no value was read from yet, and how to keep it. Null outside of a draft. Only the text of a form waits to be saved
 * or discarded with the rest of it.
 */
export function useDraftText(label: string) {
  const [form, page] = [useContext(DraftContext), useContext(PageDraftContext)];
  const draft = form === undefined ? page : form;
  const field = `${useContext(DraftPlaceContext)}/${label}`;
  if (draft === null) return null;
  return {
    isOfForm: draft === form,
    text: draft.content.texts[field] ?? null,
    keep: (text: string | null) => {
      if ((draft.content.texts[field] ?? null) === text) return;
      draft.change(({ values, texts: { [field]: _before, ...others } }) => ({
        values,
        texts: text === null ? others : { ...others, [field]: text },
      }));
    },
  };
}

function isStarter<Value>(start: Value | (() => Value)): start is () => Value {
  return typeof start === 'function';
}

function isUpdate<Value>(next: Value | ((before: Value) => Value)): next is (before: Value) => Value {
  return typeof next === 'function';
}

function isFilled({ values, texts }: DraftContent): boolean {
  return Object.keys(values).length > 0 || Object.keys(texts).length > 0;
}

function isPlainRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** Null if both are the same. */
function differenceOf(first: unknown, value: unknown): Difference | null {
  if (isSame(first, value)) return null;
  if (!isPlainRecord(first) || !isPlainRecord(value)) return { whole: value };
  const isGone = Object.keys(first).some((key) => !(key in value));
  if (isGone) return { whole: value };
  return {
    fields: Object.fromEntries(Object.entries(value).filter(([key, one]) => !isSame(one, first[key]))),
  };
}

function withDifference<Value>(first: Value, difference: Difference | undefined): Value {
  if (difference === undefined) return first;
  // The form that reads a draft is the form that wrote it.
  const value = 'fields' in difference ? { ...first, ...difference.fields } : difference.whole;
  return value as Value;
}

function isSame(one: unknown, other: unknown): boolean {
  return JSON.stringify(one) === JSON.stringify(other);
}

function readDraft(key: string): DraftContent {
  const text = window.localStorage.getItem(key);
  if (text === null) return NOTHING;
  const stored = draftContentSchema.safeParse(JSON.parse(text));
  return stored.success ? stored.data : NOTHING;
}

function writeDraft(key: string, content: DraftContent): void {
  if (isFilled(content)) window.localStorage.setItem(key, JSON.stringify(content));
  else window.localStorage.removeItem(key);
}
