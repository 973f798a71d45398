/// <reference no-default-lib="true" />
/// <reference lib="ES2022" />
/// <reference lib="WebWorker" />
/// <reference types="@sveltejs/kit" />
/** Keeps the whole app in the browser after one visit: every page works with the network off. Nothing is sent anywhere. */
import { base, build, files, prerendered, version } from '$service-worker'

const worker = self as unknown as ServiceWorkerGlobalScope
const PREFIX = 'second-ink-'
const CACHE = `${PREFIX}${version}`
/** Answers an address that no page was made for. It is in none of the build's lists. */
const SHELL = `${base}/200.html`
/** The files of the worker that marks, which are in none of the build's lists either: the build writes this one. */
const REST = `${base}/offline.json`

worker.addEventListener('install', (event) => event.waitUntil(keepAll()))
worker.addEventListener('activate', (event) => event.waitUntil(takeOver()))
worker.addEventListener('message', ({ data }) => {
  if (data === 'take over') void worker.skipWaiting()
})
worker.addEventListener('fetch', (event) => {
  const { method, url, mode } = event.request
  const { origin, pathname } = new URL(url)
  if (method !== 'GET' || origin !== worker.location.origin) return
  event.respondWith(mode === 'navigate' ? page(event.request, pathname) : file(event.request))
})

/** All of it or nothing: with one file missing the older version stays. */
async function keepAll(): Promise<void> {
  const cache = await caches.open(CACHE)
  const rest = (await (await fetch(REST, { cache: 'no-cache' })).json()) as string[]
  const paths = new Set([
    ...build,
    ...files,
    ...prerendered,
    SHELL,
    ...rest.map((path) => base + path),
  ])
  const waiting = [...paths]
  // A few at a time: a phone on a slow line is also opening the page.
  const line = async () => {
    for (let path = waiting.pop(); path !== undefined; path = waiting.pop())
      await cache.put(path, await fetched(path))
  }
  await Promise.all(Array.from({ length: 6 }, line))
}

async function fetched(path: string): Promise<Response> {
  const immutable = path.includes('/immutable/')
  const response = await fetch(path, { cache: immutable ? 'default' : 'no-cache' })
  if (!response.ok) throw new Error(`${path} was answered with ${response.status}.`)
  // A browser refuses an answer to a navigation that was redirected on its way here.
  return response.redirected
    ? new Response(await response.blob(), { headers: response.headers })
    : response
}

/** The version before stays too: a window with text in it may be running on it, and is never reloaded. */
async function takeOver(): Promise<void> {
  const older = (await caches.keys()).filter((name) => name.startsWith(PREFIX) && name !== CACHE)
  await Promise.all(older.slice(0, -1).map((name) => caches.delete(name)))
  await worker.clients.claim()
}

async function page(request: Request, pathname: string): Promise<Response> {
  const path = pathname.length > 1 ? pathname.replace(/\/$/, '') : pathname
  const kept = (await inCache(path)) ?? (await fetch(request).catch(() => undefined))
  return kept ?? (await inCache(SHELL)) ?? Response.error()
}

const file = async (request: Request): Promise<Response> =>
  (await inCache(request)) ?? (await caches.match(request)) ?? fetch(request)

/** `caches.open` would make the cache again after everything was erased. */
const inCache = (wanted: Request | string): Promise<Response | undefined> =>
  caches.match(wanted, { cacheName: CACHE })
