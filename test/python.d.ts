/** The first python3 that has all these modules. */
export function pythonWith(...modules: string[]): string | undefined;
