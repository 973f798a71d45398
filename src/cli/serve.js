// Serves the built app on this machine: `npm start`, and the browser tests. It needs nothing that is not in Node.
import { existsSync, realpathSync } from 'node:fs'
import { createServer } from 'node:http'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { answer } from './static-files.js'

const PORTS_TO_TRY = 100

/**
 * Serves `folder` on 127.0.0.1, on the first free port from `port` up (0: any). Rejects where the folder is missing or
 * no port is free.
 *
 * @param {{ port?: number, folder?: string }} [options]
 * @returns {Promise<{ url: string, close: () => Promise<void> }>}
 */
export async function serve({ port = 4173, folder = 'build' } = {}) {
  if (!existsSync(join(folder, '200.html'))) {
    throw new Error(`There is no built app in ${folder}: run "npm run build" first.`)
  }
  const root = realpathSync(folder)
  const server = createServer((request, response) => {
    try {
      answer(root, request, response)
    } catch {
      // A build that empties the folder meanwhile costs this one answer, never the server.
      response.destroy()
    }
  })
  const used = await listen(server, port)
  return {
    url: `http://127.0.0.1:${used}`,
    close: () =>
      new Promise((done) => {
        server.close(() => done())
        server.closeAllConnections()
      }),
  }
}

/**
 * @param {import('node:http').Server} server
 * @param {number} first
 * @returns {Promise<number>}
 */
async function listen(server, first) {
  for (let port = first; port < first + PORTS_TO_TRY && port < 65_536; port += 1) {
    const taken = await new Promise((done, fail) => {
      server.once('error', (/** @type {NodeJS.ErrnoException} */ error) =>
        error.code === 'EADDRINUSE' ? done(true) : fail(error),
      )
      server.listen(port, '127.0.0.1', () => done(false))
    })
    server.removeAllListeners('error')
    server.removeAllListeners('listening')
    const address = server.address()
    if (!taken && address !== null && typeof address === 'object') return address.port
  }
  throw new Error(`No free port from ${first} up: set PORT to another number.`)
}

async function main() {
  const port = Number(process.env.PORT ?? 4173)
  if (!Number.isInteger(port) || port < 0 || port > 65_535) {
    throw new Error(`PORT is "${process.env.PORT}": it must be a number from 0 to 65535.`)
  }
  const { url } = await serve({ port })
  console.log(`Second Ink is at ${url}/ (Ctrl+C stops it)`)
}

if (process.argv[1] && realpathSync(process.argv[1]) === fileURLToPath(import.meta.url)) {
  main().catch((/** @type {Error} */ { message }) => {
    console.error(message)
    process.exitCode = 1
  })
}
