/** Makes what follows from a value that never changes once: several rules ask for it, and an editor asks again at each keystroke. */

/** A function that gives what `make` gives and remembers it for as long as the value lives. */
export function once<Value extends WeakKey, Made>(make: (value: Value) => Made): (value: Value) => Made {
  const made = new WeakMap<Value, { readonly it: Made }>();
  return (value) => {
    let known = made.get(value);
    if (known === undefined) {
      known = { it: make(value) };
      made.set(value, known);
    }
    return known.it;
  };
}
