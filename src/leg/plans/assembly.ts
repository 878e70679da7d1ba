import type { Leg } from '../document/describe.js'
import { cordJoints } from '../numbers.js'
import { hasPrints } from '../printed.js'
import { cautionsOf } from '../report/cautions.js'
import { type AssemblyOptions, optionsOf } from './assembly-options.js'
import type { AssemblyPlan } from './assembly-plan.js'
import { assumedOf, problemsOf } from './assembly-remarks.js'
import { followUps, stepsOf } from './assembly-steps.js'
import { assemblyPage } from './assembly-text.js'
import { benchLeg } from './bench.js'
import { cutList } from './cut-list.js'
import { driveWork } from './drive-work.js'
import { bonds, presses, tightening } from './fastening-steps.js'
import { pivotSteps } from './pivot-work.js'
import { rodCut } from './rod-steps.js'
import { shoppingList } from './shopping.js'
import { displayed } from './show.js'
import { encoderSteps, pinionSteps } from './small-parts.js'
import { tensionerSetting, winding } from './tensioning.js'
import { cordChecks, coupons, troubles } from './workshop-checks.js'

/**
 * The plan a builder works from, for every kind of drive: cuts, lay of the cords, positions of the tensioners, belts and gears with their axes, tightening of
 * each screw in order, presses and bonds, and the work to repeat after a day and a week.
 *
 * Throws an `InputError` for options that are not quantities of their kind or negative. Estimates for trained judgement: cords under tension store
 * energy, and bonded or pressed parts must not be the only thing that keeps a part in place.
 */
export function assemblyPlan(leg: Leg, options: AssemblyOptions = {}): AssemblyPlan {
  const { tail, bedding, depth } = optionsOf(options)
  const bench = benchLeg(leg)
  const cuts = cutList(bench, tail.si, depth?.si)
  const cords = cordJoints(bench.x)
  const windings = cords.map((joint) => winding(bench, joint))
  const rod = rodCut(bench)
  const drives = driveWork(bench, { tail: tail.si, beddingStrain: bedding.si })
  const tensioners = cuts.cords.map((cut) => tensionerSetting(bench, cut, bedding.si))
  const screws = tightening(bench)
  const pressed = presses(bench)
  const bonded = bonds(bench)
  const checks = cordChecks(bench, cuts, tensioners)
  const plan: AssemblyPlan = {
    leg,
    cautions: cautionsOf(bench.x),
    assumed: assumedOf(bench, options, { tail, bedding, depth }, drives),
    cuts,
    rod,
    drives,
    windings,
    tensioners,
    tightening: screws,
    presses: pressed,
    bonds: bonded,
    steps: stepsOf({
      drives,
      presses: pressed,
      prints: hasPrints(bench.x),
      shaft: cuts.shaft !== undefined,
      rod,
      windings,
      tensioners,
      checks,
      bonds: bonded,
      pivots: pivotSteps(bench.x),
      pinions: pinionSteps(bench),
      encoders: encoderSteps(bench),
      sleeves: Object.values(bench.x.bolts).some(({ sleeves }) => sleeves),
    }),
    followUps: followUps(bench, tensioners, screws, drives),
    checks,
    coupons: coupons(pressed, checks, hasPrints(bench.x)),
    troubles: [...troubles(checks, pressed, tensioners), ...drives.flatMap((drive) => drive.troubles)],
    shopping: shoppingList(bench, { cuts, rod, drives, bonds: bonded }),
    problems: problemsOf(bench, { drives, cuts, windings, tensioners, presses: pressed }),
  }
  return displayed(plan, assemblyPage)
}
