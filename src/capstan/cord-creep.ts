import { formula } from '../formula/index.js'
import { CORD_RIGIDITY, END_TIME } from './cord-inputs.js'
import { ACTIVATION } from './inputs.js'
import { thermalTension } from './take-up.js'

/** Factor by which the steady creep of a UHMWPE cord changes with temperature and stress (one thermally activated process). */
export const activatedCreepFactor = /* @__PURE__ */ formula('capstan.activatedCreepFactor', {
  inputs: {
    /** Temperature of the known rate. */
    fromTemperature: { kind: 'temperature', above: 0 },
    /** Temperature of the new rate. */
    toTemperature: { kind: 'temperature', above: 0 },
    /** Fibre stress of the known rate. */
    fromStress: { kind: 'stress', above: 0 },
    /** Fibre stress of the new rate. */
    toStress: { kind: 'stress', above: 0 },
    ...ACTIVATION,
  },
  output: 'ratio',
  equation: [
    'boltzmann = 1.380649e-23 J / K',
    'x = fromStress * activationVolume / (boltzmann * fromTemperature)',
    'y = toStress * activationVolume / (boltzmann * toTemperature)',
    'result = exp(activationEnergy / boltzmann * (1 / fromTemperature - 1 / toTemperature)) * sinh(y) / sinh(x)',
  ],
  assumes: ['steady creep; the rate itself must be measured'],
  source: [
    { level: 'published', where: 'J. Chem. Phys. 153 (2020) 144904, abstract: U about 1.5 eV, V about 45 cubic angstroms; Eyring rate' },
  ],
  valid: {
    'from -20 to 70 degC': ({ fromTemperature, toTemperature }) =>
      Math.min(fromTemperature, toTemperature) >= 253.15 * (1 - 1e-9) && Math.max(fromTemperature, toTemperature) <= 343.15,
  },
  si: ({ fromTemperature, toTemperature, fromStress, toStress, activationEnergy, activationVolume }) => {
    // sinh and the Arrhenius term as one exponential: apart, both overflow at high stress.
    const boltzmann = 1.380649e-23
    const from = (fromStress * activationVolume) / (boltzmann * fromTemperature)
    const to = (toStress * activationVolume) / (boltzmann * toTemperature)
    const warming = (activationEnergy / boltzmann) * (1 / fromTemperature - 1 / toTemperature)
    return (Math.exp(warming + to - from) * Math.expm1(-2 * to)) / Math.expm1(-2 * from)
  },
})

/** Creep strain of aramid, LCP or PBO cord, which grows by a constant amount per decade of time. */
export const logarithmicCreep = /* @__PURE__ */ formula('capstan.logarithmicCreep', {
  inputs: {
    /** Strain gained per tenfold time; about 0.01 to 0.03 % at a third to half of the breaking load. */
    perDecade: { kind: 'strain', min: 0 },
    /** Time from which it counts. */
    from: { kind: 'time', above: 0 },
    ...END_TIME,
  },
  output: 'strain',
  source: [{ level: 'unverified', where: 'fibre makers: logarithmic creep of para-aramid and LCP' }],
  requires: { to: { accepts: 'must not be before the starting time', holds: ({ from, to }) => to >= from } },
  si: ({ perDecade, from, to }) => perDecade * Math.log10(to / from),
})

/**
 * Low estimate of the pretension left when cord between fixed ends has crept and the temperature has changed. The creep strain of constant
 * tension is subtracted in full, though creep slows as tension falls. A printed frame with a polymer cord tightens when warm and slackens when
 * cold. `activatedPretensionLeft` (UHMWPE) and `logarithmicPretensionLeft` (the others) follow the falling tension.
 */
export const pretensionLeft = /* @__PURE__ */ formula('capstan.pretensionLeft', {
  inputs: {
    /** Pretension set at assembly. */
    pretension: { kind: 'force', above: 0 },
    ...CORD_RIGIDITY,
    /** Creep strain at the pretension since then; less as the tension falls, so that the result is a low estimate. */
    creepStrain: { kind: 'strain', min: 0 },
    /** Temperature now less temperature at tensioning. */
    temperatureRise: { kind: 'temperatureDifference', default: '0 K' },
    /** Expansion of the frame that sets the centre distance. */
    frameExpansion: { kind: 'thermalExpansion', default: '0 1/K' },
    /** Expansion of the cord along its length; negative for drawn polymer fibres. */
    cordExpansion: { kind: 'thermalExpansion', default: '0 1/K' },
  },
  output: {
    /** Tension left; not below zero, because a cord cannot push. */
    tension: 'force',
    /** Whether any is left. */
    state: { oneOf: ['taut', 'slack'] },
  },
  equation: [
    'tension = max(0 N, pretension - axialRigidity * creepStrain + axialRigidity * temperatureRise * (frameExpansion - cordExpansion))',
  ],
  assumes: ['ends fixed, frame rigid and as warm as the cord', 'creep strain of constant tension counted in full'],
  source: [
    { level: 'computed', where: 'strain compatibility at fixed ends: dT = EA (heat strain of the frame less that of the cord - dε)' },
  ],
  si: ({ pretension, axialRigidity, creepStrain, temperatureRise, frameExpansion, cordExpansion }) => {
    const heat = thermalTension.si({ axialRigidity, temperatureRise, frameExpansion, cordExpansion })
    const tension = pretension - axialRigidity * creepStrain + heat
    return { tension: Math.max(0, tension), state: tension > 0 ? 'taut' : 'slack' }
  },
})
