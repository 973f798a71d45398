/**
 * A syllabus -> a package of the open standard for competencies: 1EdTech Competencies and Academic Standards Exchange
 * (CASE) Service 1.1, information model of 24 January 2025, classes CFPackage, CFPckgDocument, CFPckgItem and
 * CFPckgAssociation. Nothing is served from anywhere, so that every URI is a name (urn:uuid, RFC 9562) and no address.
 */
import { writeWordings } from '../notation'
import type { Point, Syllabus } from '../types'
import { uuidOf } from './uuid'

/** Ours alone: identifiers of the same syllabus, topic and point are the same in every export. */
const NAMESPACE = '8c0a3a52-6f0e-4b52-9a8f-5c7f5d3f1e27'

interface Named {
  readonly identifier: string
  readonly uri: string
}

interface LinkGenURI extends Named {
  readonly title: string
}

export interface CasePackage {
  readonly CFDocument: Named & {
    readonly caseVersion: '1.1'
    readonly creator: string
    readonly title: string
    readonly lastChangeDateTime: string
    readonly notes?: string
  }
  readonly CFItems: readonly (Named & {
    readonly fullStatement: string
    readonly CFItemType: 'Topic' | 'Point'
    readonly humanCodingScheme?: string
    readonly conceptKeywords?: readonly string[]
    readonly lastChangeDateTime: string
    readonly extensions?: Readonly<Record<string, unknown>>
  })[]
  readonly CFAssociations: readonly (Named & {
    readonly associationType: 'isChildOf'
    readonly sequenceNumber: number
    readonly originNodeURI: LinkGenURI
    readonly destinationNodeURI: LinkGenURI
    readonly lastChangeDateTime: string
  })[]
}

/**
 * Topics are children of the document, points of their topic. A point's ideas are its keywords; what else it has (how
 * many are enough, equation, value, steps, …) stands in `extensions` as it does in a syllabus file. `atMs` is the time
 * of the last change, milliseconds since 1970 UTC.
 */
export function casePackage(syllabus: Syllabus, atMs: number): CasePackage {
  const lastChangeDateTime = new Date(atMs).toISOString()
  const { id, title, note, topics } = syllabus
  const document = { ...named(id), title: oneLine(title) }
  const nodes = topics.map((topic) => ({
    topic: {
      ...named(id, 'topic', topic.id),
      fullStatement: topic.title,
      CFItemType: 'Topic' as const,
      lastChangeDateTime,
      ...(topic.caution === undefined ? {} : { extensions: { caution: topic.caution } }),
    },
    points: topic.points.map((point) => pointItem(id, point, lastChangeDateTime)),
  }))
  const childOf = (child: CasePackage['CFItems'][number], parent: LinkGenURI, place: number) => ({
    ...named(id, 'child', child.identifier, parent.identifier),
    associationType: 'isChildOf' as const,
    sequenceNumber: place + 1,
    originNodeURI: linkTo(child),
    destinationNodeURI: parent,
    lastChangeDateTime,
  })
  return {
    CFDocument: {
      ...document,
      caseVersion: '1.1',
      creator: 'Second Ink',
      lastChangeDateTime,
      ...(note === undefined ? {} : { notes: note }),
    },
    CFItems: nodes.flatMap(({ topic, points }) => [topic, ...points]),
    CFAssociations: nodes.flatMap(({ topic, points }, t) => [
      childOf(topic, document, t),
      ...points.map((point, p) => childOf(point, linkTo(topic), p)),
    ]),
  }
}

function pointItem(id: string, point: Point, lastChangeDateTime: string) {
  const extensions = furtherFields(point)
  return {
    ...named(id, 'point', point.ref),
    fullStatement: point.text,
    CFItemType: 'Point' as const,
    humanCodingScheme: oneLine(point.ref),
    ...(point.ideas.length > 0
      ? { conceptKeywords: point.ideas.map(({ written }) => oneLine(written)) }
      : {}),
    lastChangeDateTime,
    ...(Object.keys(extensions).length > 0 ? { extensions } : {}),
  }
}

/** By the names that they have in a syllabus file. */
function furtherFields({ cue, any, reject, equation, value, steps }: Point) {
  const where = Object.entries(equation?.where ?? {}).map(
    ([symbol, words]) => [symbol, writeWordings(words)] as const,
  )
  const fields = {
    cue,
    any,
    reject,
    equation: equation?.written,
    where: where.length > 0 ? Object.fromEntries(where) : undefined,
    value: value?.written,
    steps: steps?.map(({ written }) => written),
  }
  return Object.fromEntries(Object.entries(fields).filter(([, field]) => field !== undefined))
}

function named(...name: readonly string[]): Named {
  const identifier = uuidOf(NAMESPACE, JSON.stringify(name))
  return { identifier, uri: `urn:uuid:${identifier}` }
}

const linkTo = ({
  identifier,
  uri,
  fullStatement,
}: Named & { readonly fullStatement: string }): LinkGenURI => ({
  title: oneLine(fullStatement),
  identifier,
  uri,
})

/** A NormalizedString of the standard: no tab, no line break. */
const oneLine = (text: string): string => text.replace(/[\t\r\n]+/g, ' ')
