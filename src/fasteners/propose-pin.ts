import { atLeast, atMost, type Given, type Proposals, proposalsOf, readInputs, type Si } from '../formula/index.js'
import { Quantity } from '../units/index.js'
import { embeddedPin } from './embedded-pin.js'
import { parallelPin } from './parallel-pins.js'
import { goodmanReserve, pinEnduranceLimit } from './pin-fatigue.js'
import { clevisPinBending, lugNetSection, lugTearOut, pinBearing, pinShear } from './pins.js'

const WISH = {
  /** Largest force across the pin. */
  force: { kind: 'force', above: 0 },
  /** Width between the outsides of the two cheeks. */
  widthSpace: { kind: 'length', above: 0 },
  /** Largest width of the eyes across the load. */
  eyeSpace: { kind: 'length', above: 0 },
  /** Gap between cheek and lug, each side. */
  gap: { kind: 'length', min: 0, default: '0.3 mm' },
  /** Allowable pressure of the polymer in its hole at temperature and for the time of the load. */
  allowablePressure: { kind: 'stress', above: 0 },
  /** Allowable tension and shear of the polymer. */
  allowableTension: { kind: 'stress', above: 0 },
  /** Allowable shear of the polymer. */
  allowableShear: { kind: 'stress', above: 0 },
  /** Tensile strength of the pin. */
  pinStrength: { kind: 'stress', above: 0, default: '1500 MPa' },
  /** Capacity over demand that every limit must keep. Default 1.25. */
  requiredReserve: { kind: 'ratio', min: 1, default: 1.25 },
} as const

/** Load of a pin in a printed fork, and the space that it must fit. */
export type PinWish = Given<typeof WISH>
type PinWishNumbers = Si<typeof WISH>

/** A pin that was proposed, with the eyes that bear on it. */
export interface ProposedPin {
  /** Nominal diameter of the parallel pin, in millimetres, as `parallelPin` takes it. */
  readonly size: (typeof parallelPin)['designations'][number]
  readonly diameter: Quantity<'length'>
  readonly cheekThickness: Quantity<'length'>
  readonly lugThickness: Quantity<'length'>
  /** Width of the eyes across the load. */
  readonly eyeWidth: Quantity<'length'>
  /** Distance from the middle of the hole to the edge along the load. */
  readonly edgeDistance: Quantity<'length'>
}

/** Thickness of the lug and of a cheek, and width of the eye, over the diameter of the pin. */
const LUGS = [1.5, 2, 3, 4]
const CHEEKS = [1, 1.5, 2, 3]
const EYES = [2.5, 3, 4]
/** Stress concentration of a close pin in a polymer eye. */
const CONCENTRATION = 2.5
/** Shear strength of steel over its tensile strength. */
const SHEAR = 0.6

/**
 * Hardened parallel pins for a fork of printed polymer, with the thickness of lug and cheeks and the width of the eyes. Every one listed keeps bending, shear
 * and fatigue of the pin and pressure, net section and tear-out of the polymer with the required reserve, the smallest fork first.
 *
 * The force goes from zero to full and back, each time. Throws one `InputError` that lists every bad input.
 */
export function proposePin(wish: PinWish): Proposals<ProposedPin> {
  const read = readInputs('fasteners.proposePin', WISH, wish)
  return proposalsOf(read, designsFor, [
    { input: 'force', kind: 'force', easiest: 1e-3 * read.force },
    { input: 'widthSpace', kind: 'length', easiest: 100 * read.widthSpace },
    { input: 'eyeSpace', kind: 'length', easiest: 100 * read.eyeSpace },
  ])
}

const designsFor = (x: PinWishNumbers) =>
  parallelPin.designations.flatMap((size) =>
    LUGS.flatMap((lug) => CHEEKS.flatMap((cheek) => EYES.map((eye) => candidate(x, size, lug, cheek, eye)))),
  )

function candidate(x: PinWishNumbers, size: ProposedPin['size'], lug: number, cheek: number, eye: number) {
  const { diameter } = parallelPin.si(size)
  const [lugThickness, cheekThickness, width] = [lug * diameter, cheek * diameter, eye * diameter]
  const edgeDistance = width / 2
  const length = (l: number) => new Quantity(l, 'length')
  const design: ProposedPin = {
    size,
    diameter: length(diameter),
    cheekThickness: length(cheekThickness),
    lugThickness: length(lugThickness),
    eyeWidth: length(width),
    edgeDistance: length(edgeDistance),
  }
  const across = 2 * (cheekThickness + x.gap) + lugThickness
  return { design, limits: limitsOf(x, { diameter, lugThickness, cheekThickness, width, edgeDistance, across }), cost: across * width ** 2 }
}

interface Fork {
  readonly diameter: number
  readonly lugThickness: number
  readonly cheekThickness: number
  readonly width: number
  readonly edgeDistance: number
  readonly across: number
}

function limitsOf(x: PinWishNumbers, { diameter, lugThickness, cheekThickness, width, edgeDistance, across }: Fork) {
  const { force, gap, pinStrength, requiredReserve: reserve } = x
  const bending = clevisPinBending.si({ force, diameter, cheekThickness, gap, lugThickness }).bendingStress
  const { enduranceLimit } = pinEnduranceLimit.si({
    tensileStrength: pinStrength,
    diameter,
    bending: 'fixedDirection',
    surface: 'ground',
    reliability: '50 %',
  })
  const fatigue = goodmanReserve.si({ largestStress: bending, smallestStress: 0, enduranceLimit, tensileStrength: pinStrength }).reserve
  const half = force / 2
  const cheek = embeddedPin.si({ force: half, arm: gap + lugThickness / 4, depth: cheekThickness, diameter })
  const stress = (what: string, value: number, limit: number) => atMost(what, 'stress', value, limit / reserve)
  return [
    stress('bending of the pin', bending, pinStrength),
    stress('shear of the pin', pinShear.si({ force, diameter, planes: 2 }).peakStress, SHEAR * pinStrength),
    atLeast('fatigue reserve of the pin', 'ratio', fatigue, reserve),
    stress('pressure in the lug', pinBearing.si({ force, diameter, thickness: lugThickness }).peakPressure, x.allowablePressure),
    stress('pressure at the mouth of a cheek', cheek.mouthPressure, x.allowablePressure),
    stress(
      'tension next to the hole of a cheek',
      lugNetSection.si({ force: half, width, diameter, thickness: cheekThickness, stressConcentration: CONCENTRATION }).peakStress,
      x.allowableTension,
    ),
    stress(
      'tension next to the hole of the lug',
      lugNetSection.si({ force, width, diameter, thickness: lugThickness, stressConcentration: CONCENTRATION }).peakStress,
      x.allowableTension,
    ),
    stress(
      'tear-out of a cheek',
      lugTearOut.si({ force: half, edgeDistance, diameter, thickness: cheekThickness, planes: 'front' }).shearStress,
      x.allowableShear,
    ),
    stress(
      'tear-out of the lug',
      lugTearOut.si({ force, edgeDistance, diameter, thickness: lugThickness, planes: 'front' }).shearStress,
      x.allowableShear,
    ),
    atMost('width over the cheeks', 'length', across, x.widthSpace),
    atMost('width of the eyes', 'length', width, x.eyeSpace),
  ]
}
