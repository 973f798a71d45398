// Finds a Chromium or Chrome to run the browser tests with.
import { spawnSync } from 'node:child_process'
import { accessSync, constants, existsSync } from 'node:fs'
import { delimiter, join } from 'node:path'

const NAMES = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable']

const HOW_TO_GET_ONE =
  'No browser found for the tests: install Chromium or Chrome, or run "npx playwright install chromium", or set SECOND_INK_BROWSER to the path of one.'

/**
 * The path of a browser: the one that SECOND_INK_BROWSER names, one of the system, playwright's own; on a Debian that is run
 * as root one is installed. Throws where there is none, with one line how to get it.
 *
 * @returns {Promise<string>}
 */
export async function findBrowser() {
  const named = process.env.SECOND_INK_BROWSER
  if (named) {
    if (!runs(named)) throw new Error(`SECOND_INK_BROWSER is "${named}": no program is there.`)
    return named
  }
  const found = onPath() ?? usualPlaces().find(runs) ?? (await playwrightsOwn()) ?? installed()
  if (!found) throw new Error(HOW_TO_GET_ONE)
  return found
}

function onPath() {
  const folders = (process.env.PATH ?? '').split(delimiter).filter(Boolean)
  return NAMES.flatMap((name) => folders.map((folder) => join(folder, name))).find(runs)
}

/** @returns {string[]} */
function usualPlaces() {
  const { HOME = '', LOCALAPPDATA, ProgramFiles } = process.env
  if (process.platform === 'darwin') {
    const apps = [
      'Google Chrome.app/Contents/MacOS/Google Chrome',
      'Chromium.app/Contents/MacOS/Chromium',
    ]
    return ['/Applications', join(HOME, 'Applications')].flatMap((folder) =>
      apps.map((app) => join(folder, app)),
    )
  }
  if (process.platform === 'win32') {
    const folders = [ProgramFiles, process.env['ProgramFiles(x86)'], LOCALAPPDATA]
    const apps = ['Google\\Chrome\\Application\\chrome.exe', 'Chromium\\Application\\chrome.exe']
    return folders.flatMap((folder) => (folder ? apps.map((app) => join(folder, app)) : []))
  }
  return ['/snap/bin/chromium', '/opt/google/chrome/chrome']
}

async function playwrightsOwn() {
  const { chromium } = await import('@playwright/test')
  const path = chromium.executablePath()
  return path && runs(path) ? path : undefined
}

/** Installs Debian's Chromium, where that needs nobody's leave. */
function installed() {
  if (process.getuid?.() !== 0 || !existsSync('/etc/debian_version')) return undefined
  console.log('No browser here: installing Debian’s chromium.')
  /** @type {import('node:child_process').SpawnSyncOptions} */
  const options = {
    stdio: ['ignore', 'ignore', 'inherit'],
    env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
  }
  spawnSync('apt-get', ['update', '-qq'], options)
  spawnSync('apt-get', ['install', '-y', '-qq', '--no-install-recommends', 'chromium'], options)
  return onPath()
}

/** @param {string} path */
function runs(path) {
  try {
    accessSync(path, constants.X_OK)
    return true
  } catch {
    return false
  }
}
