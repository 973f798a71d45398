/**
 * Both inks, and every other colour that carries something, on every paper they stand on, in both themes and on paper.
 * Source: WCAG 2.2, definitions of relative luminance and contrast ratio; success criteria 1.4.3 (text) and 1.4.11 (the rest).
 */
import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'

type Rgb = readonly [number, number, number]

/** Channels from 0 to 1, linear in light: WCAG 2.2, "relative luminance". */
function linear(hex: string): Rgb {
  const digits = /^#([0-9a-f]{3}|[0-9a-f]{6})$/i.exec(hex)?.[1]
  if (!digits) throw new Error(`${hex} is no colour of three channels.`)
  const channel = (at: number) => {
    const pair = digits.length === 3 ? digits[at]!.repeat(2) : digits.slice(at * 2, at * 2 + 2)
    const share = Number.parseInt(pair, 16) / 255
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4
  }
  return [channel(0), channel(1), channel(2)]
}

const luminance = ([r, g, b]: Rgb) => 0.2126 * r + 0.7152 * g + 0.0722 * b

function contrast(a: Rgb, b: Rgb): number {
  const [dark, light] = [luminance(a), luminance(b)].sort((x, y) => x - y) as [number, number]
  return (light + 0.05) / (dark + 0.05)
}

/** What someone sees who lacks one kind of cone; in linear light, clipped to what a screen can show. */
type Vision = keyof typeof MACHADO
/** Source: Machado, Oliveira and Fernandes (2009), IEEE Transactions on Visualization and Computer Graphics 15(6), severity 1.0. */
const MACHADO = {
  protanopia: [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  deuteranopia: [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  tritanopia: [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
} as const

const seen = (colour: Rgb, vision: Vision): Rgb =>
  MACHADO[vision].map((row) =>
    Math.min(1, Math.max(0, row[0] * colour[0] + row[1] * colour[1] + row[2] * colour[2])),
  ) as unknown as Rgb

const css = readFileSync('src/app.css', 'utf8')
const both = new Map(
  [...css.matchAll(/--([a-z-]+): light-dark\((#[0-9a-f]{3,6}), (#[0-9a-f]{3,6})\);/g)].map(
    ([, name, light, dark]) => [name, { light, dark }] as const,
  ),
)
const printed = new Map(
  [
    ...(/@media print \{([\s\S]*)/.exec(css)?.[1] ?? '').matchAll(
      /--([a-z-]+): (#[0-9a-f]{3,6});/g,
    ),
  ].map(([, name, colour]) => [name, colour] as const),
)

const PAPERS = ['paper', 'paper-edge', 'tie']
const TEXT = ['first-ink', 'second-ink', 'voice', 'quiet']
/** Lines of fields and buttons, and the ring round what has the focus. */
const SHAPES = ['line', 'focus']

describe('the formula, by what the W3C publishes', () => {
  // WCAG 2.2, "contrast ratio": from 1 to 21. Understanding success criterion 1.4.11, captions of its figures: to one place,
  // some rounded and some cut.
  test.each([
    { a: '#000', b: '#fff', ratio: 21 },
    { a: '#fff', b: '#fff', ratio: 1 },
    { a: '#949494', b: '#fff', ratio: 3 },
    { a: '#e5e5e5', b: '#6221ea', ratio: 5.6 },
    { a: '#fff000', b: '#fff', ratio: 1.2 },
  ])('$a on $b: $ratio to 1', ({ a, b, ratio }) => {
    expect(Math.abs(contrast(linear(a), linear(b)) - ratio)).toBeLessThan(0.1)
    expect(contrast(linear(b), linear(a))).toBe(contrast(linear(a), linear(b)))
  })

  test('the greys either side of 4.5 to 1 on white (common practice)', () => {
    expect(contrast(linear('#767676'), linear('#fff'))).toBeGreaterThan(4.5)
    expect(contrast(linear('#777777'), linear('#fff'))).toBeLessThan(4.5)
  })

  test('who lacks a cone sees white, black and grey as they are', () => {
    for (const vision of Object.keys(MACHADO) as Vision[])
      for (const grey of ['#fff', '#000', '#777'])
        linear(grey).forEach((channel, i) =>
          expect(seen(linear(grey), vision)[i]).toBeCloseTo(channel, 4),
        )
  })
})

test('the style sheet has each colour once, for both themes', () => {
  expect([...both.keys()]).toEqual(
    expect.arrayContaining([...PAPERS, ...TEXT, ...SHAPES, 'button', 'button-text']),
  )
})

describe.each(['light', 'dark'] as const)('%s', (theme) => {
  const colour = (name: string) => linear(both.get(name)?.[theme] ?? '')
  const pairs = PAPERS.flatMap((paper) => TEXT.map((ink) => ({ ink, paper })))

  test.each([...pairs, { ink: 'button-text', paper: 'button' }])(
    '$ink can be read on $paper, whatever cones there are',
    ({ ink, paper }) => {
      expect(contrast(colour(ink), colour(paper))).toBeGreaterThanOrEqual(4.5)
      for (const vision of Object.keys(MACHADO) as Vision[])
        expect(
          contrast(seen(colour(ink), vision), seen(colour(paper), vision)),
          vision,
        ).toBeGreaterThanOrEqual(4.5)
    },
  )

  test.each(SHAPES.flatMap((shape) => ['paper', 'paper-edge'].map((paper) => ({ shape, paper }))))(
    '$shape stands out from $paper',
    ({ shape, paper }) => {
      expect(contrast(colour(shape), colour(paper))).toBeGreaterThanOrEqual(3)
    },
  )
})

test.each(TEXT)('%s can be read in print', (ink) => {
  const paper = linear(printed.get('paper') ?? '')
  expect(contrast(linear(printed.get(ink) ?? ''), paper)).toBeGreaterThanOrEqual(4.5)
})
