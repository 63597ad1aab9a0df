/** Remembers what was made for a text; when full it starts afresh, so that a long session costs no more than a short one. */
export const remembering = <T>(most: number, make: (key: string) => T): ((key: string) => T) => {
  const known = new Map<string, T>();
  return (key) => {
    const found = known.get(key);
    if (found !== undefined) return found;
    const made = make(key);
    if (known.size >= most) known.clear();
    known.set(key, made);
    return made;
  };
};
