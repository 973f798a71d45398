/**
 * Source: 1EdTech Competencies and Academic Standards Exchange (CASE) Service, information model version 1.1, final
 * release of 24 January 2025: the attributes, multiplicities and data types of tables 7.1.23 (CFPckgAssociation), 7.1.24
 * (CFPckgDocument), 7.1.25 (CFPckgItem) and of LinkGenURI, written down here as a JSON Schema.
 * Source of the identifiers: RFC 9562, section 5.5, and Python 3's module uuid; of the hash: RFC 3174, section 7.3, and
 * Node's own.
 */
import { createHash } from 'node:crypto'
import { readdirSync, readFileSync } from 'node:fs'
import { Ajv } from 'ajv'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { casePackage, readSyllabus, type Syllabus } from '../../src/lib/syllabus'
import { sha1 } from '../../src/lib/syllabus/export/sha1'
import { uuidOf } from '../../src/lib/syllabus/export/uuid'
import { syllabi } from '../unit/syllabus/arbitrary'

const uuid = {
  type: 'string',
  pattern: '^[0-9a-f]{8}-[0-9a-f]{4}-[1-8][0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$',
}
// An absolute URI (RFC 3986), and a dateTime of ISO 8601.
const anyURI = { type: 'string', pattern: '^[A-Za-z][A-Za-z0-9+.-]*:[^\\s]+$' }
const dateTime = {
  type: 'string',
  pattern: '^\\d{4}-\\d\\d-\\d\\dT\\d\\d:\\d\\d:\\d\\d(\\.\\d+)?(Z|[+-]\\d\\d:\\d\\d)$',
}
const normalizedString = { type: 'string', pattern: '^[^\\t\\r\\n]*$' }
const string = { type: 'string' }
const normalizedStrings = { type: 'array', items: normalizedString }
const extensions = { type: 'object' }

const object = (required: object, optional: object) => ({
  type: 'object',
  additionalProperties: false,
  required: Object.keys(required),
  properties: { ...required, ...optional },
})
const link = object({ title: normalizedString, identifier: string, uri: anyURI }, {})

const cfPackage = object(
  {
    CFDocument: object(
      {
        identifier: uuid,
        uri: anyURI,
        creator: normalizedString,
        title: normalizedString,
        lastChangeDateTime: dateTime,
      },
      {
        frameworkType: normalizedString,
        caseVersion: { enum: ['1.1'] },
        officialSourceURL: anyURI,
        publisher: normalizedString,
        description: string,
        subject: normalizedStrings,
        subjectURI: { type: 'array', items: link },
        language: normalizedString,
        version: normalizedString,
        adoptionStatus: normalizedString,
        statusStartDate: string,
        statusEndDate: string,
        licenseURI: link,
        notes: string,
        extensions,
      },
    ),
  },
  {
    CFItems: {
      type: 'array',
      items: object(
        { identifier: uuid, fullStatement: string, uri: anyURI, lastChangeDateTime: dateTime },
        {
          alternativeLabel: normalizedString,
          CFItemType: normalizedString,
          humanCodingScheme: normalizedString,
          listEnumeration: normalizedString,
          abbreviatedStatement: normalizedString,
          conceptKeywords: normalizedStrings,
          conceptKeywordsURI: link,
          notes: string,
          subject: normalizedStrings,
          subjectURI: { type: 'array', items: link },
          language: normalizedString,
          educationLevel: normalizedStrings,
          CFItemTypeURI: link,
          licenseURI: link,
          statusStartDate: string,
          statusEndDate: string,
          extensions,
        },
      ),
    },
    CFAssociations: {
      type: 'array',
      items: object(
        {
          identifier: uuid,
          associationType: { enum: ['isChildOf'] },
          uri: anyURI,
          originNodeURI: link,
          destinationNodeURI: link,
          lastChangeDateTime: dateTime,
        },
        {
          sequenceNumber: { type: 'integer' },
          CFAssociationGroupingURI: link,
          notes: string,
          extensions,
        },
      ),
    },
    CFDefinitions: { type: 'object' },
    CFRubrics: { type: 'array' },
    extensions,
  },
)

const validate = new Ajv({ allErrors: true }).compile(cfPackage)
const AT_MS = Date.UTC(2027, 2, 1, 12, 30)
/** As a program on another machine has it. */
const sent = (syllabus: Syllabus) =>
  JSON.parse(JSON.stringify(casePackage(syllabus, AT_MS))) as ReturnType<typeof casePackage>

/** Reads the tree back by nothing but identifiers and the order of the associations. */
function treeOf({ CFDocument, CFItems, CFAssociations }: ReturnType<typeof sent>) {
  const childrenOf = (identifier: string) =>
    CFAssociations.filter((one) => one.destinationNodeURI.identifier === identifier)
      .sort((a, b) => a.sequenceNumber - b.sequenceNumber)
      .map((one) => CFItems.find((item) => item.identifier === one.originNodeURI.identifier)!)
  return childrenOf(CFDocument.identifier).map((topic) => ({
    title: topic.fullStatement,
    points: childrenOf(topic.identifier).map((point) => ({
      ref: point.humanCodingScheme,
      text: point.fullStatement,
      ideas: point.conceptKeywords ?? [],
    })),
  }))
}

const flat = (text: string) => text.replace(/[\t\r\n]+/g, ' ')
const expectedTree = ({ topics }: Syllabus) =>
  topics.map(({ title, points }) => ({
    title,
    points: points.map(({ ref, text, ideas }) => ({
      ref: flat(ref),
      text,
      ideas: ideas.map(({ written }) => flat(written)),
    })),
  }))

describe('a package has what the standard asks for and nothing that it does not know', () => {
  const folder = new URL('../../syllabi/', import.meta.url)
  test.each(readdirSync(folder).filter((name) => name.endsWith('.yaml')))('%s', (name) => {
    const read = readSyllabus(readFileSync(new URL(name, folder), 'utf8'))
    if (!read.ok) throw new Error('It has mistakes.')
    const made = sent(read.syllabus)
    validate(made)
    expect(validate.errors ?? []).toEqual([])
    expect(treeOf(made)).toEqual(expectedTree(read.syllabus))
  })

  test('any syllabus, and its tree reads back', () => {
    fc.assert(
      fc.property(syllabi, (syllabus) => {
        const made = sent(syllabus)
        validate(made)
        expect(validate.errors ?? []).toEqual([])
        expect(treeOf(made)).toEqual(expectedTree(syllabus))
        const identifiers = [made.CFDocument, ...made.CFItems, ...made.CFAssociations].map(
          ({ identifier }) => identifier,
        )
        expect(new Set(identifiers).size).toBe(identifiers.length)
      }),
      { numRuns: 200 },
    )
  })

  test('the same identifiers every time, whatever the words are by then', () => {
    const topic = { id: 'drift', title: 'Drift', points: [{ ref: '1', text: 'Waves.', ideas: [] }] }
    const syllabus: Syllabus = { format: 1, id: 'shore', title: 'Shore', topics: [topic] }
    const later = { ...syllabus, topics: [{ ...topic, title: 'Longshore drift' }] }
    const identifiers = (one: Syllabus) => sent(one).CFItems.map(({ identifier }) => identifier)
    expect(identifiers(later)).toEqual(identifiers(syllabus))
    expect(sent(syllabus).CFDocument.lastChangeDateTime).toBe('2027-03-01T12:30:00.000Z')
  })
})

describe('identifiers', () => {
  test('www.example.com in the namespace of domain names, as Python’s uuid.uuid5 has it', () => {
    expect(uuidOf('6ba7b810-9dad-11d1-80b4-00c04fd430c8', 'www.example.com')).toBe(
      '2ed6657d-e927-568b-95e1-2665a8aea6a2',
    )
  })

  const hex = (bytes: readonly number[]) => Buffer.from(bytes).toString('hex')
  test.each([
    { message: 'abc', hash: 'a9993e364706816aba3e25717850c26c9cd0d89d' },
    {
      message: 'abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq',
      hash: '84983e441c3bd26ebaae4aa1f95129e5e54670f1',
    },
  ])('RFC 3174, section 7.3: $message', ({ message, hash }) => {
    expect(hex(sha1([...Buffer.from(message)]))).toBe(hash)
  })

  test('the hash is that of Node, for bytes of any length', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 200 }), (bytes) => {
        expect(hex(sha1([...bytes]))).toBe(createHash('sha1').update(bytes).digest('hex'))
      }),
    )
  })

  test('a name in any script is taken in UTF-8, as Node takes it', () => {
    const namespace = '6ba7b810-9dad-11d1-80b4-00c04fd430c8'
    const bytes = Buffer.from(namespace.replaceAll('-', ''), 'hex')
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (name) => {
        const hash = createHash('sha1').update(bytes).update(Buffer.from(name, 'utf8')).digest()
        // The first 6 bytes are untouched by version and variant.
        expect(uuidOf(namespace, name).replaceAll('-', '').slice(0, 12)).toBe(
          hash.toString('hex').slice(0, 12),
        )
      }),
    )
  })
})
