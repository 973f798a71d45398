/** A draft -> a marked check that is kept, or, where it cannot be kept, held in memory. */
import type { Check } from '$lib/recall'
import {
  addCheck,
  changeSettings,
  getSettings,
  listTopicChecks,
  type Draft,
  type Saving,
} from '$lib/store'
import { lastMarked } from './last-marked'
import { learnedOf } from './learn'
import { findTopic } from './library'
import { markInWorker, type MarkRun } from './marker'
import { messageOf } from './message-of'
import { newCheck } from './new-check'
import { readNow } from './now'
import { askToKeepOnce } from './safe-keeping'

export { messageOf }

export interface DraftRun {
  /** The id of the check; `undefined` once it was stopped. Rejects with a plain message where it cannot be marked. */
  readonly promise: Promise<string | undefined>
  /** Goes back to writing: nothing comes of it. Too late once the check is being kept. */
  readonly stop: () => void
}

/** `saving`: how the window that wrote it is known to the store; what another window wrote of the draft stays. */
export function markDraft(
  draft: Draft,
  saving?: Pick<Saving<'draft'>, 'known' | 'window'>,
): DraftRun {
  let run: MarkRun | undefined
  let stop = () => {}
  const stopped = new Promise<'stopped'>((done) => {
    stop = () => {
      run?.stop()
      done('stopped')
    }
  })
  const marked = async () => {
    const found = await findTopic(draft.syllabusId, draft.topicId)
    if (!found) throw new Error('This topic is no longer in your syllabi.')
    run = markInWorker(found.topic, draft.text, await learnedOf(draft.syllabusId, found.topic))
    return { topic: found.topic, report: await run.promise, earlier: await earlierChecks(draft) }
  }
  const promise = Promise.race([marked(), stopped]).then(async (made) => {
    if (made === 'stopped') return undefined
    const records = newCheck({ draft, ...made, now: readNow() })
    lastMarked.current = records
    try {
      await addCheck(records.check, records.page, {
        draft,
        ...(saving ?? { known: draft, window: '' }),
      })
      // Not waited for: the browser may put the question to the user.
      askToKeepOnce()
      await takeUp(draft.syllabusId)
    } catch (error) {
      // The marked page shows it from memory and says so; the draft stays where it is.
      lastMarked.current = { ...records, fault: messageOf(error) }
    }
    return records.check.id
  })
  return { promise, stop: () => stop() }
}

/** A syllabus that was taken off the shelf and is checked after all is in use again, so that Today has the topic. */
async function takeUp(syllabusId: string): Promise<void> {
  const left = (ids: readonly string[] | undefined) =>
    ids !== undefined && !ids.includes(syllabusId)
  if (!left((await getSettings()).syllabusIds)) return
  await changeSettings((settings) =>
    left(settings.syllabusIds)
      ? { ...settings, syllabusIds: [...(settings.syllabusIds ?? []), syllabusId] }
      : settings,
  )
}

/** Where they cannot be read, the clock alone dates the check. */
async function earlierChecks(draft: Draft): Promise<Check[]> {
  try {
    return (await listTopicChecks(draft)).checks
  } catch {
    return []
  }
}
