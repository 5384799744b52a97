/** Works a value out once for each key. It forgets all of them when it holds `most`, so it never grows past that. */
export function memo<Value>(most: number): (key: string, work: () => Value) => Value {
  const values = new Map<string, { readonly value: Value }>();
  return (key, work) => {
    const before = values.get(key);
    if (before !== undefined) return before.value;
    const value = work();
    if (values.size >= most) values.clear();
    values.set(key, { value });
    return value;
  };
}
