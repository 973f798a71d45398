/** SHA-1 (RFC 3174), for names and never for secrets. 20 bytes of any bytes. */
export function sha1(message: readonly number[]): number[] {
  const state = [0x67452301, 0xefcdab89, 0x98badcfe, 0x10325476, 0xc3d2e1f0]
  const padded = pad(message)
  for (let at = 0; at < padded.length; at += 64) addBlock(state, padded.slice(at, at + 64))
  return state.flatMap(bytesOf)
}

/** A one bit, zeros, and the length in bits as 64 bits: a multiple of 64 bytes. */
function pad(message: readonly number[]): number[] {
  const bits = message.length * 8
  const zeros = (119 - (message.length % 64)) % 64
  return [
    ...message,
    0x80,
    ...new Array<number>(zeros).fill(0),
    ...bytesOf(Math.floor(bits / 2 ** 32)),
    ...bytesOf(bits >>> 0),
  ]
}

const bytesOf = (word: number): number[] => [24, 16, 8, 0].map((shift) => (word >>> shift) & 0xff)

function addBlock(state: number[], block: readonly number[]): void {
  const words: number[] = []
  for (let t = 0; t < 80; t += 1) {
    const i = t * 4
    words.push(
      t < 16
        ? (block[i]! << 24) | (block[i + 1]! << 16) | (block[i + 2]! << 8) | block[i + 3]!
        : turned(words[t - 3]! ^ words[t - 8]! ^ words[t - 14]! ^ words[t - 16]!, 1),
    )
  }
  let [a, b, c, d, e] = state as [number, number, number, number, number]
  for (let t = 0; t < 80; t += 1) {
    const next = (turned(a, 5) + mixed(t, b, c, d) + e + words[t]!) | 0
    ;[a, b, c, d, e] = [next, a, turned(b, 30), c, d]
  }
  const sum = [a, b, c, d, e]
  sum.forEach((word, i) => (state[i] = (state[i]! + word) >>> 0))
}

const turned = (word: number, by: number): number => (word << by) | (word >>> (32 - by))

function mixed(t: number, b: number, c: number, d: number): number {
  if (t < 20) return ((b & c) | (~b & d)) + 0x5a827999
  if (t < 40) return (b ^ c ^ d) + 0x6ed9eba1
  if (t < 60) return ((b & c) | (b & d) | (c & d)) + 0x8f1bbcdc
  return (b ^ c ^ d) + 0xca62c1d6
}
