export const plainWords: readonly string[] = [``]
