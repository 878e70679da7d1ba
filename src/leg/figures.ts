import { type Formula, formula, NoResultError } from '../formula/index.js'
import { type LegInputs, legReader } from './as-formula.js'
import { QuickLeg } from './assess/quick.js'
import { placeOf } from './calculation.js'
import { type CaseId, LOAD_CASES } from './cases/events.js'
import type { Leg } from './document/describe.js'
import { footResult } from './foot-result.js'
import { legInputs } from './formula-inputs.js'
import { type LegModel, legModel } from './leg-model.js'
import { materialState } from './material-state.js'
import { NoValueError } from './no-value.js'
import { type DrivenJoint, drivenJoints, driveOf, hasCord, motorOf, plateOf } from './numbers.js'
import { caseList, knownOptions } from './options.js'
import { heat } from './parts/motors/heat.js'
import { keepCalculation } from './what-if.js'

/** Options of `legFigures`. */
export interface LegFiguresOptions {
  /** Load cases to run. Default: those of `assess`. */
  readonly cases?: readonly CaseId[]
  /** Paths of the values whose ranges studies see without being given; see `legFormula`. */
  readonly uncertain?: readonly string[]
}

const OUTPUT = {
  /** Smallest ratio of reserve to required reserve: at least 1 where every check has its required reserve. */
  margin: 'ratio',
  /** Reserve of that check. */
  reserve: 'ratio',
  /** Mass of motors, plates, sinks and drums of the driven joints, printed solid. */
  driveMass: 'mass',
  /** Heat that the motors of one leg make on a walk. */
  walkingLoss: 'power',
  /** Hottest mounting face of all load cases. */
  hottestMount: 'temperature',
  /** Vertical deflection of the foot of the standing leg; infinite where the drives hold no load. */
  footGive: { kind: 'length', infinite: true },
  /** Deflection of the foot to the side when it is pushed as on a walk across the slope; infinite where the drives hold no load. */
  footGiveSideways: { kind: 'length', infinite: true },
  /** Error of the foot at walking torque, worst corner. */
  footError: 'length',
} as const

/**
 * A leg as a formula with several results, for trade-offs: margin of the verdict, mass, heat, temperature, deflection and error of the foot. Inputs are
 * those of `legFormula`. `optimise` takes each as a goal or a constraint. Throws a `NoResultError` for sizes that cannot be.
 */
export function legFigures(leg: Leg, options: LegFiguresOptions = {}): Formula<LegInputs, typeof OUTPUT> {
  knownOptions('legFigures', options, ['cases', 'uncertain'])
  const { uncertain } = options
  const cases = caseList('legFigures', options.cases)
  const numbers = legReader(leg)
  const quick = new QuickLeg(cases)
  const figuresOf = (given: unknown) => {
    const x = numbers(given)
    const prepared = legModel(x)
    const { margin, reserve } = quick.governing(x)
    const calculation = quick.load(x)
    keepCalculation(prepared, calculation)
    const heatIn = (id: CaseId, joint: DrivenJoint) => {
      const { event, air } = LOAD_CASES[id]
      return calculation.get(heat, placeOf(calculation, { joint, event, air }) as never)
    }
    const { deflection, sideways, error } = footResult(prepared)
    return {
      margin,
      reserve,
      driveMass: driveMass(prepared),
      walkingLoss: drivenJoints(x).reduce((sum, joint) => sum + heatIn('walk', joint).loss + heatIn('walk', joint).ironLoss, 0),
      hottestMount: Math.max(...cases.flatMap((id) => drivenJoints(x).map((joint) => heatIn(id, joint).mount))),
      footGive: deflection === undefined ? Number.POSITIVE_INFINITY : Math.abs(deflection.z.si),
      footGiveSideways: sideways.deflection?.si ?? Number.POSITIVE_INFINITY,
      footError: error.together.worstCorner.si,
    }
  }
  // Sizes that cannot be, such as a plate of less than no thickness, have no figures: a search goes on to others.
  const si = (given: unknown) => {
    try {
      return figuresOf(given)
    } catch (error) {
      throw error instanceof NoValueError ? new NoResultError(error.message, { cause: error }) : error
    }
  }
  return formula('leg.figures', {
    inputs: legInputs(leg, uncertain),
    output: OUTPUT,
    assumes: ['typical values of everything uncertain', 'plates and drums printed solid'],
    source: [{ level: 'computed', where: 'every check of the leg in its load cases; see the calculation sheet of assess' }],
    si: si as never,
  }) as unknown as Formula<LegInputs, typeof OUTPUT>
}

/** Mass of what drives the joints. */
function driveMass(leg: LegModel): number {
  const { x, drives } = leg
  const densityOf = (material: string) => materialState(leg, material).density()
  const sheet = ({ size: { width, height }, thickness }: { size: { width: number; height: number }; thickness: number }) =>
    width * height * thickness
  const masses = drivenJoints(x).map((joint) => {
    const { sink, ...plate } = plateOf(x, joint)
    const mount =
      motorOf(x, joint).mass + sheet(plate) * densityOf(plate.material) + (sink === undefined ? 0 : sheet(sink) * densityOf(sink.material))
    if (!hasCord(x, joint)) return mount
    const { bore, length, material } = driveOf(x, joint, 'cord').drum
    const { drumRadius } = drives[joint]
    return mount + Math.PI * (drumRadius ** 2 - bore ** 2 / 4) * length * densityOf(material)
  })
  return masses.reduce((sum, mass) => sum + mass, 0)
}
