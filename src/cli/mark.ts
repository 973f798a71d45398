/**
 * npm run -s mark -- SYLLABUS.yaml TOPIC-ID DUMP.txt [DUMP2.txt …] [--json]
 * npm run -s mark -- SYLLABUS.yaml TOPIC-ID FOLDER   writes a table (CSV) and a summary of its .txt files into it
 * Exit 2 with one line on stderr where a file, topic or path is bad.
 */
import { run } from './files'
import { markCommand } from './mark-command'

run(markCommand)
