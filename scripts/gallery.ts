/** Draws the pictures of the guide's page on drawings: `npm run gallery`. */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { assess, describeLeg, legDrawings } from '../src/leg/index.js'

const SHOWN = ['leg', 'cord-drive-knee', 'pin-knee', 'bolt-stack']
const root = fileURLToPath(new URL('../', import.meta.url))
const folder = `${root}docs/guide/drawings`

mkdirSync(folder, { recursive: true })
const verdict = assess(describeLeg(readFileSync(`${root}examples/mudflat-leg-revised.yaml`, 'utf8')))
for (const { id, svg } of legDrawings(verdict, { only: SHOWN })) writeFileSync(`${folder}/${id}.svg`, svg)
