/** Names join tables whatever their case and outer blanks. */
export const joinName = (name: string): string => name.trim().replace(/\s+/g, ' ').toLowerCase();
