/** Pairs of a curve or entries of a list: by `;`, `|` or line breaks, else by a comma with a space behind it. */
export const splitItems = (plain: string): string[] => {
  const items = plain.split(/[;|\n\r]/);
  const parts = items.length > 1 ? items : plain.split(', ');
  return parts.map((part) => part.trim()).filter((part) => part !== '');
};
