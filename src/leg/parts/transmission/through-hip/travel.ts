import { kneeDrumTravel } from '../../../../capstan/index.js'
import { fourBarKneePose } from '../../../../kinematics/index.js'
import { NoValueError } from '../../../no-value.js'
import { line, type Of, value } from '../../../run/index.js'
import { from, to } from '../../joints/fields.js'
import * as links from '../../links/fields.js'
import { hipOf, kneeOf, upperOf } from '../../motion/instances.js'
import { signedRatio } from '../questions.js'
import { linkage } from './fields.js'
import { isStage, isThroughHip, stageIn } from './stage.js'

const lowestOf = line(
  'lowest angle of the drum',
  { hip: 'angle', one: 'angle', other: 'angle' },
  'angle',
  'hip + min(one, other)',
  (x) => x.hip + Math.min(x.one, x.other),
)
const highestOf = line(
  'highest angle of the drum',
  { hip: 'angle', one: 'angle', other: 'angle' },
  'angle',
  'hip + max(one, other)',
  (x) => x.hip + Math.max(x.one, x.other),
)

/** Angles of the crank at both limits of the knee. */
const crankLimits = value('rod.crankLimits', ['leg'], (use, at) => {
  const rod = use(linkage)
  if (rod === undefined) throw new NoValueError('no rod drives the knee')
  const joint = kneeOf(use, at.leg)
  const ground = use.at(links.length, { link: upperOf(use, at.leg) })
  const crankAt = (kneeAngle: number) => use.run(fourBarKneePose, { ...rod, ground, kneeAngle }).crankAngle
  return { one: crankAt(use.at(from, { joint })), other: crankAt(use.at(to, { joint })) }
})

/** Angles through which the drum of a joint's drive turns over the limits of the joints: that of a knee driven through the hip turns with both, that of its second stage with the knee. */
export const drumTravel = value('drive.travel', ['joint'], (use, at) => {
  const own = use.all('leg')[0] as Of<'leg'>
  const [hip, knee] = [hipOf(use, own), kneeOf(use, own)]
  if (isStage(use, at.joint)) return { lowest: use.at(from, { joint: knee }), highest: use.at(to, { joint: knee }) }
  if (!isThroughHip(use) || at.joint !== knee) return { lowest: use(from), highest: use(to) }
  const joint = stageIn(use)
  if (joint !== undefined) {
    const { lowest, highest } = use.run(kneeDrumTravel, {
      motorOn: 'body',
      kneeRatio: use.at(signedRatio, { joint }),
      hipLowest: use.at(from, { joint: hip }),
      hipHighest: use.at(to, { joint: hip }),
      kneeLowest: use.at(from, { joint: knee }),
      kneeHighest: use.at(to, { joint: knee }),
    })
    return { lowest, highest }
  }
  const limits = use(crankLimits)
  return {
    lowest: use.run(lowestOf, { hip: use.at(from, { joint: hip }), ...limits }),
    highest: use.run(highestOf, { hip: use.at(to, { joint: hip }), ...limits }),
  }
})
