import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { createConnection } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { serve } from '../../../src/cli/serve.js'

let box: string
let served: Awaited<ReturnType<typeof serve>>

beforeAll(async () => {
  box = mkdtempSync(join(tmpdir(), 'second-ink-serve-'))
  const folder = join(box, 'build')
  mkdirSync(join(folder, '_app', 'immutable'), { recursive: true })
  writeFileSync(join(box, 'secret.txt'), 'outside')
  writeFileSync(join(folder, '200.html'), 'the shell')
  writeFileSync(join(folder, 'index.html'), 'the front page')
  writeFileSync(join(folder, 'topic.html'), 'the topic page')
  writeFileSync(join(folder, 'a name.txt'), 'spaced')
  writeFileSync(join(folder, '_app', 'immutable', 'start.1a2b.js'), 'export {}')
  symlinkSync(join(box, 'secret.txt'), join(folder, 'way-out.txt'))
  served = await serve({ port: 0, folder })
})

afterAll(async () => {
  await served.close()
  rmSync(box, { recursive: true })
})

/** One request exactly as written: fetch would resolve the dots itself. */
function raw(path: string, accept = '*/*', method = 'GET'): Promise<string> {
  return new Promise((done, fail) => {
    const socket = createConnection(Number(new URL(served.url).port), '127.0.0.1')
    let text = ''
    socket.on('data', (data) => (text += data.toString()))
    socket.on('end', () => done(text))
    socket.on('error', fail)
    socket.write(
      `${method} ${path} HTTP/1.1\r\nHost: here\r\nAccept: ${accept}\r\nConnection: close\r\n\r\n`,
    )
  })
}

const PAGE = 'text/html,application/xhtml+xml'

describe('what stands at an address', () => {
  test.each([
    { path: '/', accept: PAGE, status: 200, holds: 'the front page', why: 'the front page' },
    {
      path: '/topic',
      accept: PAGE,
      status: 200,
      holds: 'the topic page',
      why: 'a prerendered page',
    },
    {
      path: '/topic?topic=tides',
      accept: PAGE,
      status: 200,
      holds: 'the topic page',
      why: 'its query',
    },
    {
      path: '/topic/',
      accept: PAGE,
      status: 308,
      holds: 'location: /topic',
      why: 'a slash too many',
    },
    { path: '/old/page', accept: PAGE, status: 200, holds: 'the shell', why: 'a page unknown' },
    {
      path: '/old/page',
      accept: '*/*',
      status: 404,
      holds: 'Nothing is kept',
      why: 'not a navigation',
    },
    {
      path: '/gone.js',
      accept: PAGE,
      status: 404,
      holds: 'Nothing is kept',
      why: 'a missing asset',
    },
    {
      path: '/_app/gone',
      accept: PAGE,
      status: 404,
      holds: 'Nothing is kept',
      why: 'a missing part',
    },
    { path: '/a%20name.txt', accept: '*/*', status: 200, holds: 'spaced', why: 'an encoded name' },
    { path: '/%zz', accept: PAGE, status: 400, holds: 'cannot be read', why: 'broken encoding' },
  ])('$why: $path is $status', async ({ path, accept, status, holds }) => {
    const answer = await raw(path, accept)
    expect(answer).toContain(`HTTP/1.1 ${status} `)
    expect(answer).toContain(holds)
  })
})

test.each([
  '/../secret.txt',
  '/%2e%2e/secret.txt',
  '/..%2fsecret.txt',
  '/..%5csecret.txt',
  '/_app/../../secret.txt',
  '//../secret.txt',
  '/way-out.txt',
  '/secret.txt%00.html',
])('%s leads nowhere outside the folder', async (path) => {
  const answer = await raw(path)
  expect(answer).not.toContain('outside')
  expect(answer).toMatch(/^HTTP\/1\.1 40[04] /)
})

test.each([
  ['/topic', 'content-type: text/html; charset=utf-8'],
  ['/topic', 'cache-control: no-cache'],
  ['/_app/immutable/start.1a2b.js', 'content-type: text/javascript; charset=utf-8'],
  ['/_app/immutable/start.1a2b.js', 'cache-control: max-age=31536000, immutable'],
  ['/_app/immutable/start.1a2b.js', "content-security-policy: default-src 'none'"],
])('%s comes with "%s"', async (path, header) => {
  expect(await raw(path)).toContain(header)
})

test('HEAD gives the headers alone, other methods are refused', async () => {
  expect(await raw('/topic', PAGE, 'HEAD')).toMatch(/content-length: 14[^]*\r\n\r\n$/)
  expect(await raw('/topic', PAGE, 'POST')).toContain('HTTP/1.1 405 ')
})

test('a taken port is passed over', async () => {
  const taken = Number(new URL(served.url).port)
  const second = await serve({ port: taken, folder: join(box, 'build') })
  expect(Number(new URL(second.url).port)).toBeGreaterThan(taken)
  await second.close()
})

test('no built app: one line says so', async () => {
  await expect(serve({ port: 0, folder: join(box, 'nowhere') })).rejects.toThrow(/npm run build/)
})
