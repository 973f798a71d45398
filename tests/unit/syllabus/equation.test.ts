import { describe, expect, test } from 'vitest'
import { NotationError, kindOfEquation, symbolsIn } from '../../../src/lib/syllabus'

describe('the kind of an equation', () => {
  test.each([
    { written: 'v = f × λ', kind: 'algebraic' },
    { written: 'V=IR', kind: 'algebraic' },
    { written: '2Br⁻ → Br₂ + 2e⁻', kind: 'chemical' },
    { written: '2H2 + O2 -> 2H2O', kind: 'chemical' },
    { written: 'N₂ + 3H₂ ⇌ 2NH₃', kind: 'chemical' },
    { written: 'N2 + 3H2 <-> 2NH3', kind: 'chemical' },
    { written: 'N2 + 3H2 <=> 2NH3', kind: 'chemical' },
    { written: 'calcium carbonate → calcium oxide + carbon dioxide', kind: 'chemical' },
  ])('$written is $kind', ({ written, kind }) => {
    expect(kindOfEquation(written)).toBe(kind)
  })

  test.each([
    { written: 'f × λ', offset: 5, says: 'One = (or a reaction arrow →) was expected' },
    { written: 'v = f = λ', offset: 6, says: 'A second =' },
    { written: 'A → B → C', offset: 6, says: 'A second reaction arrow' },
    { written: '= f', offset: 0, says: 'Nothing stands before the =' },
    { written: 'v =  ', offset: 3, says: 'Nothing stands after the =' },
    { written: '→ B', offset: 0, says: 'Nothing stands before the reaction arrow' },
    { written: 'A → B = C', offset: 6, says: 'Both an arrow and an =' },
    { written: 'v = (f', offset: 4, says: 'never closed' },
    { written: 'v = f)', offset: 5, says: 'does not close' },
    { written: `v = ${'f'.repeat(600)}`, offset: 500, says: 'at most 500' },
  ])('refused: $says', ({ written, offset, says }) => {
    try {
      kindOfEquation(written)
    } catch (error) {
      expect(error).toBeInstanceOf(NotationError)
      expect((error as NotationError).message).toContain(says)
      expect((error as NotationError).offset).toBe(offset)
      return
    }
    expect.unreachable('read without a mistake')
  })
})

describe('the symbols of an equation', () => {
  test.each([
    { written: 'v = f × λ', explained: ['v', 'f', 'λ'] },
    { written: 'V = IR', explained: ['V', 'I', 'R'], why: 'side by side is a product' },
    { written: 'Q = mcΔθ', explained: ['Q', 'm', 'c', 'Δθ'] },
    { written: 'W = mg', explained: ['W', 'mg'], why: 'the longer symbol is meant' },
    { written: 'E = ½mv²', explained: ['E', 'm', 'v'] },
    { written: 'E_k = 1/2 m v^2', explained: ['E_k', 'm', 'v'] },
    { written: 'p₁V₁ = p₂V₂', explained: ['p₁', 'V₁', 'p₂', 'V₂'] },
    { written: 'A = πr²', explained: ['A', 'r'], why: 'π is known' },
    { written: 'F = m x a', explained: ['F', 'm', 'a'], why: 'x between factors is times' },
    { written: 'y = 2x + c', explained: ['y', 'x', 'c'], why: 'x explained is a symbol' },
    { written: 'n sin θ = k', explained: ['n', 'θ', 'k'] },
    { written: 'N = Ae^-kt', explained: ['N', 'A', 'k', 't', 'e'] },
    {
      written: 'wave speed = frequency × wavelength',
      explained: ['wave speed', 'frequency', 'wavelength'],
      why: 'an equation in words',
    },
    { written: 'speed = distance divided by time', explained: ['speed', 'distance', 'time'] },
    {
      written: 'abcd = ab',
      explained: ['abc', 'ab', 'cd'],
      why: 'the first try that fails is not the last',
      unused: ['abc'],
    },
  ])('$written $why', ({ written, explained, unused }) => {
    const { used, unknown } = symbolsIn(written, explained)
    expect(unknown).toEqual([])
    expect(explained.filter((symbol) => !used.has(symbol))).toEqual(unused ?? [])
  })

  test.each([
    { written: 'v = f × λ', explained: ['v', 'f'], unknown: [{ symbol: 'λ', offset: 8 }] },
    { written: 'v₁ = f', explained: ['v', 'f'], unknown: [{ symbol: 'v₁', offset: 0 }] },
    { written: 'y = 2x', explained: ['y'], unknown: [{ symbol: 'x', offset: 5 }] },
    { written: 'V = IR', explained: ['V', 'I'], unknown: [{ symbol: 'IR', offset: 4 }] },
    {
      written: 'v = f & 𝜆',
      explained: ['v', 'f'],
      unknown: [
        { symbol: '&', offset: 6 },
        { symbol: '𝜆', offset: 8 },
      ],
    },
    {
      written: 'V = f',
      explained: ['v', 'f'],
      unknown: [{ symbol: 'V', offset: 0 }],
      why: 'case matters',
    },
  ])('$written with $explained', ({ written, explained, unknown }) => {
    expect(symbolsIn(written, explained).unknown).toEqual(unknown)
  })

  test('a long row of letters that fits nowhere is settled', () => {
    const { unknown } = symbolsIn(`v = ${'a'.repeat(400)}b`, ['v', 'a', 'aa', 'aaa'])
    expect(unknown).toHaveLength(1)
  })
})
