/**
 * The formula engine calls `map.keys().some(…)`, which browsers learned in 2024 and Node in version 22.
 * Without it a formula that names a table ends the calculation.
 */
const iterator = Object.getPrototypeOf(Object.getPrototypeOf(new Map().keys())) as {
  some?: (test: (item: unknown) => boolean) => boolean;
};

if (!iterator.some) {
  Object.defineProperty(iterator, 'some', {
    configurable: true,
    writable: true,
    value(this: Iterable<unknown>, test: (item: unknown) => boolean): boolean {
      for (const item of this) if (test(item)) return true;
      return false;
    },
  });
}

export {};
