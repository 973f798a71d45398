/** Under which a new syllabus is kept while it has no id of its own: no title gives this one. */
export const NEW_EDIT = '+new'
