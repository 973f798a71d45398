// node src/cli/together.js NAME…: runs scripts of package.json side by side, as many as there are processors, the first ones
// first. What each printed comes whole, once it is done; one that fails does not stop the others, and is told by the exit code.
import { spawn } from 'node:child_process'
import { availableParallelism } from 'node:os'

const npm = process.env.npm_execpath
if (!npm) {
  console.error('Run this through npm (for example: npm run check).')
  process.exit(2)
}

/**
 * @param {string} npm
 * @param {string} name
 * @returns {Promise<void>}
 */
function script(npm, name) {
  const began = performance.now()
  const child = spawn(process.execPath, [npm, 'run', '--silent', name], {
    stdio: ['ignore', 'pipe', 'pipe'],
  })
  /** @type {Buffer[]} */
  const said = []
  child.stdout.on('data', (piece) => said.push(piece))
  child.stderr.on('data', (piece) => said.push(piece))
  return new Promise((done, fail) => {
    child.on('error', fail)
    child.on('close', (code) => {
      const seconds = Math.round((performance.now() - began) / 1000)
      console.log(`${name}: ${code === 0 ? 'done' : 'FAILED'} in ${seconds} s`)
      process.stdout.write(Buffer.concat(said))
      if (code !== 0) process.exitCode = 1
      done()
    })
  })
}

const waiting = process.argv.slice(2)
async function worker() {
  for (let name = waiting.shift(); name && npm; name = waiting.shift()) await script(npm, name)
}
await Promise.all(Array.from({ length: availableParallelism() }, worker))
