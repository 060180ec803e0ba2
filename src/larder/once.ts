/** Makes a thing when it is first asked for: a start, and a reading that needs no table, must not pay for its index. */
export function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}
