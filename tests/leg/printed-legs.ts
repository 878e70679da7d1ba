import { readFileSync } from 'node:fs'
import { describeLeg, type Leg } from '../../src/leg/index.js'
import { geared } from './gear-legs.js'
import { besideLinks } from './rod-bearing-legs.js'
import { driven } from './sideways-legs.js'
import { torsion } from './sprung-legs.js'
import { cordKnee } from './through-legs.js'

const example = (name: string): Leg => describeLeg(readFileSync(new URL(`../../examples/${name}.yaml`, import.meta.url), 'utf8'))

/** Legs of every layout, whose sheets are read for their words: one for each kind of drive, with a spring, metal and prints. */
export const printedLegs: Readonly<Record<string, () => Leg>> = {
  'gearbox and gears': () => geared,
  'belts, printed pulleys': () => example('orchard-leg-first'),
  'gearbox at the sideways hip': () => driven,
  'belt along the upper link': () => example('shingle-leg-revised'),
  cords: () => example('mudflat-leg-first'),
  'cords and a torsion spring': () => torsion,
  'cord along the upper link': () => cordKnee,
  'rod on ball bearings': () => besideLinks,
}
