import { type Check, ofPart } from '../cases/check.js'
import { hasCord, type Joint, type LegNumbers } from '../numbers.js'
import { boltChecks } from './bolts/checks.js'
import { controllerChecks } from './controllers/checks.js'
import { delayCheck } from './controllers/delay.js'
import { footChecks } from './foot/checks.js'
import { bearingChecks } from './hip-shaft/bearings.js'
import { shaftChecks } from './hip-shaft/shaft.js'
import { jointChecks } from './joints/checks.js'
import { linkChecks } from './links/checks.js'
import { motorChecks } from './motors/checks.js'
import { bossChecks } from './pins-and-bosses/bosses.js'
import { pinChecks } from './pins-and-bosses/pins.js'
import { plateChecks } from './plates/checks.js'
import { supplyChecks } from './supply/checks.js'
import { anchorChecks } from './transmission/cord/anchor.js'
import { cordChecks } from './transmission/cord/checks.js'
import { drumChecks } from './transmission/cord/drum.js'
import { directChecks } from './transmission/direct/checks.js'
import { rodChecks } from './transmission/through-hip/checks.js'
import { rodOf } from './transmission/through-hip/fields.js'

const noCord = (x: LegNumbers, joint: Joint) => (hasCord(x, joint) ? undefined : `the ${joint} is not driven by cord`)
const noDirect = (x: LegNumbers, joint: Joint) => (x.joints[joint].drive.kind === 'direct' ? undefined : `the ${joint} has a transmission`)
const noPin = (x: LegNumbers, joint: Joint) => (x.joints[joint].pin === undefined ? `the ${joint} has no pin` : undefined)
const noBoss = (x: LegNumbers, joint: Joint) =>
  noPin(x, joint) ?? (x.joints[joint].boss === undefined ? `the ${joint} has no boss` : undefined)
const noRod = (x: LegNumbers) => (rodOf(x) === undefined ? 'no rod drives the knee' : undefined)
const noShaft = (x: LegNumbers) => (x.joints.hip.shaft === undefined ? 'the hip has no shaft' : undefined)

/** Every check, by part: the one list that names all parts. */
export const CHECKS: readonly Check[] = [
  ...ofPart(cordChecks, noCord),
  ...ofPart(drumChecks, noCord),
  ...ofPart(anchorChecks, noCord),
  ...ofPart(directChecks, noDirect),
  ...ofPart(rodChecks, noRod),
  ...ofPart(pinChecks, noPin),
  ...ofPart(bossChecks, noBoss),
  ...boltChecks,
  ...ofPart(shaftChecks, noShaft),
  ...ofPart(bearingChecks, noShaft),
  ...footChecks,
  ...motorChecks,
  ...plateChecks,
  ...controllerChecks,
  delayCheck,
  ...supplyChecks,
  ...jointChecks,
  ...linkChecks,
]
