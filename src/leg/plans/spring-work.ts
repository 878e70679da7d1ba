import { Quantity } from '../../units/index.js'
import { placeOf } from '../calculation.js'
import { STANDARD_GRAVITY } from '../gravity.js'
import type { LegModel } from '../leg-model.js'
import type { LegNumbers } from '../leg-numbers.js'
import { type Joint, rangeOf } from '../numbers.js'
import { springLawOf } from '../parallel-torque.js'
import { springTorqueAt } from '../parts/springs/law.js'
import { nominalExtensionRate, nominalTorsionRate, stretchOfTravel, windupOfTravel } from '../parts/springs/values.js'
import { calculationFor } from '../what-if.js'
import { angle, force, length, torque } from './bench.js'
import type { DriveWork } from './drive-work-plan.js'
import { phrase, shown } from './sheet-units.js'

type Spring = NonNullable<LegNumbers['joints'][Joint]['spring']>
type SpringOf<K extends Spring['kind']> = Extract<Spring, { readonly kind: K }>

const WIRES = {
  musicWire: 'music wire',
  hardDrawn: 'hard-drawn wire',
  oilTempered: 'oil-tempered wire',
  stainless: 'stainless wire',
} as const
const energyText = (x: number) => shown(new Quantity(x, 'energy'))

/** The spring in parallel with the drive of a joint: what to buy, how to measure it and put it on; nothing for a joint without one. @internal */
export function springWork(leg: LegModel, joint: Joint): DriveWork[] {
  const { spring } = leg.x.joints[joint]
  if (spring === undefined) return []
  const own = spring.kind === 'torsion' ? torsion(leg, joint, spring) : extension(leg, joint, spring)
  const law = springLawOf(leg, joint)
  const { lowest, highest } = rangeOf(leg.x, joint)
  const at = (x: number) => phrase`${torque(springTorqueAt(law, x))} at ${angle(x)}`
  return [
    {
      joint,
      kind: 'spring',
      sizes: [...own.sizes, { what: `torque on the ${joint} at the ends of its travel`, value: `${at(lowest)}, ${at(highest)}` }],
      parts: [
        {
          item: `${spring.kind} spring`,
          size: phrase`${WIRES[spring.wire]} ${length(spring.wireDiameter)}, mean coil ${length(spring.coilDiameter)}, ${spring.coils} coils${own.size}`,
          quantity: '2',
          remark: `${joint}: ${own.rate}; one spare`,
        },
      ],
      before: own.before,
      steps: [
        `Put the spring of the ${joint} on last, with the supply off and the leg held at the angle where it is loosest: ${own.loosest}. Eye protection, and nobody in line with it: at its hardest it stores ${own.energy}.`,
        own.guard,
        `Turn the ${joint} through its whole travel by hand: the spring must touch nothing. Let go of it slowly: without current the spring moves the leg.`,
        `Take the spring of the ${joint} off for friction, windup and play on the test stand: their logs take the drive alone.`,
      ],
      followUps: [
        {
          when: 'after a week',
          what: `spring of the ${joint}`,
          expect: `the same rate within five per cent, no rust, no notch where it touches, no white or oval print at its ends`,
        },
      ],
      troubles: [
        {
          reading: `${joint}: the motor draws more in the swing, or with the foot lifted, than while it stands`,
          means: 'the spring is stronger than the load it relieves: the motor works against it',
          cure: 'a softer spring, or a free angle (free length) closer to the standing pose',
        },
        {
          reading: `${joint}: the motor draws as much as without the spring`,
          means: 'the spring has taken a set, hangs loose, or is broken',
          cure: 'measure its rate again; a broken spring is replaced before the robot walks on, with its pins looked at',
        },
      ],
      problems: own.problems,
    },
  ]
}

function torsion(leg: LegModel, joint: Joint, spring: SpringOf<'torsion'>) {
  const calculation = calculationFor(leg)
  const here = calculation.instances.implied(placeOf(calculation, { joint })) as never
  const rate = calculation.get(nominalTorsionRate, here)
  const { most, mostTorque, energy } = calculation.get(windupOfTravel, here)
  const arm = spring.movingLeg
  const perTenth = new Quantity((rate * 0.1) / (arm * STANDARD_GRAVITY), 'mass')
  return {
    rate: shown(new Quantity(rate, 'torsionalStiffness')),
    size: phrase`, legs ${length(spring.fixedLeg)} and ${length(spring.movingLeg)}`,
    loosest: shown(angle(spring.freeAngle)),
    energy: energyText(energy),
    sizes: [
      { what: 'rate', value: shown(new Quantity(rate, 'torsionalStiffness')) },
      { what: 'wound by at most', value: phrase`${angle(most)}, ${torque(mostTorque)}` },
      { what: 'force of its shorter leg', value: shown(force(mostTorque / Math.min(spring.fixedLeg, spring.movingLeg))) },
    ],
    before: [
      phrase`Measure the rate of the spring of the ${joint} before it goes on: hold its coil on a pin, hang weights on the moving leg at ${length(arm)} from the axis, and read the angle. Each ${perTenth} turns it by some 0.1 rad. Write the rate into the document.`,
    ],
    guard: `Cover the coil of the ${joint} with a cap: a leg that breaks or slips off swings round at once.`,
    problems: most > 0 ? [] : [`${joint}: the spring touches at no angle of the joint; change its free angle or the way it winds`],
  }
}

function extension(leg: LegModel, joint: Joint, spring: SpringOf<'extension'>) {
  const calculation = calculationFor(leg)
  const here = calculation.instances.implied(placeOf(calculation, { joint })) as never
  const rate = calculation.get(nominalExtensionRate, here)
  const { shortest, longest, mostForce, energy } = calculation.get(stretchOfTravel, here)
  const per = new Quantity((rate * 0.01) / STANDARD_GRAVITY, 'mass')
  const loose = shortest < spring.freeLength
  return {
    rate: shown(new Quantity(rate, 'linearStiffness')),
    size: phrase`, ${length(spring.freeLength)} inside its hooks, initial tension ${force(spring.initialTension)}`,
    loosest: phrase`${length(shortest)} between its pins`,
    energy: energyText(energy),
    sizes: [
      { what: 'rate', value: shown(new Quantity(rate, 'linearStiffness')) },
      { what: 'shortest and longest between the pins', value: phrase`${length(shortest)}, ${length(longest)}` },
      { what: 'largest pull', value: shown(force(mostForce)) },
    ],
    before: [
      phrase`Measure the rate of the spring of the ${joint} before it goes on: hang it up, hang two weights on it in turn that open its coils, and read both lengths. Each ${per} more makes it 10 mm longer. Write the rate into the document.`,
    ],
    guard: `Run a cord through the coils of the spring of the ${joint} and tie it to both pins: a spring that breaks then stays on the leg.${loose ? ` It hangs loose at part of the travel: close its hooks around the pins, or they drop off.` : ''}`,
    problems: longest > spring.freeLength ? [] : [`${joint}: the spring hangs loose over the whole travel; shorten it or move its pins`],
  }
}
