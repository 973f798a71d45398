// Answers requests from the files of one folder, as any static host does. Nothing outside the folder is ever read.
import { createReadStream, realpathSync, statSync } from 'node:fs'
import { extname, join, resolve, sep } from 'node:path'
import { pipeline } from 'node:stream'
import { createGzip } from 'node:zlib'

/** @type {Readonly<Record<string, string>>} */
const TYPES = {
  '.css': 'text/css; charset=utf-8',
  '.csv': 'text/csv; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.ico': 'image/x-icon',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.map': 'application/json; charset=utf-8',
  '.mjs': 'text/javascript; charset=utf-8',
  '.pdf': 'application/pdf',
  '.png': 'image/png',
  '.svg': 'image/svg+xml; charset=utf-8',
  '.txt': 'text/plain; charset=utf-8',
  '.wasm': 'application/wasm',
  '.webmanifest': 'application/manifest+json; charset=utf-8',
  '.woff2': 'font/woff2',
  '.xml': 'application/xml; charset=utf-8',
  '.yaml': 'application/yaml; charset=utf-8',
}

// The policy in a page's meta element does not govern the workers it starts: their script's own header does.
const WORKER_POLICY = "default-src 'none'; script-src 'self'; connect-src 'self'"
// The one thing that a meta element cannot say: no other page may hold this one in a frame.
const PAGE_POLICY = "frame-ancestors 'none'"

/**
 * @param {string} root The folder's real path.
 * @param {import('node:http').IncomingMessage} request
 * @param {import('node:http').ServerResponse} response
 */
export function answer(root, request, response) {
  if (request.method !== 'GET' && request.method !== 'HEAD') {
    return refuse(response, 405, 'Only GET and HEAD are answered here.')
  }
  const path = pathOf(request.url ?? '/')
  if (path === undefined) return refuse(response, 400, 'This address cannot be read.')
  const page = path.length > 1 && path.endsWith('/') && fileAt(root, `${path.slice(0, -1)}.html`)
  if (page) {
    // Relative addresses in a page need it at its own place, without the slash.
    response.writeHead(308, {
      location: path.slice(0, -1).split('/').map(encodeURIComponent).join('/'),
    })
    return response.end()
  }
  const file =
    fileAt(root, path) ?? fileAt(root, `${path}.html`) ?? fileAt(root, join(path, 'index.html'))
  if (file) return send(request, response, file, path)
  const asset = extname(path) !== '' || path.startsWith('/_app/')
  if (asset || !wantsPage(request)) return refuse(response, 404, 'Nothing is kept at this address.')
  return send(request, response, join(root, '200.html'), '/200.html')
}

/**
 * The decoded path of an address, with a slash in front and without `..`; undefined where it cannot be one.
 *
 * @param {string} address
 * @returns {string | undefined}
 */
function pathOf(address) {
  try {
    // The URL parser resolves dot segments, encoded ones too; an encoded slash or backslash is no part of a file's name.
    const { pathname } = new URL(address, 'http://127.0.0.1')
    if (/%2f|%5c|%00/i.test(pathname)) return undefined
    return decodeURIComponent(pathname)
  } catch {
    return undefined
  }
}

/**
 * The file at a path of the folder, undefined where there is none or where it leads outside.
 *
 * @param {string} root
 * @param {string} path
 * @returns {string | undefined}
 */
function fileAt(root, path) {
  const wanted = resolve(root, `.${path}`)
  try {
    if (!statSync(wanted).isFile()) return undefined
    const real = realpathSync(wanted)
    return real.startsWith(root + sep) ? real : undefined
  } catch {
    return undefined
  }
}

/** @param {import('node:http').IncomingMessage} request */
function wantsPage({ headers }) {
  return headers['sec-fetch-mode'] === 'navigate' || (headers.accept ?? '').includes('text/html')
}

/**
 * @param {import('node:http').IncomingMessage} request
 * @param {import('node:http').ServerResponse} response
 * @param {string} file
 * @param {string} path
 */
function send(request, response, file, path) {
  const type = TYPES[extname(file).toLowerCase()] ?? 'application/octet-stream'
  // As any host does, so that what is measured here is what a reader waits for.
  const zipped = /^text|json|xml|yaml/.test(type) && acceptsGzip(request)
  response.writeHead(200, {
    'content-type': type,
    ...(zipped ? { 'content-encoding': 'gzip' } : { 'content-length': statSync(file).size }),
    vary: 'accept-encoding',
    // Names under immutable/ hold a hash of what is in them; every other file may change with the next build.
    'cache-control': path.startsWith('/_app/immutable/')
      ? 'max-age=31536000, immutable'
      : 'no-cache',
    'x-content-type-options': 'nosniff',
    'referrer-policy': 'no-referrer',
    ...(type.startsWith('text/javascript') ? { 'content-security-policy': WORKER_POLICY } : {}),
    ...(type.startsWith('text/html') ? { 'content-security-policy': PAGE_POLICY } : {}),
  })
  if (request.method === 'HEAD') return response.end()
  // A reader that goes away, or a build that replaces the file meanwhile, ends this one answer only.
  if (zipped) pipeline(createReadStream(file), createGzip(), response, () => undefined)
  else pipeline(createReadStream(file), response, () => undefined)
}

/** @param {import('node:http').IncomingMessage} request */
const acceptsGzip = ({ headers }) => /\bgzip\b(?!;q=0)/.test(String(headers['accept-encoding']))

/**
 * @param {import('node:http').ServerResponse} response
 * @param {number} status
 * @param {string} text
 */
function refuse(response, status, text) {
  response.writeHead(status, {
    'content-type': 'text/plain; charset=utf-8',
    'cache-control': 'no-store',
    ...(status === 405 ? { allow: 'GET, HEAD' } : {}),
  })
  response.end(`${text}\n`)
}
