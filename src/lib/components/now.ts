/** The one place where pages read the clock. */
import { dayAt, type Day, type Now } from '$lib/recall'

export const readNow = (): Now => ({
  nowMs: Date.now(),
  zone: Intl.DateTimeFormat().resolvedOptions().timeZone || 'UTC',
})

export function readToday(): Day {
  const { nowMs, zone } = readNow()
  return dayAt(nowMs, zone)
}
