#!/usr/bin/env node
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import module from 'node:module'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { setFlagsFromString } from 'node:v8'
import { main, type Terminal } from './index.js'

// Keeps the compiled library in the folder for temporary files between two runs, where Node can. Where the folder cannot be written it does nothing.
;(module as { readonly enableCompileCache?: () => unknown }).enableCompileCache?.()
// A command is over before code that the engine optimises has paid for itself: on Node 20 that took a third of the processor time of a report. Functions
// that run for long are optimised still. Later engines wait longer by themselves, and do not know the flag.
if (process.versions.v8.startsWith('11.')) setFlagsFromString('--interrupt-budget=600000')

/** The folder of the package: the nearest above that has a manifest. */
function packageFolder(from: string): string {
  return existsSync(join(from, 'package.json')) ? from : packageFolder(dirname(from))
}

const folder = packageFolder(dirname(fileURLToPath(import.meta.url)))
const { version } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8')) as { version: string }

const terminal: Terminal = {
  out: (text) => process.stdout.write(`${text}\n`),
  note: (text) => process.stderr.write(`${text}\n`),
  readText: (name) => {
    try {
      return readFileSync(name === '-' ? 0 : name, 'utf8')
    } catch (error) {
      // Of a folder the system does not say which one.
      throw Object.assign(error as Error, { path: name })
    }
  },
  writeText: (name, text) => {
    mkdirSync(dirname(name), { recursive: true })
    writeFileSync(name, text)
  },
  exists: existsSync,
  packaged: (name) => readFileSync(join(folder, name), 'utf8'),
}

// A reader that stops early, such as head, ends the program quietly.
process.stdout.on('error', (error: NodeJS.ErrnoException) => process.exit(error.code === 'EPIPE' ? 0 : 2))

// The code is set and not forced: what is written to a pipe arrives whole. A fault of the program has a code of its own.
try {
  process.exitCode = await main(terminal, process.argv.slice(2), version)
} catch (error) {
  terminal.note(`limbwright: a fault of the program; please report it\n${(error as Error).stack ?? String(error)}`)
  process.exitCode = 3
}
