/** An element that workbench.html is known to have. */
export const element = <T extends HTMLElement = HTMLElement>(id: string): T => {
  const found = document.getElementById(id);
  if (!found) throw new Error(`workbench.html has no element "${id}"`);
  return found as T;
};
