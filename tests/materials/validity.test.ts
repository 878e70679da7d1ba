import * as materials from '../../src/materials/index.js'
import { testValidity } from '../formula/validity-limits.js'

const creep = { modulus: '2 GPa', creepCoefficient: 0.3, creepExponent: 0.3 }
const shift = { reference: '23 degC', activationEnergy: '150 kJ/mol', glassTransition: '100 degC' }
const bar = { tensileStrength: '800 MPa', finish: 'machined', diameter: '20 mm' }

testValidity(materials, [
  [materials.durationFactor, 'a duration of at most ten years', { duration: '3652.5 day', kept1000Hours: 0.8, kept1Year: 0.7 }, { duration: '3652.6 day' }, { shift: 0.999 }],
  [materials.fatigueFactor, 'at most ten million cycles', { cycles: 1e7, ratioAtMillion: 0.3 }, { cycles: 1e7 + 1 }],
  [materials.amorphousStrengthFactor, 'glass transition above 40', { temperature: '23 degC', glassTransition: '40 degC' }, { glassTransition: '39.9 degC' }],
  [materials.springWire, 'a wire of 0.3 to 10 mm', { wire: 'musicWire', wireDiameter: '0.3 mm' }, { wireDiameter: '0.299 mm' }],
  [materials.springWire, 'a wire of 0.3 to 10 mm', { wire: 'musicWire', wireDiameter: '10 mm' }, { wireDiameter: '10.001 mm' }],
  [materials.springWire, 'stainless wire up to 2.5 mm', { wire: 'stainless', wireDiameter: '2.5 mm' }, { wireDiameter: '2.501 mm' }],
  [materials.springWire, 'stainless wire up to 2.5 mm', { wire: 'musicWire', wireDiameter: '6 mm' }],
  [materials.moistureFactor, 'a content at most that of saturation', { moisture: 0.02, conditioned: 0.01, saturated: 0.02, conditionedShare: 0.7, saturatedShare: 0.5 }, { moisture: 0.02001 }],
  [materials.cellularBounds, 'a relative density of at most 0.3', { relativeDensity: 0.3, modulus: '2 GPa', strength: '40 MPa' }, { relativeDensity: 0.301 }],
  [materials.halpinTsai, 'a share of filler', { volumeShare: 0.5, fillerRatio: 20, shape: 2 }, { volumeShare: 0.501 }],
  [materials.findleyStrain, 'stress at most half of the strength', { ...creep, stress: '10 MPa', time: '1 h', strength: '20 MPa' }, { stress: '10.01 MPa' }, { stress: '-10.01 MPa' }],
  [materials.findleyStrain, 'stress at most half of the strength', { ...creep, stress: '19 MPa', time: '1 h' }],
  // Two thousandths at once and 0.3 times as much after an hour: 15.38 MPa make one per cent.
  [materials.findleyStrain, 'a strain of at most 1 %', { ...creep, stress: '15.38 MPa', time: '1 h' }, { stress: '15.39 MPa' }, { stress: '-15.39 MPa' }],
  [materials.findleyTimeToStrain, 'stress at most half', { ...creep, strain: 0.0065, stress: '10 MPa', strength: '20 MPa' }, { strength: '19.9 MPa' }],
  // (t/1 h)^0.3 = (strain · modulus/stress − 1)/0.3 with t = 87 660 h.
  [materials.findleyTimeToStrain, 'at most ten years', { ...creep, stress: '10 MPa', strain: 0.005 * (1 + 0.3 * 87_659 ** 0.3) }, { strain: 0.005 * (1 + 0.3 * 87_661 ** 0.3) }],
  [materials.standardSolidRetardationTime, 'modulus at once', { relaxationTime: '1 h', instantModulus: '2 GPa', longTermModulus: '2 GPa' }, { longTermModulus: '2.001 GPa' }],
  [materials.arrheniusShift, 'both temperatures', { ...shift, temperature: '100 degC' }, { temperature: '100.1 degC' }, { reference: '100.1 degC' }],
  [materials.arrheniusShift, 'both temperatures', { ...shift, glassTransition: undefined, temperature: '150 degC' }],
  [materials.wlfShift, 'temperature at or above', { temperature: '60 degC', reference: '60 degC' }, { temperature: '59.9 degC' }],
  [materials.wlfShift, 'at most 100 K above', { temperature: '160 degC', reference: '60 degC' }, { temperature: '160.1 degC' }],
  [materials.timeTemperatureShift, 'temperature and reference on one side', { ...shift, temperature: '100 degC' }, { temperature: '100.1 degC' }],
  [materials.timeTemperatureShift, 'at most 100 K above', { ...shift, temperature: '200 degC' }, { temperature: '200.1 degC' }],
  [materials.equivalentTimeOfHistory, 'every temperature', { ...shift, durations: ['1 h', '1 h'], temperatures: ['23 degC', '100 degC'] }, { temperatures: ['100.1 degC', '23 degC'] }, { temperatures: ['23 degC', '100.1 degC'] }],
  [materials.equivalentTimeOfHistory, 'every temperature', { ...shift, glassTransition: undefined, durations: ['1 h'], temperatures: ['150 degC'] }],
  [materials.printLife, 'at most ten million cycles', { largest: '12.1 MPa', strength: '40 MPa', ratioAtMillion: 0.3 }, { largest: '8 MPa' }],
  [materials.partEnduranceLimit, 'bars of at most 254 mm', { ...bar, diameter: '254 mm' }, { diameter: '254.1 mm' }],
  [materials.partEnduranceLimit, 'at most 540', { ...bar, temperature: '540 degC' }, { temperature: '540.1 degC' }],
  [materials.partEnduranceLimit, 'a surface factor of at most 1', { ...bar, tensileStrength: '800 MPa' }, { tensileStrength: '150 MPa' }],
  [materials.steelLife, 'a thousand cycles or more', { reversed: '719.9 MPa', tensileStrength: '800 MPa', enduranceLimit: '400 MPa' }, { reversed: '721 MPa' }],
  [materials.bearingDuty, 'length 0.5 to 2 diameters', { load: '10 N', diameter: '10 mm', length: '5 mm', speed: '10 rad/s', friction: 0.1, limit: '0.1 MPa m/s' }, { length: '4.99 mm' }, { length: '20.01 mm' }],
  [materials.bearingDuty, 'length 0.5 to 2 diameters', { load: '10 N', diameter: '10 mm', length: '20 mm', speed: '10 rad/s', friction: 0.1, limit: '0.1 MPa m/s' }],
  [materials.toleranceFactor, 'at least five coupons', { sampleSize: 5 }, { sampleSize: 4 }],
]) // biome-ignore format: rows
