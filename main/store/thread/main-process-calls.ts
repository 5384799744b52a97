import type { Problem } from '#core/contract/problem';
import { failure, type Result, success } from '#core/result';
import type { StoreContext } from './store-context';
import { readTransaction, writeTransaction } from '../base/handles';
import { closeStore } from '../opening/open-store';
import { findPhoto, keepThumbnail } from '../projects/photos';
import { stashAsText } from '../import-export/stash-export';
import type { InnerCalls, InnerName } from './protocol';

type InnerHandlers = {
  readonly [Name in InnerName]: (
    context: StoreContext,
    input: InnerCalls[Name]['input'],
  ) => Result<InnerCalls[Name]['output'], Problem>;
};

const innerHandlers: InnerHandlers = {
  'inner:find-photo': ({ store, folders }, { photoId }) => findPhoto(store, folders.photos, photoId),
  'inner:keep-thumbnail': ({ store }, { hash, bytes }) => {
    writeTransaction(store, (writable) => keepThumbnail(writable, hash, bytes));
    return success(null);
  },
  'inner:offer-table': ({ store, tables }, { file }) => {
    const token = store.surroundings.newId();
    tables.set(token, file);
    return success({ token });
  },
  'inner:export-stash': ({ store }, { as }) => success(readTransaction(store, () => stashAsText(store, as))),
  'inner:close': ({ store }) => {
    closeStore(store);
    return success(null);
  },
};

export function isInnerName(name: string): name is InnerName {
  return Object.hasOwn(innerHandlers, name);
}

/** Answers a call of the main process, whose input its types vouch for. */
export function answerInnerCall(
  context: StoreContext,
  name: InnerName,
  input: unknown,
): Result<unknown, Problem> {
  const handle = innerHandlers[name] as (context: StoreContext, input: unknown) => Result<unknown, Problem>;
  try {
    return handle(context, input);
  } catch (error) {
    return failure<Problem>({
      code: 'unexpected',
      detail: error instanceof Error ? error.message : String(error),
    });
  }
}
