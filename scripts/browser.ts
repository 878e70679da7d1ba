// The browser of the checks: Chromium of the system, without its own traffic.
import { existsSync } from 'node:fs'
import { type Browser, chromium } from 'playwright-core'

/** Exit code of a check that this machine cannot run. */
const NOT_RUN = 77
const PLACES = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome', '/snap/bin/chromium']

/** Opens Chromium; ends the program with 77 where there is none. `CHROMIUM` names another place. */
export async function openBrowser(): Promise<Browser> {
  const executablePath = [process.env.CHROMIUM ?? '', ...PLACES].find((path) => path !== '' && existsSync(path))
  if (executablePath === undefined) {
    console.log('Not run: there is no Chromium here. Install it (Debian: apt-get install chromium), or name it: CHROMIUM=/path/to/chromium')
    process.exit(NOT_RUN)
  }
  const args = [
    '--no-sandbox',
    '--disable-gpu',
    '--disable-quic',
    '--no-first-run',
    '--disable-background-networking',
    '--disable-component-update',
    '--disable-sync',
  ]
  return chromium.launch({ executablePath, args })
}
