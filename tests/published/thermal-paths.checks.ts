import { readFileSync } from 'node:fs'
import type { Property, Source } from '../../src/formula/index.js'
import { bracketRoot } from '../../src/numeric/index.js'
import {
  airProperties,
  annularFin,
  barFin,
  bestFinSpacing,
  discSpreading,
  discSpreadingEstimate,
  finCount,
  halfSpaceSpreading,
  insulationAgeing,
  intermittentDuty,
  intermittentOverload,
  lumpedResponse,
  type MotorMount,
  motor,
  motorMount,
  mountPlate,
  network,
  plateFinSink,
  plateFinSinkInDraught,
  polymerLimit,
  ringSpreading,
  shortTimeOverload,
  straightFin,
  type Temperatures,
  temperatureMargin,
  thermalDiffusivity,
  thickBodyFlux,
  thickBodyStep,
  timeAtTorque,
  timeConstants,
  timeToLimit,
  wallResponse,
} from '../../src/thermal/index.js'
import { published, publishedValue } from './harness.js'

const book = (where: string): Source => ({ level: 'published', where })
const unverified = (where: string): Source => ({ level: 'unverified', where })
const computed = (where: string): Source => ({ level: 'computed', where })
const arithmetic = (where: string): Source => ({ level: 'arithmetic', where })
const library = (where: string): Source => ({ level: 'referenceLibrary', where })

interface Oracle {
  readonly fins: readonly { r1: number; r2: number; k: number; t: number; h: number; conductance: number }[]
  readonly cycle: { readonly peaks: readonly number[]; readonly timeConstants: readonly number[] }
}
const oracle: Oracle = JSON.parse(readFileSync(new URL('../oracles/thermal-networks.json', import.meta.url), 'utf8'))
const spreading: { discs: readonly { sourceRatio: number; thicknessRatio: number; biot: number; mean: number; centre: number }[] } =
  JSON.parse(readFileSync(new URL('../oracles/thermal-spreading.json', import.meta.url), 'utf8'))
const plates: { plates: { resistance: number }[] } = JSON.parse(
  readFileSync(new URL('../oracles/thermal-mount-plate.json', import.meta.url), 'utf8'),
)

const fourNodes = (winding: '6 W' | '20 W' | '0 W') =>
  network(
    {
      W: { capacity: '23.1 J/K', loss: winding },
      S: { capacity: '105 J/K', loss: '0.5 W' },
      M: { capacity: '78 J/K' },
      B: { capacity: '13.5 J/K', loss: '0.9 W' },
      air: { fixed: '25 degC' },
    },
    [
      { from: 'W', to: 'S', conductance: '1.2 W/K' },
      { from: 'S', to: 'M', conductance: '0.25 W/K' },
      { from: 'M', to: 'B', conductance: '0.02 W/K' },
      { from: 'S', to: 'air', conductance: '0.12 W/K' },
      { from: 'M', to: 'air', conductance: '0.05 W/K' },
      { from: 'B', to: 'air', conductance: '0.04 W/K' },
    ],
  )

const mounts: {
  steady: readonly { torque: number; celsius: Readonly<Record<string, number>> }[]
  courses: readonly { torque: number; limit: number; passed: number }[]
} = JSON.parse(readFileSync(new URL('../oracles/thermal-mount.json', import.meta.url), 'utf8'))
const FULL = library('scipy 1.17: plate in finite volumes, films at face means, radiation, hot copper (tests/oracles/thermal-mount.py)')
/** The mount of that script; built on the first check that runs. */
let built: MotorMount | undefined
const wholeMount = () => {
  built ??= motorMount(motor({ speedConstant: '110 rpm/V', speedConstantBasis: 'spunPeakLineToLine', terminalResistance: '0.18 ohm' }), {
    body: {
      canDiameter: '52 mm',
      canLength: '22 mm',
      canEmissivity: 0.6,
      ringInnerDiameter: '12 mm',
      ringOuterDiameter: '35 mm',
      mass: '210 g',
      windingMass: '55 g',
      statorMass: '70 g',
      canMass: '65 g',
      windingToStator: '0.8 K/W',
      statorToCan: '6 K/W',
      statorToBase: '0.3 K/W',
    },
    plate: {
      width: [45 * Math.sqrt(Math.PI), 'mm'],
      height: [45 * Math.sqrt(Math.PI), 'mm'],
      thickness: '7 mm',
      conductivity: '0.2 W/(m K)',
      density: '1070 kg/m^3',
      specificHeat: '1300 J/(kg K)',
    },
    surroundings: { air: '38 degC' },
  })
  return built
}

const COURSE = [
  [31.179619, 27.166127, 25.192944, 28.516015],
  [39.960464, 35.515992, 28.996526, 36.526222],
  [61.745876, 56.877397, 49.630868, 47.562647],
]

const sinkOf15 = {
  width: '120 mm',
  height: '180 mm',
  finLength: '24 mm',
  finThickness: '1 mm',
  fins: 15,
  conductivity: '237 W/(m K)',
  surfaceTemperature: '80 degC',
  airTemperature: '30 degC',
  pressure: '100093 Pa',
} as const

const channel: { rows: { xStar: number; nusselt: number }[]; sinks: { fins: number; conductance: number }[] } = JSON.parse(
  readFileSync(new URL('../oracles/thermal-channel.json', import.meta.url), 'utf8'),
)
/** One gap of 2 mm, 40 mm long. */
const gapAt = (speed: number) =>
  plateFinSinkInDraught.si({
    width: 0.004,
    height: 0.04,
    finLength: 0.012,
    finThickness: 0.001,
    fins: 2,
    conductivity: 167,
    speed,
    surfaceTemperature: 343,
    airTemperature: 311,
    pressure: 101325,
  })

export const checks = [
  // fins
  ...published(straightFin, {
    what: 'circuit board, fin of 20 mm counted to its tip',
    given: { length: '19 mm', width: '100 mm', thickness: '2 mm', conductivity: '386 W/(m K)', coefficient: '45 W/(m^2 K)' },
    gives: { efficiency: '0.985 1' },
    source: book('Çengel, Heat and Mass Transfer, ch. 3, finned circuit board, worked solution'),
  }),
  ...published(barFin, {
    what: 'fin parameter of one',
    given: {
      length: '2.66227766 mm',
      perimeter: '20 mm',
      section: '10 mm^2',
      conductivity: '0.2 W/(m K)',
      coefficient: '10 W/(m^2 K)',
    },
    gives: { efficiency: '0.761594 1' },
    source: unverified('tanh 1, Abramowitz & Stegun, table 4.15'),
  }),
  ...published(
    annularFin,
    {
      what: 'finned cylinder, chart efficiency',
      given: { innerRadius: '25 mm', outerRadius: '48 mm', thickness: '6 mm', conductivity: '186 W/(m K)', coefficient: '50 W/(m^2 K)' },
      gives: { efficiency: '0.95 1' },
      within: '3.1 %',
      source: unverified('Incropera, annular fin example, efficiency read from a chart'),
    },
    ...oracle.fins.map(({ r1, r2, k, t, h, conductance }) => ({
      what: `root ${r1} m, rim ${r2} m, k ${k}`,
      given: {
        innerRadius: [r1, 'm'] as const,
        outerRadius: [r2, 'm'] as const,
        thickness: [t, 'm'] as const,
        conductivity: [k, 'W/(m K)'] as const,
        coefficient: [h, 'W/(m^2 K)'] as const,
      },
      gives: { conductance: [conductance, 'W/K'] as const },
      within: '1e-9 %',
      source: library('scipy 1.17, scaled Bessel functions ive and kve (tests/oracles/thermal-networks.py)'),
    })),
  ),
  ...published(bestFinSpacing, {
    what: 'sink of 180 mm, 80/30 degC',
    given: { height: '180 mm', surfaceTemperature: '80 degC', airTemperature: '30 degC', pressure: '100093 Pa' },
    gives: { spacing: '7.5 mm', coefficient: '4.83 W/(m^2 K)', rayleigh: '1.8e7 1' },
    within: '0.15 %',
    source: book(
      'Çengel, ch. 9, sink of 12 by 18 cm, worked solution (pressure set so that the Rayleigh number is the print\u2019s 1.8e7)',
    ),
  }),
  ...published(finCount, {
    what: '120 mm, 7.5 mm apart, 1 mm thick',
    given: { width: '120 mm', spacing: '7.5 mm', thickness: '1 mm' },
    gives: '15 1',
    source: arithmetic('127.5 over 8.5, by hand (editions print 14 and 15)'),
  }),
  ...published(
    plateFinSink,
    {
      what: 'the same sink, 15 fins',
      given: sinkOf15,
      gives: { spacing: '7.5 mm', coefficient: '4.83 W/(m^2 K)', efficiency: '0.992 1' },
      within: '0.15 %',
      source: book(
        'Çengel, ch. 9, sink of 12 by 18 cm, worked solution (pressure set so that the Rayleigh number is the print\u2019s 1.8e7)',
      ),
    },
    {
      what: 'its 15 fins and 14 gaps',
      given: sinkOf15,
      gives: { finArea: '0.1323 m^2', conductance: '0.7252 W/K', heat: '36.26 W' },
      within: '0.2 %',
      source: arithmetic('4.83 · (0.992 · 2 · 15 · 0.18 · 0.0245 + 14 · 0.0075 · 0.18), by hand from the print\u2019s coefficient'),
    },
  ),
  ...channel.rows
    .filter(({ xStar }) => xStar >= 0.001 && xStar <= 0.1)
    .map(({ xStar, nusselt }) =>
      publishedValue(
        'thermal.plateFinSinkInDraught',
        `mean Nusselt number of the gap at x* of ${xStar}`,
        () => {
          // A gap of 2 mm in which the air is as fast as that x* takes: 40 mm long at most.
          const air = airProperties.si({ temperature: 327, pressure: 101325 })
          const speed = bracketRoot(
            (stream) => Math.log((0.04 * air.viscosity) / (air.prandtl * 1.6e-5 * gapAt(stream).gapSpeed) / xStar),
            1e-3,
            1e4,
          )
          return (gapAt(speed).coefficient * 0.004) / air.conductivity
        },
        nusselt,
        computed('entrance flow between two plates, boundary-layer equations marched (tests/oracles/thermal-channel.py)'),
        '7 %',
      ),
    ),
  ...channel.sinks.map(({ fins, conductance }) =>
    publishedValue(
      'thermal.plateFinSinkInDraught',
      `sink of 42 mm in 2 m/s, ${fins} fins`,
      () =>
        plateFinSinkInDraught({
          width: '42 mm',
          height: '42 mm',
          finLength: '12 mm',
          finThickness: '1 mm',
          fins,
          conductivity: '167 W/(m K)',
          speed: '2 m/s',
          surfaceTemperature: '343 K',
          airTemperature: '311 K',
        }).conductance,
      `${conductance} W/K`,
      computed('the marched entrance flow with its own pressure drop (tests/oracles/thermal-channel.py)'),
      '9 %',
    ),
  ),
  // spreading
  ...published(ringSpreading, {
    what: 'ring 6 to 17.5 mm on 2 mm of aluminium',
    given: {
      innerRadius: '6 mm',
      outerRadius: '17.5 mm',
      plateRadius: '45.14 mm',
      thickness: '2 mm',
      conductivity: '167 W/(m K)',
      coefficient: '10 W/(m^2 K)',
    },
    gives: { total: '15.8572 K/W', oneDimensional: '15.6235 K/W' },
    within: '0.0002 K/W',
    source: computed('independent finite-volume solution of the same plate'),
  }),
  ...published(
    discSpreading,
    {
      what: 'disc of radius 1 on a square tube of half-width 2, as the round one of equal area',
      given: { sourceRatio: 0.443113, thicknessRatio: 10, biot: 1 },
      gives: { mean: '0.2143 1' },
      within: '1 %',
      source: book('Rohsenow, Hartnett & Cho, Handbook of Heat Transfer, 3rd ed., circle on a square tube: 0.1209/(k a)'),
    },
    ...spreading.discs.map(({ sourceRatio, thicknessRatio, biot, mean, centre }) => ({
      what: `source ${sourceRatio}, thickness ${thicknessRatio}, Biot ${biot}`,
      given: { sourceRatio, thicknessRatio, biot },
      gives: { mean, centre },
      within: '0.1 %',
      source: library('scipy 1.17, 60000 terms (tests/oracles/thermal-spreading.py)'),
    })),
  ),
  ...published(discSpreadingEstimate, {
    what: 'source 0.1, thickness 0.2, Biot 1',
    given: { sourceRatio: 0.1, thicknessRatio: 0.2, biot: 1 },
    gives: { mean: '0.4476 1', peak: '0.5324 1' },
    source: arithmetic('closed form of Lee, Song, Au & Moran 1995, by hand'),
  }),
  ...published(halfSpaceSpreading, {
    what: 'unit disc',
    given: { radius: '1 m', conductivity: '1 W/(m K)' },
    gives: { isothermal: '0.25 K/W', isofluxMean: '0.270190 K/W', isofluxCentre: '0.318310 K/W' },
    source: unverified('Rohsenow, Hartnett & Cho, Handbook of Heat Transfer, 3rd ed.: 1/4, 8/(3π²), 1/π'),
  }),
  ...published(mountPlate, {
    what: 'printed plate of 6 mm under a ring, 12.5 W/(m² K) on both faces',
    given: {
      innerRadius: '6 mm',
      outerRadius: '17.5 mm',
      plateRadius: '45 mm',
      thickness: '6 mm',
      conductivity: '0.2 W/(m K)',
      motorFaceCoefficient: '12.5 W/(m^2 K)',
      freeFaceCoefficient: '12.5 W/(m^2 K)',
    },
    gives: { resistance: [(plates.plates[0] as { resistance: number }).resistance, 'K/W'] as const },
    within: '0.6 %',
    source: computed('independent finite volumes on uniform meshes, extrapolated (tests/oracles/thermal-mount-plate.py)'),
  }),
  // solids in time
  ...published(thermalDiffusivity, {
    what: 'printed polymer',
    given: { conductivity: '0.2 W/(m K)', density: '1250 kg/m^3', specificHeat: '1300 J/(kg K)' },
    gives: '0.1230769 mm^2/s',
    source: arithmetic('definition, by hand'),
  }),
  ...published(
    thickBodyStep,
    {
      what: 'frost depth after 60 days',
      given: { initial: '20 degC', surface: '-15 degC', depth: '0.68 m', time: '60 day', diffusivity: '0.138 mm^2/s' },
      gives: '0 degC',
      within: '0.1',
      source: unverified('Incropera, example 5.6: water main at 0.68 m'),
    },
    {
      what: 'frost depth after 60 days, unrounded',
      given: { initial: '20 degC', surface: '-15 degC', depth: '0.676962 m', time: '60 day', diffusivity: '0.138 mm^2/s' },
      gives: '0 degC',
      within: '3e-5',
      source: library('scipy 1.17: 2 √(α t) erfcinv(20/35) = 0.676962 m'),
    },
  ),
  ...published(thickBodyFlux, {
    what: '1 kW/m² into polymer for 100 s',
    given: { flux: '1 kW/m^2', time: '100 s', conductivity: '0.2 W/(m K)', diffusivity: '0.1230769 mm^2/s' },
    gives: '19.793 K',
    source: arithmetic('2 q/k √(α t/π), by hand'),
  }),
  ...published(
    lumpedResponse,
    {
      what: 'thermocouple bead, 25 to 199 in 200 degC',
      given: {
        initial: '25 degC',
        final: '200 degC',
        heatCapacity: '6.26463e-4 J/K',
        thermalResistance: '1596.5 K/W',
        time: '5.2 s',
      },
      gives: { temperature: '199 degC' },
      within: '0.05',
      source: unverified('Incropera, example 5.1: bead of 0.706 mm, 5.2 s'),
    },
    {
      what: 'junction of 1 mm, 99 % of the change',
      given: {
        initial: '0 degC',
        final: '100 degC',
        // 8500 kg/m³ · 320 J/(kg K) · π d³/6, and 1/(210 W/(m² K) · π d²) for d = 1 mm.
        heatCapacity: '1.424189e-3 J/K',
        thermalResistance: '1515.7606 K/W',
        time: '9.9413 s',
      },
      gives: { temperature: '99 degC', timeConstant: '2.15873 s', done: '0.99 1' },
      within: '0.001 %',
      source: arithmetic('8500 · 320 · 0.001/(6 · 210) · ln 100 = 9.9413 s, by hand; Çengel, example 4-1, prints 10 s'),
    },
  ),
  ...published(
    wallResponse,
    {
      what: 'Biot 0.1',
      given: { biot: 0.1, fourier: 1 },
      gives: { eigenvalue: '0.3111 1', coefficient: '1.0161 1' },
      source: book('Çengel, table 4-2'),
    },
    {
      what: 'Biot 1',
      given: { biot: 1, fourier: 1 },
      gives: { eigenvalue: '0.8603 1', coefficient: '1.1191 1' },
      source: book('Çengel, table 4-2'),
    },
    {
      what: 'Biot 10',
      given: { biot: 10, fourier: 1 },
      gives: { eigenvalue: '1.4289 1', coefficient: '1.2620 1' },
      source: book('Çengel, table 4-2'),
    },
    {
      what: 'steel pipe wall after 8 minutes (exact constants)',
      given: { biot: 0.312989, fourier: 5.64 },
      gives: { middle: '0.2123 1' },
      within: '0.2 %',
      source: unverified('Incropera, example 5.5; 42.9 degC with rounded constants, 43.017 degC exactly: 16.983/80'),
    },
  ),
  ...published(shortTimeOverload, {
    what: 'one time constant',
    given: { loadTime: '10 min', timeConstant: '10 min' },
    gives: { loss: '1.581977 1', torque: '1.257767 1' },
    source: arithmetic('1/(1 − 1/e), by hand'),
  }),
  ...published(intermittentOverload, {
    what: 'half of two time constants',
    given: { loadTime: '10 min', period: '20 min', timeConstant: '10 min' },
    gives: { loss: '1.367879 1' },
    source: arithmetic('1 + 1/e, by hand'),
  }),
  // limits
  ...published(polymerLimit, {
    what: 'glass transition at 100 degC, deflection at 96 degC',
    given: { glassTransition: '100 degC', heatDeflection180: '96 degC' },
    gives: { temperature: '85 degC', governs: 'glassTransition' },
    source: arithmetic('100 less 15, by hand'),
  }),
  ...published(temperatureMargin, {
    what: '70 of 85 degC at 40 degC ambient',
    given: { temperature: '70 degC', limit: '85 degC', ambient: '40 degC' },
    gives: { margin: '15 K', utilisation: '0.6667 1', state: 'ok' },
    source: arithmetic('30/45, by hand'),
  }),
  ...published(insulationAgeing, {
    what: '25 K above the class',
    given: { temperature: '155 degC', classTemperature: '130 degC' },
    gives: '5.657 1',
    source: book('ten-kelvin rule beside IEC 60085: 2^2.5'),
  }),
  // solvers
  ...(['W', 'S', 'M', 'B'] as const).map((name, i) =>
    publishedValue(
      'thermal.intermittentDuty',
      `peak of ${name} in the settled cycle, 20 W for 3 of 10 min`,
      () => {
        const { peaks } = intermittentDuty({ load: fourNodes('20 W'), rest: fourNodes('0 W'), dutyFactor: 0.3 })
        return peaks[name]?.temperature.in('degC') as number
      },
      oracle.cycle.peaks[i] as number,
      library('matrix exponentials by scipy 1.17 (tests/oracles/thermal-networks.py)'),
      '0.002',
    ),
  ),
  ...Object.entries({ W: '69.519651 degC', S: '64.519651 degC', M: '57.489083 degC', B: '50.829694 degC' }).map(([name, expected]) =>
    publishedValue(
      'thermal.network',
      `steady temperature of ${name}, four nodes`,
      () => fourNodes('6 W').steady().temperatures[name] as NonNullable<Temperatures[string]>,
      expected,
      library('linear equations by scipy'),
    ),
  ),
  ...([60, 300, 1800] as const).flatMap((seconds, row) =>
    (['W', 'S', 'M', 'B'] as const).map((name, i) =>
      publishedValue(
        'thermal.network',
        `temperature of ${name} after ${seconds} s, four nodes`,
        () => fourNodes('6 W').transient({ duration: '1800 s' }).at([seconds, 's'])[name]?.in('degC') as number,
        COURSE[row]?.[i] as number,
        library('matrix exponential by scipy'),
        '0.0002',
      ),
    ),
  ),
  ...[1137.7524, 230.111, 162.4561, 15.6086].map((seconds, i) =>
    publishedValue(
      'thermal.timeConstants',
      `time constant ${i + 1} of four nodes`,
      () => timeConstants(fourNodes('6 W'))[i]?.si as number,
      seconds,
      library('eigenvalues by scipy 1.17 (tests/oracles/thermal-networks.py)'),
    ),
  ),
  ...mounts.steady.flatMap(({ torque, celsius }) =>
    Object.entries(celsius).map(([name, wanted]) =>
      publishedValue(
        'thermal.motorMount',
        `rise of ${name} at ${torque} N m over air of 38 degC`,
        () => (wholeMount().si.network(torque, 0).steady().temperatures[name]?.in('degC') as number) - 38,
        wanted - 38,
        FULL,
        '0.5 %',
      ),
    ),
  ),
  ...mounts.courses.map(({ torque, limit, passed }) =>
    publishedValue(
      'thermal.timeAtTorque',
      `seconds until the mount reaches ${limit} degC at ${torque} N m`,
      () => timeAtTorque(wholeMount(), { torque: [torque, 'N m'] }, [{ part: 'plate', node: 'mount', limit: [limit, 'degC'] }]).time.si,
      passed,
      FULL,
      '1 %',
    ),
  ),
  ...(
    [
      ['typical', (time) => time.si, 554.5177],
      ['low end of its band', (time) => time.low, 465.1309],
      ['high end of its band', (time) => time.high, 811.3813],
    ] as readonly (readonly [string, (time: Property<'time'>) => number, number])[]
  ).map(([what, of, wanted]) =>
    publishedValue(
      'thermal.timeToLimit',
      `seconds to a rise of 30 K, 100 J/K, 10 W, 0.25 W/K good to a factor of exp 0.2: ${what}`,
      () =>
        of(
          timeToLimit(
            network({ a: { capacity: '100 J/K', loss: '10 W' }, air: { fixed: '25 degC' } }, [
              { from: 'a', to: 'air', conductance: '0.25 W/K', scatter: 0.2 },
            ]),
            { a: '55 degC' },
          ).time,
        ),
      wanted,
      arithmetic('-C/G ln(1 - G rise/P) at each conductance, by hand'),
      '0.002 %',
    ),
  ),
  publishedValue(
    'thermal.motor',
    'torque constant of Kv 100 rpm/V, peak phase',
    () =>
      motor({ speedConstant: '100 rpm/V', speedConstantBasis: 'spunPeakLineToLine', terminalResistance: '0.2 ohm' }).torqueConstants
        .peakPhase,
    '0.0827 N m/A',
    book('motor-constant article: Kt = 8.27/Kv'),
  ),
]
