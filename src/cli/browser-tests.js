// npm run test:browser [-- arguments for playwright]
// Builds the app, serves the built folder and runs tests/browser in a real browser.
import { spawn } from 'node:child_process'
import { findBrowser } from './browser.js'
import { serve } from './serve.js'

/**
 * Runs a program of node_modules without a shell; gives its exit code.
 *
 * @param {string} program
 * @param {readonly string[]} args
 * @param {Record<string, string>} [env]
 * @returns {Promise<number>}
 */
function node(program, args, env = {}) {
  return new Promise((done, fail) => {
    const child = spawn(process.execPath, [program, ...args], {
      stdio: 'inherit',
      env: { ...process.env, ...env },
    })
    child.on('error', fail)
    child.on('exit', (code) => done(code ?? 1))
  })
}

async function main() {
  const browser = await findBrowser()
  const built = await node('node_modules/vite/bin/vite.js', ['build', '--logLevel', 'warn'])
  if (built !== 0) return built
  const { url, close } = await serve({ port: 0 })
  try {
    return await node('node_modules/@playwright/test/cli.js', ['test', ...process.argv.slice(2)], {
      SECOND_INK_BROWSER: browser,
      SECOND_INK_URL: url,
    })
  } finally {
    await close()
  }
}

// Ctrl+C reaches playwright as well; this process waits for it and then ends the server.
process.on('SIGINT', () => undefined)
main().then(
  (code) => (process.exitCode = code),
  (/** @type {Error} */ { message }) => {
    console.error(message)
    process.exitCode = 1
  },
)
