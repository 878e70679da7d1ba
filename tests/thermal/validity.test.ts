import * as thermal from '../../src/thermal/index.js'
import { testValidity } from '../formula/validity-limits.js'

const plate = {
  ...{ innerRadius: '6 mm', outerRadius: '17.5 mm', plateRadius: '45 mm', thickness: '7 mm', conductivity: '0.2 W/(m K)' },
  ...{ motorFaceCoefficient: '10 W/(m^2 K)', freeFaceCoefficient: '10 W/(m^2 K)' },
}
const thin = { ...plate, innerRadius: '17.05 mm' }
const sink = {
  ...{ width: 0.004, height: 0.04, finLength: 0.012, finThickness: 0.001, fins: 2, conductivity: 167, surfaceTemperature: 343, airTemperature: 311 },
  pressure: 101325,
} // biome-ignore format: numbers
/** The draught at which something of the sink crosses a value. */
function speedAt(over: (found: ReturnType<typeof thermal.plateFinSinkInDraught.si>) => boolean): number {
  let [low, high] = [1e-3, 50]
  const atLow = over(thermal.plateFinSinkInDraught.si({ ...sink, speed: low } as never))
  for (let k = 0; k < 60; k++) {
    const middle = Math.sqrt(low * high)
    if (over(thermal.plateFinSinkInDraught.si({ ...sink, speed: middle } as never)) === atLow) low = middle
    else high = middle
  }
  return low
}
const air = thermal.airProperties.si({ temperature: 327, pressure: 101325 })
const stifled = speedAt(({ airWarmed }) => airWarmed > 0.8)
const turbulent = speedAt(({ spacing, gapSpeed }) => (2 * spacing * gapSpeed) / air.viscosity > 2300)
const draught = (speed: number) => ({
  ...{ width: '4 mm', height: '40 mm', finLength: '12 mm', finThickness: '1 mm', fins: 2, conductivity: '167 W/(m K)' },
  ...{ surfaceTemperature: '343 K', airTemperature: '311 K', speed: `${speed} m/s` },
})
const still = (surface: string, length: number, tilt?: string) => ({
  ...{ surface, length: `${length} m`, surfaceTemperature: '60 degC', airTemperature: '20 degC' },
  ...(tilt === undefined ? {} : { tilt }),
})
/** The length at which the Rayleigh number of still air is some value: it goes with the cube. */
const lengthAt = (surface: string, rayleigh: number) => Math.cbrt(rayleigh / thermal.naturalConvection.si({ surface, length: 1, surfaceTemperature: 333.15, airTemperature: 293.15, pressure: 101325, tilt: 0 } as never).rayleigh) // biome-ignore format: one call
const atRayleigh = (surface: string, from: number, to: number) =>
  [
    [still(surface, 1.001 * lengthAt(surface, from)), still(surface, 0.999 * lengthAt(surface, from))],
    [still(surface, 0.999 * lengthAt(surface, to)), still(surface, 1.001 * lengthAt(surface, to))],
  ] as const
const [[upLow, upBelow], [upHigh, upAbove]] = atRayleigh('plateUp', 1e4, 1e11)
const [[downLow, downBelow], [downHigh, downAbove]] = atRayleigh('plateDown', 1e5, 1e10)
const [, [wallHigh, wallAbove]] = atRayleigh('verticalPlate', 1, 1e12)
const [, [pipeHigh, pipeAbove]] = atRayleigh('horizontalCylinder', 1, 1e12)
const blown = { surface: 'flatPlate', surfaceTemperature: '60 degC', airTemperature: '20 degC', speed: '100 m/s' }
const film = thermal.airProperties.si({ temperature: 313.15, pressure: 101325 })
const fastLength = (1e8 * film.viscosity) / 100
const fin = { thickness: '2 mm', conductivity: '0.2 W/(m K)', coefficient: '19.99 W/(m^2 K)' }
const contact = { ...{ conductivity1: '167 W/(m K)', conductivity2: '167 W/(m K)', roughness: '1 um', slope: 0.1 }, hardness: '1 GPa' }
const point = { measuredSpeed: '300 rad/s', measuredLoss: '3 W' }
const two = { speed1: '100 rad/s', loss1: '1 W', speed2: '200 rad/s' }

testValidity(
  thermal,
  [
    [thermal.noLoadOnePoint, 'a speed between', { ...point, speed: '100.01 rad/s' }, { speed: '99.9 rad/s' }, { speed: '900.1 rad/s' }],
    [thermal.noLoadOnePoint, 'a speed between', { ...point, speed: '899.9 rad/s' }],
    // Loss in proportion to the speed is drag alone, to its square viscous drag alone.
    [thermal.noLoadSplit, 'both parts positive', { ...two, loss2: '2.001 W' }, { loss2: '1.999 W' }, { loss2: '4.001 W' }],
    [thermal.noLoadSplit, 'both parts positive', { ...two, loss2: '3.999 W' }],
    [thermal.magnetDerating, 'magnets below 200', { backEmfConstant: '0.1 V s/rad', magnetTemperature: '200 degC' }, { magnetTemperature: '200.1 degC' }],
    [thermal.rmsTorque, 'cycle at most a tenth', { torques: ['1 N m', '0 N m'], durations: ['4 s', '6 s'], windingTimeConstant: '100 s' }, { windingTimeConstant: '99.9 s' }],
    [thermal.rmsTorque, 'cycle at most a tenth', { torques: ['1 N m'], durations: ['1 h'] }],
    [thermal.airProperties, 'from −20 to 140', { temperature: '-20 degC' }, { temperature: '-20.1 degC' }, { temperature: '140.1 degC' }],
    [thermal.airProperties, 'from −20 to 140', { temperature: '140 degC' }],
    [thermal.forcedConvection, 'plate: Reynolds number up to 1e8', { ...blown, length: `${0.999 * fastLength} m` }, { length: `${1.001 * fastLength} m` }],
    [thermal.nusseltCylinderCrossflow, 'Reynolds times Prandtl', { reynolds: 0.3, prandtl: 0.7 }, { reynolds: 0.28 }, { prandtl: 0.66 }],
    [thermal.nusseltFlatPlate, 'Reynolds number up to 1e8', { reynolds: 1e8, prandtl: 0.7 }, { reynolds: 1.001e8 }],
    [thermal.nusseltFlatPlate, 'Prandtl number from 0.6', { reynolds: 1e4, prandtl: 0.6 }, { prandtl: 0.599 }],
    [thermal.nusseltFlatPlate, 'laminar', { reynolds: 5e5, prandtl: 0.7 }, { reynolds: 5.01e5 }],
    [thermal.nusseltRotatingCylinder, 'rotational', { reynolds: 1e3, prandtl: 0.7 }, { reynolds: 999 }, { reynolds: 100_001 }],
    [thermal.nusseltRotatingCylinder, 'rotational', { reynolds: 1e5, prandtl: 0.7 }],
    [thermal.naturalConvection, 'tilt up to 60', still('tiltedPlate', 0.1, '59.99 deg'), { tilt: '60.1 deg' }],
    [thermal.naturalConvection, 'vertical plate and cylinder', wallHigh, wallAbove],
    [thermal.naturalConvection, 'vertical plate and cylinder', pipeHigh, pipeAbove],
    [thermal.naturalConvection, 'vertical plate and cylinder', still('plateUp', 100)],
    [thermal.naturalConvection, 'vertical plate and cylinder', still('plateDown', 100)],
    [thermal.naturalConvection, 'plate up', upLow, upBelow],
    [thermal.naturalConvection, 'plate up', upHigh, upAbove],
    [thermal.naturalConvection, 'plate up', still('plateDown', 1e-4)],
    [thermal.naturalConvection, 'plate down', downLow, downBelow],
    [thermal.naturalConvection, 'plate down', downHigh, downAbove],
    [thermal.naturalConvection, 'plate down', still('plateUp', 1e-4)],
    [thermal.nusseltHorizontalCylinder, 'Rayleigh', { rayleigh: 1e12, prandtl: 0.7 }, { rayleigh: 1.001e12 }],
    [thermal.nusseltPlateDown, 'Rayleigh', { rayleigh: 1e5 }, { rayleigh: 0.999e5 }, { rayleigh: 1.001e10 }],
    [thermal.nusseltPlateDown, 'Rayleigh', { rayleigh: 1e10 }],
    [thermal.nusseltPlateUp, 'Rayleigh', { rayleigh: 1e4 }, { rayleigh: 0.999e4 }, { rayleigh: 1.001e11 }],
    [thermal.nusseltPlateUp, 'Rayleigh', { rayleigh: 1e11 }],
    [thermal.nusseltVerticalPlate, 'Rayleigh', { rayleigh: 1e12, prandtl: 0.7 }, { rayleigh: 1.001e12 }],
    [thermal.nusseltVerticalPlateLaminar, 'Rayleigh', { rayleigh: 1e9, prandtl: 0.7 }, { rayleigh: 1.001e9 }],
    [thermal.contactConductance, 'pressure below', { ...contact, pressure: '20 MPa' }, { pressure: '20.01 MPa' }],
    [thermal.annularFin, 'Biot', { ...fin, innerRadius: '10 mm', outerRadius: '20 mm' }, { coefficient: '20.01 W/(m^2 K)' }, { thickness: '2.01 mm' }, { conductivity: '0.199 W/(m K)' }],
    [thermal.straightFin, 'Biot', { ...fin, length: '20 mm', width: '30 mm' }, { coefficient: '20.01 W/(m^2 K)' }, { thickness: '2.01 mm' }, { conductivity: '0.199 W/(m K)' }],
    [thermal.discSpreadingEstimate, 'mean within', { sourceRatio: 0.5, thicknessRatio: 0.1, biot: 1 }, { sourceRatio: 0.501 }, { thicknessRatio: 0.099 }],
    [thermal.wallResponse, 'Fourier number', { biot: 1, fourier: 0.2 }, { fourier: 0.199 }],
    [thermal.mountPlate, 'film coefficients', { ...plate, motorFaceCoefficient: '300 W/(m^2 K)', freeFaceCoefficient: '300 W/(m^2 K)' }, { motorFaceCoefficient: '301 W/(m^2 K)' }, { freeFaceCoefficient: '301 W/(m^2 K)' }],
    [thermal.ringOnPlate, 'ring at least', { ...thin, innerRadius: '17.04 mm' }, { innerRadius: '17.06 mm' }, { plateRadius: '46.1 mm' }],
    [thermal.ringPlateProfile, 'ring at least', { ...thin, innerRadius: '17.04 mm', radii: ['10 mm'] }, { innerRadius: '17.06 mm' }],
    [thermal.plateFinSinkInDraught, 'gap wide enough', draught(1.001 * stifled), draught(0.999 * stifled)],
    [thermal.plateFinSinkInDraught, 'Reynolds number of a gap', draught(0.999 * turbulent), draught(1.001 * turbulent)],
  ],
  // A course of temperatures, held with the laws that end there.
  ['thermal.motorWarmUp: mounting face at most 450 K above the air, where the laws end'],
) // biome-ignore format: rows
