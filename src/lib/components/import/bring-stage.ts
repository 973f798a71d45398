/** How far a file or a text has come on its way to a syllabus. */
import type { Table } from '$lib/syllabus/import'
import type ChooseColumnsPiece from './ChooseColumns.svelte'
import type ChoosePagesPiece from './ChoosePages.svelte'
import type DraftEditorPiece from './DraftEditor.svelte'
import type { DraftSession } from './draft-session.svelte'
import type { OpenPdf } from './open-pdf'
import type { Good, Refused } from './SyllabusRead.svelte'

export type Stage =
  | { readonly at: 'start' }
  | { readonly at: 'reading'; readonly name: string; readonly stop: () => void }
  | {
      readonly at: 'pages'
      readonly name: string
      readonly pdf: OpenPdf
      readonly Piece: typeof ChoosePagesPiece
    }
  | {
      readonly at: 'columns'
      readonly name: string
      readonly table: Table
      readonly Piece: typeof ChooseColumnsPiece
    }
  | {
      readonly at: 'draft'
      readonly session: DraftSession
      readonly Piece: typeof DraftEditorPiece
    }
  | { readonly at: 'read'; readonly read: Good | Refused }
