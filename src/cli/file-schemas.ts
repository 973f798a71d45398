/**
 * npm run -s schemas: writes the JSON Schemas of the two files that pupil and tutor exchange into static/, where the app
 * serves them. They are made from the schemas that the app reads with, so that what is published is what is accepted.
 */
import { writeFileSync } from 'node:fs'
import { toJsonSchema } from '@valibot/to-json-schema'
import { recallFileSchema, returnFileSchema } from '../lib/store'

export const FILES = [
  {
    path: 'static/recall-file.schema.json',
    title: 'Second Ink recall file, version 1',
    description:
      'What a pupil saves for the tutor: checks with the marks of each point, the topics as they stood, and, if the pupil wishes, the text of each page. Times are milliseconds since 1970 UTC; spans are UTF-16 offsets into the text, end exclusive.',
    schema: recallFileSchema,
  },
  {
    path: 'static/return-file.schema.json',
    title: 'Second Ink file from a tutor, version 1',
    description:
      'What a tutor saves for one pupil: the tutor’s mark and comment of each point, and a comment on each check.',
    schema: returnFileSchema,
  },
]

/** The text of one published schema. Checks that JSON Schema cannot say (that a day exists) are left out. */
export const schemaText = ({ title, description, schema }: (typeof FILES)[number]): string =>
  `${JSON.stringify({ ...toJsonSchema(schema, { errorMode: 'ignore' }), title, description }, null, 2)}\n`

if (process.argv[1]?.endsWith('file-schemas.ts'))
  for (const file of FILES) writeFileSync(file.path, schemaText(file))
