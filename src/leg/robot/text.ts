import type { Quantity } from '../../units/index.js'
import { phrase, shown } from '../plans/sheet-units.js'
import type { RobotAssessment, RobotGait } from './result.js'

const WORDS = { leftFront: 'left front', rightFront: 'right front', leftHind: 'left hind', rightHind: 'right hind' } as const

const line = (what: string, ...values: readonly (Quantity | string)[]) => `  ${what.padEnd(44)} ${values.map(shown).join(', ')}`

/** A robot's assessment as plain text, for a terminal or a notebook. */
export function robotText(robot: RobotAssessment): string {
  const { passes, meetsTarget, checks, stand, gaits, slopes, landings, housingRise, notes } = robot
  const failing = checks.filter(({ reserve, requiredReserve }) => reserve < requiredReserve)
  const verdict = meetsTarget
    ? 'The robot holds as a whole: every check has its required reserve.'
    : passes
      ? `The robot holds, but ${failing.length} of ${checks.length} checks have less than their required reserve.`
      : `The robot fails: ${checks.filter(({ reserve }) => reserve < 1).length} of ${checks.length} checks are below 1.`
  return [
    verdict,
    '',
    'Checks, the smallest margin first',
    ...checks.map(({ reserve, requiredReserve, sentence }) => `  ${reserve.toPrecision(3)} (required ${requiredReserve}): ${sentence}`),
    ...failing.map(({ title, where, remedy }) => `  ${title}, ${where}: what helps is ${remedy}.`),
    '',
    'Standing on the level',
    ...Object.entries(stand.forces).map(([corner, force]) => line(`force on the ${WORDS[corner as keyof typeof WORDS]} foot`, force)),
    ...(stand.hollow === undefined ? [] : [line('hollow that leaves one foot without load', stand.hollow)]),
    line('power, of which heat of the motors', stand.power, stand.motorHeat),
    ...(stand.runningTime === undefined ? [] : [line('one charge lasts', stand.runningTime)]),
    ...gaitLines('Walking', gaits.walk),
    ...gaitLines('Trotting', gaits.trot),
    '',
    'Slopes',
    ...(['up', 'down'] as const).flatMap((way) => [
      line(phrase`${way} ${slopes[way].slope}: front pair, hind pair`, slopes[way].front, slopes[way].hind),
      line('friction needed; tips at', slopes[way].traction, slopes[way].tipsAt),
    ]),
    line(phrase`across ${slopes.across.slope}: lower pair, upper pair`, slopes.across.lower, slopes.across.upper),
    line('friction needed; tips at', slopes.across.traction, slopes.across.tipsAt),
    ...(slopes.across.walk === undefined ? [] : gaitLines('Walking across the slope', slopes.across.walk)),
    ...(landings.length === 0 ? [] : ['', 'Touch-down, rotors at rest']),
    ...landings.map(({ event, joint, blow, held, slackTorque }) =>
      line(`${event}, ${joint}: blow, load, most in the cold`, blow, held, slackTorque),
    ),
    ...(housingRise === undefined ? [] : ['', line('air in the housing over the air outside', housingRise)]),
    '',
    ...notes,
    'Legs with strong motors pinch and throw: keep hands out of the joints, and use a stand until every sign is tested.',
  ].join('\n')
}

const gaitLines = (title: string, gait: RobotGait): string[] => [
  '',
  title,
  line('least distance inside the feet', gait.feet.leastMargin),
  ...gait.corners.map(({ corner, peakForce, motorTorque }) =>
    motorTorque.sidewaysHip === undefined
      ? line(`${WORDS[corner]}: peak force, motor torque hip and knee`, peakForce, motorTorque.hip, motorTorque.knee)
      : line(
          `${WORDS[corner]}: peak force, motor torque hip, knee, sideways hip`,
          peakForce,
          motorTorque.hip,
          motorTorque.knee,
          motorTorque.sidewaysHip,
        ),
  ),
  line('power of the bus: mean, peak', gait.meanPower, gait.peakPower),
  line('power that flows back: mean, peak', gait.returned, gait.peakReturned),
  line('current at the peak, voltage left', gait.peakCurrent, gait.lowestVoltage),
  line('heat of motors, of controllers', gait.motorHeat, gait.controllerHeat),
  line('energy per metre, cost of transport', gait.energyPerMetre, gait.costOfTransport),
  ...(gait.runningTime === undefined || gait.range === undefined ? [] : [line('one charge: time, range', gait.runningTime, gait.range)]),
]
