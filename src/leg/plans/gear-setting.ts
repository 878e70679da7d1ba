import { spurBacklash, spurSpan } from '../../capstan/index.js'
import { bracketRoot } from '../../numeric/index.js'
import type { LegModel } from '../leg-model.js'
import { type DrivenJoint, driveOf } from '../numbers.js'
import { gearDiameter } from '../workshop-lines.js'

const PRESSURE_ANGLE = (20 * Math.PI) / 180

/** A gear of a pair, SI. @internal */
export interface GearSizes {
  readonly teeth: number
  readonly pitch: number
  readonly tip: number
  readonly root: number
  /** Teeth that a calliper spans, and the width that it reads of full teeth and of thinned ones. */
  readonly spanned: number
  readonly full: number
  readonly thinned: number
}

/** How a pair of gears is set, SI. @internal */
export interface GearSetting {
  readonly pinion: GearSizes
  readonly wheel: GearSizes
  /** Sum of the pitch radii: the distance of the axes of gears whose teeth are cut thinner by the backlash. */
  readonly standard: number
  /** Distance of the axes of gears with full teeth. */
  readonly apart: number
  /** Gap between flanks, square to them. */
  readonly gap: number
}

/** Sizes of a pair of standard gears, and the distance of the axes that gives their backlash. @internal */
export function gearSetting({ x }: LegModel, joint: DrivenJoint): GearSetting {
  const { pinionTeeth, wheelTeeth, module, backlash } = driveOf(x, joint, 'gear')
  const teeth = pinionTeeth + wheelTeeth
  const standard = gearDiameter.si({ module, teeth }) / 2
  const at = (centreDistance: number) => spurBacklash.si({ teeth, module, centreDistance }).alongPitchCircle
  const gear = (count: number): GearSizes => {
    // The teeth within the pressure angle either way, and the one in the middle.
    const spanned = Math.max(2, Math.round((count * PRESSURE_ANGLE) / Math.PI + 0.5))
    const over = (thinning: number) => spurSpan.si({ teeth: count, spanned, module, thinning })
    return {
      teeth: count,
      pitch: gearDiameter.si({ module, teeth: count }),
      tip: gearDiameter.si({ module, teeth: count + 2 }),
      root: gearDiameter.si({ module, teeth: count - 2.5 }),
      spanned,
      full: over(0),
      thinned: over(backlash / 2),
    }
  }
  return {
    pinion: gear(pinionTeeth),
    wheel: gear(wheelTeeth),
    standard,
    apart: backlash === 0 ? standard : bracketRoot((c) => at(c) - backlash, standard, standard + 4 * backlash + module),
    gap: backlash * Math.cos(PRESSURE_ANGLE),
  }
}
