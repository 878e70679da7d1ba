import { cantileverToe, tipOverSlope } from '../../kinematics/index.js'
import { type Check, LOADED } from './check.js'
import { polymerRest } from './rests.js'

/** Strain that printed elastomer toes bear once, and in every stride of a season, where the material table has no limit. */
const ELASTOMER_STRAIN = 0.3
const ELASTOMER_STRAIN_CYCLIC = 0.1

/** Toes and the stand of the whole robot. */
export const footChecks: readonly Check[] = [
  {
    id: 'toe.strain',
    part: 'toe',
    mode: 'tears at its root',
    stake: 'breaks',
    kind: 'strain',
    scope: 'leg',
    cases: LOADED,
    after: ['motion'],
    run: (of, { leg, state }) => {
      const { foot } = leg.x
      if (state.motion === undefined) return undefined
      const cyclic = state.case.id === 'season'
      const soft = leg.foot.material.family === 'elastomer'
      const allowableStrain = Number.isFinite(leg.foot.strainLimit)
        ? leg.foot.strainLimit
        : soft
          ? cyclic
            ? ELASTOMER_STRAIN_CYCLIC
            : ELASTOMER_STRAIN
          : 0.01
      const ask = { modulus: leg.foot.modulus, length: foot.toeLength, width: foot.toeWidth, thickness: foot.toeThickness, allowableStrain }
      const force = (state.motion.vertical / foot.toes) * Math.cos(foot.lift)
      const free = of(cantileverToe, { ...ask, tipForce: force })
      // A toe that lies flat on the ground bends no further.
      const flat = foot.toeLength * Math.sin(foot.lift)
      const bent = free.deflection > flat ? of(cantileverToe, { ...ask, tipForce: free.stiffness * flat }) : free
      return {
        demand: bent.rootStrain,
        capacity: allowableStrain,
        ...(free.deflection > flat ? { remark: 'the toes lie flat on the ground' } : {}),
      }
    },
    demandIs: 'the strain at the root of a toe, bent no further than flat',
    capacityIs: 'the strain its polymer bears (in every stride of a season)',
    remedy: 'longer or thinner toes, or toes that stand flatter',
    rests: ({ leg }) => [
      ...polymerRest(leg.foot, 'toe'),
      {
        what: `strain that printed ${leg.foot.material.name} bears in every stride`,
        source: { level: 'assumption', where: 'a tenth for elastomers in repeated bending, three tenths once' },
        test: 'bend a printed toe to its flat position ten thousand times',
      },
    ],
  },
  {
    id: 'robot.tipOver',
    part: 'robot',
    mode: 'tips over',
    stake: 'safety',
    kind: 'angle',
    scope: 'leg',
    cases: ['slope'],
    after: [],
    run: (of, { leg }) => {
      const { robot, links, usage } = leg.x
      const height = robot.centreOfMassHeight ?? robot.standHeight
      const along = of(tipOverSlope, { marginToEdge: robot.hipSpacing / 2, height })
      // Across, the feet stand outside the body by the sideways offset.
      const across = of(tipOverSlope, { marginToEdge: robot.hipTrack / 2 + links.hipOffset, height })
      return { demand: usage.slope, capacity: Math.min(along, across) }
    },
    demandIs: 'the steepest slope',
    capacityIs: 'the slope at which the weight passes through the edge of the feet, all of them on the ground',
    remedy: 'a lower load, feet farther apart, or a gentler slope',
  },
]
