export const formulaNamed = (name: string): string | undefined => (void name, undefined)
