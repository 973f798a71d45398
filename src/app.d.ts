declare module 'virtual:syllabi' {
  /** Made by src/cli/syllabus-plugin.ts, in the order of the files' names. */
  const shipped: readonly {
    readonly outline: import('$lib/components/library').Outline
    readonly load: () => Promise<import('$lib/syllabus').Syllabus>
    /** The file as its author wrote it. */
    readonly source: () => Promise<string>
  }[]
  export default shipped
}
