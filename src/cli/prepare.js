// Runs before `npm start`, `npm test` and the other commands: on a fresh clone, or after the lock
// changed, it installs exactly what package-lock.json says. It needs nothing that is not in Node.
import { spawnSync } from 'node:child_process'
import { existsSync, statSync } from 'node:fs'

const lock = statSync('package-lock.json').mtimeMs
const installed = 'node_modules/.package-lock.json'

if (!existsSync(installed) || statSync(installed).mtimeMs < lock) {
  const npm = process.env.npm_execpath
  if (!npm) {
    console.error('Run this through npm (for example: npm start).')
    process.exit(2)
  }
  // NODE_ENV=production would leave out the tools that build and test.
  const run = spawnSync(process.execPath, [npm, 'ci', '--include=dev', '--no-audit', '--no-fund'], {
    stdio: 'inherit',
  })
  if (run.status !== 0) process.exit(run.status ?? 1)
}
