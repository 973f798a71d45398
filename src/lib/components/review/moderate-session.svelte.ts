/** A check of a pupil while the tutor marks it: each mark and comment kept as it is made, with what it teaches. */
import type { Outcome } from '$lib/marking'
import { decidedOutcomes } from '$lib/recall'
import {
  marksBeside,
  newReview,
  ofPupil,
  withPoint,
  type PupilCheck,
  type Review,
  type SharedPage,
} from '$lib/review'
import {
  changeReview,
  forgetWording,
  getPupil,
  getPupilPages,
  listTaughtBy,
  type LearnedWording,
  type Lesson,
} from '$lib/store'
import type { Topic } from '$lib/syllabus'
import { outcomeWords } from '$lib/view/sentences'
import { keepDrafts } from '../draft-keeper'
import { lessonOf, provedLesson } from '../learn'
import { openMarker, type OpenMarker } from '../marker'
import { messageOf } from '../message-of'
import { readNow } from '../now'
import { marksByRef, wordsOfOthers } from './marks-by-ref'

interface Opened {
  readonly pupilId: string
  readonly name: string
  readonly one: PupilCheck
  readonly topic: Topic
  readonly page: SharedPage | undefined
}

export class ModerateSession {
  stage: 'opening' | 'open' | 'unknown' = $state('opening')
  opened: Opened | undefined = $state.raw()
  review: Review | undefined = $state.raw()
  fault = $state('')
  /** For a live region: what was just done. */
  told = $state('')
  /** The tutor sees the other marks. */
  shown = $state(false)
  /** What points learnt from this check, by ref. */
  taught = $state.raw(marksByRef<LearnedWording>(undefined))
  /** One change at a time, each on what is kept by then: fast keys must not overtake each other. */
  #queue: Promise<void> = Promise.resolve()
  /** Kept with its mark, and proved after that and apart: keeping a mark waits for no marker. */
  #learning: Promise<void> = Promise.resolve()
  #marker: OpenMarker | undefined
  /** Comments while they are typed: the last word of each is kept when its field is left. */
  readonly #typing = keepDrafts<() => void>(
    (comment) => {
      comment()
      return this.#queue
    },
    { onkept: () => undefined, onfault: () => undefined },
  )

  readonly check = $derived(this.opened?.one.check)
  /** Only the points of this check, in its order: the topic may have had others. */
  readonly points = $derived(
    (this.check?.marks ?? []).map(
      ({ ref }) =>
        this.opened?.topic.points.find((point) => point.ref === ref) ?? {
          ref,
          text: '',
          ideas: [],
        },
    ),
  )
  readonly marks = $derived(marksByRef(this.review))
  readonly done = $derived(
    this.review?.points.filter(({ outcome }) => outcome !== null).length ?? 0,
  )
  readonly beside = $derived(this.check ? marksBeside(this.check, this.review) : [])
  readonly others = $derived(
    this.shown && this.check ? wordsOfOthers(decidedOutcomes(ofPupil(this.check))) : undefined,
  )

  async open(pupilId: string, checkId: string): Promise<void> {
    try {
      const whole = await getPupil(pupilId)
      const one = whole?.kept.checks.find(({ check }) => check.id === checkId)
      const topic = one && whole?.kept.topics[one.topic]
      if (whole && one && topic) {
        const pages = await getPupilPages(pupilId, [checkId])
        this.opened = { pupilId, name: whole.pupil.name, one, topic, page: pages.get(checkId) }
        this.review = whole.reviews.get(checkId) ?? newReview(pupilId, checkId)
        this.shown = !this.review.blind
        this.taught = await this.#taughtHere()
      }
    } catch (error) {
      this.fault = messageOf(error)
    }
    this.stage = this.opened ? 'open' : 'unknown'
  }

  keepNow(): void {
    void this.#typing.keepNow()
  }

  close(): void {
    this.#marker?.stop()
  }

  mark(ref: string, outcome: Outcome | null): void {
    const comment = this.marks.get(ref)?.comment ?? ''
    const atMs = readNow().nowMs
    this.#change(
      (kept) => withPoint(kept, { ref, outcome, comment, atMs }),
      `Point ${ref}: ${outcome === null ? 'no mark' : outcomeWords(outcome)}.`,
      () => this.#lesson(ref, outcome).catch((error: unknown) => this.#notLearnt(error)),
    )
  }

  comment(ref: string, words: string): void {
    const outcome = this.marks.get(ref)?.outcome ?? null
    const atMs = readNow().nowMs
    this.#change((kept) => withPoint(kept, { ref, outcome, comment: words, atMs }), 'Comment kept.')
  }

  commentAll(words: string): void {
    this.#change((kept) => ({ ...kept, comment: words }), 'Comment kept.')
  }

  /** A comment that is still typed. */
  typed(comment: () => void): void {
    this.#typing.changed(comment)
  }

  show(): void {
    this.shown = true
    // Marked to the end before anything was shown: it stays noted as blind.
    if (this.done < this.points.length)
      this.#change((kept) => ({ ...kept, blind: false }), 'The other marks are shown.')
    else this.told = 'The other marks are shown.'
  }

  async unlearn(wording: LearnedWording): Promise<void> {
    try {
      await this.#queue
      await this.#learning
      await forgetWording(wording)
      this.taught = await this.#taughtHere()
      this.told = `Point ${wording.ref} has not learnt this wording. Your mark stands.`
    } catch (error) {
      this.fault = messageOf(error)
    }
  }

  #change(
    make: (kept: Review) => Review,
    says: string,
    teaches?: () => Promise<Lesson | undefined>,
  ): void {
    if (!this.opened || !this.review) return
    const { pupilId, one } = this.opened
    const stamped = (kept: Review): Review => ({ ...make(kept), savedAtMs: readNow().nowMs })
    this.review = stamped(this.review)
    this.told = says
    this.#queue = this.#queue
      .then(() => teaches?.())
      .then((lesson) => changeReview(pupilId, one.check.id, stamped, lesson))
      .then(
        () => (this.fault = ''),
        (error: unknown) => (this.fault = `This was not kept. ${messageOf(error)}`),
      )
      .then(() => undefined)
  }

  async #lesson(ref: string, outcome: Outcome | null): Promise<Lesson | undefined> {
    if (!this.opened?.page) return undefined
    const { pupilId, one, topic } = this.opened
    const page = { ...this.opened.page, topic }
    const made = await lessonOf(one.check, page, ref, outcome, { by: 'tutor', pupilId })
    this.#learning = Promise.all([this.#learning, this.#queue])
      .then(async () => {
        this.#marker ??= openMarker()
        await provedLesson(made, page, this.#marker.mark)
        this.taught = await this.#taughtHere()
      })
      .catch((error: unknown) => this.#notLearnt(error))
    return made
  }

  async #taughtHere(): Promise<ReadonlyMap<string, LearnedWording>> {
    const wordings = await listTaughtBy(this.opened?.pupilId ?? '')
    return marksByRef({
      points: wordings.filter(({ checkId }) => checkId === this.opened?.one.check.id),
    })
  }

  #notLearnt(error: unknown): undefined {
    this.fault = `Your marks are kept, but a point has not learnt from one. ${messageOf(error)}`
  }
}
