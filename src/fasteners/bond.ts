import { formula } from '../formula/index.js'
import { BOND, BONDED_LENGTH, JOINT_TEMPERATURE } from './bond-inputs.js'
import { ACROSS_FLATS } from './nut-inputs.js'

const BELOW_TRANSITION = {
  accepts: 'must stay below the glass transition of the adhesive: above it the joint fails',
  holds: (x: { readonly temperature: number; readonly glassTransitionTemperature: number }) => x.temperature < x.glassTransitionTemperature,
}
const PART_HOLDS = {
  accepts: 'must be above the temperature of the joint, since the part itself loses its strength there',
  holds: (x: { readonly temperature: number; readonly partGlassTransitionTemperature?: number | undefined }) =>
    x.partGlassTransitionTemperature === undefined || x.temperature < x.partGlassTransitionTemperature,
}

/** Share of an adhesive's strength at a temperature, from its glass transition: half at 10 K below it, not reliable above. */
export const adhesiveTemperatureFactor = /* @__PURE__ */ formula('fasteners.adhesiveTemperatureFactor', {
  inputs: {
    ...JOINT_TEMPERATURE,
  },
  output: {
    /** Share of the strength at 23 °C. */
    factor: 'ratio',
    /** Whether the bond may be relied on. */
    state: { oneOf: ['usable', 'softening', 'beyondGlassTransition'] },
  },
  assumes: ['full strength up to 23 °C, linear to half at 10 K below the transition, linear on towards nothing at 10 K above'],
  source: [{ level: 'assumption', where: 'straight lines through adhesive-handbook practice; replace by a coupon at temperature' }],
  requires: {
    temperature: BELOW_TRANSITION,
  },
  si: ({ temperature, glassTransitionTemperature }) => {
    const knee = glassTransitionTemperature - 10
    const room = Math.min(296.15, knee - 10)
    const beyond = temperature >= glassTransitionTemperature
    const falling = temperature > knee ? 0.5 - (temperature - knee) / 40 : 1 - (0.5 * (temperature - room)) / (knee - room)
    return {
      factor: beyond ? 0 : Math.min(1, falling),
      state: beyond ? ('beyondGlassTransition' as const) : temperature > knee ? ('softening' as const) : ('usable' as const),
    }
  },
})

/** Shear strength of an adhesive after reductions for material, gap, temperature, alternating load and ageing. */
export const bondStrength = /* @__PURE__ */ formula('fasteners.bondStrength', {
  inputs: {
    ...BOND,
  },
  output: {
    /** Shear strength after all reductions. */
    shearStrength: 'stress',
    /** Share of the strength at 23 °C that temperature leaves. */
    temperatureFactor: 'ratio',
    /** Whether the bond may be relied on. */
    state: { oneOf: ['usable', 'softening', 'beyondGlassTransition'] },
  },
  assumes: ['reductions multiply', 'as adhesiveTemperatureFactor'],
  source: [{ level: 'unverified', where: 'reductions as adhesive handbooks multiply them' }],
  requires: {
    temperature: BELOW_TRANSITION,
    partGlassTransitionTemperature: PART_HOLDS,
  },
  si: (x) => {
    const { factor, state } = adhesiveTemperatureFactor.si(x)
    const kept = x.materialFactor * x.gapFactor * x.fatigueFactor * x.ageingFactor * factor
    return { shearStrength: x.shearStrength * kept, temperatureFactor: factor, state }
  },
})

/** Force and torque a pin, bush or ferrule holds that is glued into a round hole, by average shear and the usual reductions. */
export const bondedPin = /* @__PURE__ */ formula('fasteners.bondedPin', {
  inputs: {
    /** Diameter of the bond. */
    diameter: { kind: 'length', above: 0 },
    ...BONDED_LENGTH,
    ...BOND,
  },
  output: {
    /** Axial force. */
    axialForce: 'force',
    /** Torque. */
    torque: 'torque',
    /** Shear strength after all reductions. */
    shearStrength: 'stress',
    /** Whether the bond may be relied on. */
    state: { oneOf: ['usable', 'softening', 'beyondGlassTransition'] },
  },
  assumes: ['uniform shear: bonds longer than about 1.5 diameters, or with one soft part, carry less (`pottedFerrule`)'],
  source: [{ level: 'published', where: 'average shear of a cylindrical bond, any machine-design text' }],
  requires: {
    temperature: BELOW_TRANSITION,
    partGlassTransitionTemperature: PART_HOLDS,
  },
  valid: { 'length up to 1.5 diameters (average shear)': ({ length, diameter }) => length <= 1.5 * diameter * (1 + 1e-9) },
  si: (x) => {
    const { shearStrength, state } = bondStrength.si(x)
    const axialForce = Math.PI * x.diameter * x.length * shearStrength
    return { axialForce, torque: (axialForce * x.diameter) / 2, shearStrength, state }
  },
})

/** A nut glued into a printed pocket: either its bond shears along the flats or the printed plug around it tears out. */
export const bondedNut = /* @__PURE__ */ formula('fasteners.bondedNut', {
  inputs: {
    ...ACROSS_FLATS,
    /** Bonded height. */
    height: { kind: 'length', above: 0 },
    ...BOND,
    /** Shear strength of the print along the pull, next to the bond. */
    substrateShearStrength: { kind: 'stress', above: 0 },
    /** Tension across the layers under the plug. */
    acrossLayersStrength: { kind: 'stress', above: 0 },
  },
  output: {
    /** Axial force it holds. */
    axialForce: 'force',
    /** Torque it holds, at the mean radius of the flats. */
    torque: 'torque',
    /** Governing mode of failure under axial force. */
    governedBy: { oneOf: ['bond', 'substrateShear', 'plugTension'] },
    /** Shear strength of the bond after all reductions. */
    shearStrength: 'stress',
    /** Whether the bond may be relied on. */
    state: { oneOf: ['usable', 'softening', 'beyondGlassTransition'] },
  },
  assumes: ['uniform shear around the hexagon', "plug of the nut's own outline"],
  source: [{ level: 'computed', where: 'perimeter and area of a hexagon' }],
  requires: {
    temperature: BELOW_TRANSITION,
    partGlassTransitionTemperature: PART_HOLDS,
  },
  si: (x) => {
    const { acrossFlats, height, substrateShearStrength, acrossLayersStrength } = x
    const { shearStrength, state } = bondStrength.si(x)
    const side = 2 * Math.sqrt(3) * acrossFlats * height
    const plug = (Math.sqrt(3) / 2) * acrossFlats * acrossFlats * acrossLayersStrength + side * substrateShearStrength
    const bond = side * shearStrength
    const substrate = side * substrateShearStrength
    const weakest = Math.min(bond, substrate, plug)
    return {
      axialForce: weakest,
      torque: side * Math.min(shearStrength, substrateShearStrength) * (acrossFlats / 2),
      governedBy: weakest === bond ? ('bond' as const) : weakest === substrate ? ('substrateShear' as const) : ('plugTension' as const),
      shearStrength,
      state,
    }
  },
})
