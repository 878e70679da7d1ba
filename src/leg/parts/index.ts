import { type Check, ofPart } from '../cases/check.js'
import type { LegNumbers } from '../leg-numbers.js'
import { type Joint, jointWords } from '../numbers.js'
import { beltOrCordOf } from '../second-stage.js'
import { pivotChecks } from './ball-bearings/checks.js'
import { boltChecks } from './bolts/checks.js'
import { controllerChecks } from './controllers/checks.js'
import { delayCheck } from './controllers/delay.js'
import { footChecks } from './foot/checks.js'
import { bearingChecks } from './hip-shaft/bearings.js'
import { shaftChecks } from './hip-shaft/shaft.js'
import { stackChecks } from './hip-shaft/stack.js'
import { jointChecks } from './joints/checks.js'
import { linkChecks } from './links/checks.js'
import { squeezeChecks } from './links/squeeze.js'
import { motorChecks } from './motors/checks.js'
import { bossChecks } from './pins-and-bosses/bosses.js'
import { heldPinChecks, pinChecks } from './pins-and-bosses/pins.js'
import { prisedBossCheck, prisedEyeCheck } from './pins-and-bosses/sideways.js'
import { plateChecks } from './plates/checks.js'
import { springChecks } from './springs/checks.js'
import { supplyChecks } from './supply/checks.js'
import { beltChecks } from './transmission/belt/checks.js'
import { anchorChecks } from './transmission/cord/anchor.js'
import { cordChecks } from './transmission/cord/checks.js'
import { drumChecks } from './transmission/cord/drum.js'
import { gearChecks } from './transmission/gear/checks.js'
import { gearboxChecks } from './transmission/gearbox/checks.js'
import { outputBearingChecks } from './transmission/output-bearing/checks.js'
import { noOutputBearing } from './transmission/output-bearing/fields.js'
import { armPinChecks } from './transmission/rod-ends/pins.js'
import { steppedRodChecks } from './transmission/rod-ends/stepped-rod.js'
import { rodChecks } from './transmission/through-hip/checks.js'
import { rodOf } from './transmission/through-hip/fields.js'
import { kneeBeltChecks, kneeCordChecks } from './transmission/through-hip/stage-checks.js'

const noDrive = (kind: string, what: string) => (x: LegNumbers, joint: Joint) =>
  x.joints[joint].drive.kind === kind ? undefined : `no ${what} drives the joint`
const noCord = noDrive('cord', 'cord')
const noPin = (x: LegNumbers, joint: Joint) => (x.joints[joint].pin === undefined ? `the ${jointWords(joint)} has no pin` : undefined)
const noBoss = (x: LegNumbers, joint: Joint) =>
  noPin(x, joint) ?? (x.joints[joint].boss === undefined ? `the ${joint} has no boss` : undefined)
const noRod = (x: LegNumbers) => (rodOf(x) === undefined ? 'no rod drives the knee' : undefined)
const noStage = (kind: string, what: string) => (x: LegNumbers) =>
  beltOrCordOf(x)?.kind === kind ? undefined : `no ${what} drives the knee through the hip`
const noSqueeze = (x: LegNumbers) => (beltOrCordOf(x) === undefined ? 'neither belt nor cord runs along the upper link' : undefined)
const noShaft = (x: LegNumbers) => (x.joints.hip.shaft === undefined ? 'the hip has no shaft' : undefined)

/** Every check, by part: the one list that names all parts. */
export const CHECKS: readonly Check[] = [
  ...ofPart(cordChecks, noCord),
  ...ofPart(drumChecks, noCord),
  ...ofPart(anchorChecks, noCord),
  ...ofPart(beltChecks, noDrive('belt', 'tooth belt')),
  ...ofPart(gearChecks, noDrive('gear', 'pair of gears')),
  ...ofPart(gearboxChecks, noDrive('gearbox', 'gearbox')),
  ...ofPart(outputBearingChecks, noOutputBearing),
  ...ofPart(rodChecks, noRod),
  ...ofPart(kneeBeltChecks, noStage('belt', 'tooth belt')),
  ...ofPart(kneeCordChecks, noStage('cord', 'cord')),
  ...ofPart(steppedRodChecks, noRod),
  ...armPinChecks,
  ...pivotChecks,
  ...ofPart(pinChecks, noPin),
  ...ofPart(heldPinChecks, noBoss),
  ...ofPart([prisedEyeCheck], noPin),
  ...ofPart([...bossChecks, prisedBossCheck], noBoss),
  ...boltChecks,
  ...ofPart(shaftChecks, noShaft),
  ...ofPart(bearingChecks, noShaft),
  ...ofPart(stackChecks, noShaft),
  ...footChecks,
  ...motorChecks,
  ...plateChecks,
  ...controllerChecks,
  delayCheck,
  ...supplyChecks,
  ...jointChecks,
  ...linkChecks,
  ...ofPart(squeezeChecks, noSqueeze),
  ...springChecks,
]
