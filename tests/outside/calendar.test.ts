/**
 * The calendar file read by ical.js, a parser that has nothing to do with what wrote it, and held against RFC 5545, Internet
 * Calendaring and Scheduling Core Object Specification (2009).
 */
import ICAL from 'ical.js'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  calendarFile,
  type CalendarContent,
  type CalendarTopic,
} from '../../src/lib/view/calendar-file'

const NOW = Date.parse('2027-03-10T16:20:30Z')
const topic = (title: string, topicId = 'drift', syllabusId = 'shores'): CalendarTopic => ({
  syllabusId,
  topicId,
  title,
  syllabusTitle: 'Shoreline Science, Level 2',
})
const planned = (of: CalendarTopic, day: string, session = 1) => ({
  topic: of,
  day,
  due: day,
  minutes: 18,
  session,
  needed: true,
})
const content = (more: Partial<CalendarContent> = {}): CalendarContent => ({
  checks: [
    planned(topic('Longshore drift'), '2027-03-28'),
    planned(topic('Longshore drift'), '2027-10-31', 2),
  ],
  exams: [
    {
      syllabusId: 'shores',
      syllabusTitle: 'Shoreline Science, Level 2',
      day: '2027-12-31',
      title: 'Paper 1',
    },
  ],
  calendarId: 'a3f1',
  nowMs: NOW,
  ...more,
})

const eventsOf = (file: string) => {
  const calendar = new ICAL.Component(ICAL.parse(file) as unknown[])
  return calendar.getAllSubcomponents('vevent').map((event) => new ICAL.Event(event))
}

describe('RFC 5545', () => {
  test('3.1: every line ends in CR LF and is at most 75 octets long, whatever the title', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', minLength: 1, maxLength: 300 }), (title) => {
        const file = calendarFile(content({ checks: [planned(topic(title), '2027-03-28')] }))
        const lines = file.split('\r\n')
        for (const line of lines) {
          expect(new TextEncoder().encode(line).length).toBeLessThanOrEqual(75)
          expect(line).not.toMatch(/[\r\n]/)
        }
      }),
    )
  })

  test('3.3.11: text is escaped, and read back as it was', () => {
    const title = 'Rocks; sand, mud \\ and "lime": Ω ☂ 🌊\nsecond line'
    const [event] = eventsOf(
      calendarFile(content({ checks: [planned(topic(title), '2027-03-28')] })),
    )
    expect(event?.summary).toBe(`Check: ${title}`)
  })

  test('3.4, 3.7.3, 3.7.4: one VCALENDAR with PRODID and VERSION 2.0', () => {
    const calendar = new ICAL.Component(ICAL.parse(calendarFile(content())) as unknown[])
    expect(calendar.name).toBe('vcalendar')
    expect(calendar.getFirstPropertyValue('version')).toBe('2.0')
    expect(calendar.getFirstPropertyValue('prodid')).toMatch(/Second Ink/)
  })

  test('3.3.4, 3.8.2.4: all-day events on their dates, over both changes of the clocks and the end of the year', () => {
    const events = eventsOf(calendarFile(content()))
    expect(events.map(({ startDate }) => startDate.toString())).toEqual([
      '2027-03-28',
      '2027-10-31',
      '2027-12-31',
    ])
    expect(events.every(({ startDate }) => startDate.isDate)).toBe(true)
    expect(calendarFile(content())).toContain('DTSTART;VALUE=DATE:20270328\r\n')
  })

  test('3.8.7.2: DTSTAMP is the time that was given, in UTC', () => {
    expect(calendarFile(content()).match(/DTSTAMP:.*/g)).toEqual(
      Array(3).fill('DTSTAMP:20270310T162030Z'),
    )
  })

  test('3.8.4.7: every event has a UID of its own, and a later file the same ones', () => {
    const uids = eventsOf(calendarFile(content())).map(({ uid }) => uid)
    expect(new Set(uids).size).toBe(uids.length)
    const moved = content({
      checks: content().checks.map((check) => ({ ...check, day: '2027-04-02' })),
      nowMs: NOW + 86_400_000,
    })
    expect(eventsOf(calendarFile(moved)).map(({ uid }) => uid)).toEqual(uids)
  })

  test('RFC 7986, 5.3: the entries of two students with the same syllabus are told apart', () => {
    const uidsOf = (calendarId: string) =>
      eventsOf(calendarFile(content({ calendarId }))).map(({ uid }) => uid)
    expect(new Set([...uidsOf('a3f1'), ...uidsOf('77c0')]).size).toBe(6)
  })

  test('3.8.4.7: ids that look alike when they are put together are told apart', () => {
    const checks = [
      planned(topic('One', 'b/1', 'a'), '2027-03-28', 1),
      planned(topic('Two', '1', 'a/b'), '2027-03-28', 1),
      planned(topic('Three', '1/1', 'a/b'), '2027-03-28', 1),
    ]
    const untitled = { syllabusId: 'shores', syllabusTitle: 'Shores' }
    const exams = ['2027-05-01', '2027-05-09'].map((day) => ({ ...untitled, day }))
    const uids = eventsOf(calendarFile(content({ checks, exams }))).map(({ uid }) => uid)
    expect(new Set(uids).size).toBe(5)
  })

  test('3.8.7.4: a later file has a higher SEQUENCE, an INTEGER of 3.3.8', () => {
    const sequenceOf = (nowMs: number) => eventsOf(calendarFile(content({ nowMs })))[0]!.sequence
    const later = sequenceOf(NOW + 86_400_000)
    expect(later).toBeGreaterThan(sequenceOf(NOW))
    expect(later).toBeLessThanOrEqual(2_147_483_647)
  })

  test('3.6.6: nobody asked for an alarm; 3.8.2.7: no event takes the day', () => {
    const file = calendarFile(content())
    expect(file).not.toContain('VALARM')
    expect(file.match(/TRANSP:TRANSPARENT/g)).toHaveLength(3)
  })
})

test('the demo’s events say so', () => {
  const checks = [planned(topic('Longshore drift', 'drift', 'demo:shores'), '2027-03-28')]
  expect(eventsOf(calendarFile(content({ checks, exams: [] })))[0]?.summary).toBe(
    'Demo. Check: Longshore drift',
  )
})

test('nothing planned is an empty calendar that can be read', () => {
  expect(eventsOf(calendarFile(content({ checks: [], exams: [] })))).toEqual([])
})
