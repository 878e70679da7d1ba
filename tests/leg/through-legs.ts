import { readFileSync } from 'node:fs'
import { describeLeg } from '../../src/leg/index.js'

const text = (name: string) => readFileSync(new URL(`../../examples/${name}.yaml`, import.meta.url), 'utf8')

/** The shingle carrier, whose knee a belt along the upper link drives. */
export const [beltFirst, beltRevised] = [describeLeg(text('shingle-leg-first')), describeLeg(text('shingle-leg-revised'))]

const CORD = `    through:
      kind: cord
      arrangement: crossed
      hipDrum: { grooveDiameter: 52 mm, turns: 3, length: 16 mm }
      kneeDrum: { grooveDiameter: 64 mm, material: PC, bore: 10 mm, length: 14 mm, groovePitch: 2 mm }
      cord: braid
      pretension: 330 N
      friction: [0.08, 0.14, 0.20]
      hold: clampedMidPinion
      ends: splice
      anchor: { postDiameter: 4 mm, postLength: 10 mm, edgeDistance: 9 mm }
      tensioner: { thread: M3, travel: 20 mm }
`
/** The heath carrier with a crossed cord along its upper link instead of the rod: the knee turns against its drum on the hip axis. */
export const cordText = text('heath-leg-revised')
  .replace(/ {4}through:\n(?: {6}.*\n)+/, CORD)
  .replace(/ {2}rodPin:.*\n/, '')
export const cordKnee = describeLeg(cordText)
