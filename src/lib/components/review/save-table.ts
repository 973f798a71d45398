/** A table file of what a page shows. */
import { csvOf } from '../csv'
import { download } from '../download'

export async function saveTable(name: string, rows: readonly (readonly string[])[]): Promise<void> {
  download(name, await csvOf(rows), 'text/csv;charset=utf-8')
}
