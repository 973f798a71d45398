/** A syllabus in other forms than its file: for spreadsheets, and for programs that read the open standard. */
export { casePackage, type CasePackage } from './case'
export { TABLE_COLUMNS, tableRows } from './table'
