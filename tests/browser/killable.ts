/** A browser of its own on a profile of its own, whose process can be killed and which is started again on what is left. */
import { spawn, type ChildProcess } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { chromium, type Browser, type Page } from '@playwright/test'

const ARGS = [
  '--headless',
  '--remote-debugging-port=0',
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--no-default-browser-check',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--disable-breakpad',
]

export interface Running {
  readonly page: Page
  /** Ends the browser's process at once, by its id; gives the time. Done when the process is gone. */
  readonly kill: () => Promise<number>
}

export interface Profile {
  readonly start: () => Promise<Running>
  /** Kills what runs and removes the folder. */
  readonly remove: () => Promise<void>
}

export function newProfile(): Profile {
  const folder = mkdtempSync(join(tmpdir(), 'second-ink-kill-'))
  let running: Running | undefined
  return {
    async start() {
      running = await start(folder)
      return running
    },
    async remove() {
      await running?.kill()
      rmSync(folder, { recursive: true, force: true, maxRetries: 10, retryDelay: 200 })
    },
  }
}

async function start(folder: string): Promise<Running> {
  const program = process.env['SECOND_INK_BROWSER']
  if (!program) throw new Error('SECOND_INK_BROWSER names no browser.')
  const portFile = join(folder, 'DevToolsActivePort')
  rmSync(portFile, { force: true })
  const child = spawn(program, [...ARGS, `--user-data-dir=${folder}`, 'about:blank'], {
    stdio: 'ignore',
  })
  const gone = new Promise<void>((done) => child.once('exit', () => done()))
  const kill = async () => {
    const atMs = Date.now()
    if (child.exitCode === null && child.signalCode === null) child.kill('SIGKILL')
    await gone
    return atMs
  }
  try {
    const browser = await chromium.connectOverCDP(`http://127.0.0.1:${await port(child, portFile)}`)
    return { page: await firstPage(browser), kill }
  } catch (error) {
    await kill()
    throw error
  }
}

/** The browser writes it once it listens. */
async function port(child: ChildProcess, file: string): Promise<string> {
  for (;;) {
    if (child.exitCode !== null) throw new Error(`The browser ended with ${child.exitCode}.`)
    try {
      const [found] = readFileSync(file, 'utf8').split('\n')
      if (found) return found
    } catch {
      // Not yet.
    }
    await new Promise((done) => setTimeout(done, 50))
  }
}

async function firstPage(browser: Browser): Promise<Page> {
  const [context] = browser.contexts()
  if (!context) throw new Error('The browser has no window.')
  return context.pages()[0] ?? context.newPage()
}
