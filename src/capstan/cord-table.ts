import { property, type Source } from '../formula/index.js'
import { nearNames, refuse } from '../units/index.js'

const sheet = (where: string): Source => ({ level: 'published', where })
const unverified = (where: string): Source => ({ level: 'unverified', where })

const fibreMaker = /* @__PURE__ */ sheet("a UHMWPE fibre maker's fact sheet of 2010 (data of the seller, read on its site)")
const aramidTable = /* @__PURE__ */ sheet(
  "an aramid maker's comparison table of fibres (data of a seller, read on its site; cN/dtex, converted with the density)",
)
const mtu = /* @__PURE__ */ sheet(
  'Michigan Technological University, course MY4150, table of properties of selected fibres (gives no sources of its own)',
)

const fibre = (
  density: `${number} g/cm^3`,
  strength: readonly [number, number, number],
  modulus: readonly [number, number, number],
  source: Source,
  at: string,
) => ({
  /** Density of the filament. */
  density: property('density', { typical: density, low: density, high: density, source, conditions: at }),
  /** Tensile strength of the filament; a braid keeps half to four fifths of it. */
  strength: property('stress', {
    typical: [strength[1] * 1000, 'MPa'],
    low: [strength[0] * 1000, 'MPa'],
    high: [strength[2] * 1000, 'MPa'],
    source,
    conditions: `filament, ${at}`,
  }),
  /** Tensile modulus of the filament. */
  modulus: property('modulus', {
    typical: [modulus[1], 'GPa'],
    low: [modulus[0], 'GPa'],
    high: [modulus[2], 'GPa'],
    source,
    conditions: `filament, ${at}`,
  }),
})

/** Temperature above which a cord under tension should not be held, and where the fibre melts or chars. */
const heat = (service: readonly [number, number, number], end: readonly [number, number, number], what: string, source: Source) => ({
  serviceTemperature: property('serviceTemperature', {
    low: [service[0], 'degC'],
    typical: [service[1], 'degC'],
    high: [service[2], 'degC'],
    source: unverified('fibre makers: advice on continuous use; stiffness and creep fade earlier'),
    conditions: 'continuous, under tension',
  }),
  endTemperature: property('meltingTemperature', {
    low: [end[0], 'degC'],
    typical: [end[1], 'degC'],
    high: [end[2], 'degC'],
    source,
    conditions: what,
  }),
})

/** Expansion along the fibre, in millionths per kelvin: it shortens when warm. */
const expansion = (low: number, typical: number, high: number, source: Source) =>
  property('thermalExpansion', {
    low: [low, 'ppm/K'],
    typical: [typical, 'ppm/K'],
    high: [high, 'ppm/K'],
    source,
    conditions: 'filament along itself, near 20 °C',
  })

/** Strain gained per tenfold time by the fibres that creep so. */
const perDecade = () =>
  property('strain', {
    low: [0.01, '%'],
    typical: [0.02, '%'],
    high: [0.03, '%'],
    source: unverified('fibre makers: logarithmic creep of para-aramid and LCP'),
    conditions: 'at a third to half of the breaking load, bedded in',
  })

const friction = (low: number, typical: number, high: number, on: string) =>
  property('ratio', { typical, low, high, source: unverified('wide range of cord-on-drum figures; measure yours'), conditions: on })

const mtuExpansion = /* @__PURE__ */ sheet(
  'Michigan Technological University, course MY4150, table of properties of selected fibres (-12e-6/K; range ours)',
)
const aramidExpansion = /* @__PURE__ */ sheet(
  'National Academies, NAP 1824, table 3-1 (-2.0e-6/K); Michigan Technological University, course MY4150, table of selected fibres (-4e-6/K)',
)

const polyethylene = () =>
  ({
    ...heat(
      [50, 60, 70],
      [144, 148, 152],
      'melts',
      sheet(
        'a general online encyclopedia (Polish): melts at 144-152 °C; the Michigan Technological University fibre table gives 150 °C as its limit',
      ),
    ),
    creep: 'activated',
    creepPerDecade: undefined,
    expansion: expansion(-14, -12, -10, mtuExpansion),
    friction: friction(0.08, 0.12, 0.2, 'on printed polymer'),
  }) as const

const paraAramid = () =>
  ({
    ...heat([140, 160, 180], [425, 450, 500], 'chars, does not melt', unverified('aramid fibre makers')),
    creep: 'logarithmic',
    creepPerDecade: perDecade(),
    expansion: expansion(-4, -3, -2, aramidExpansion),
    friction: friction(0.12, 0.18, 0.25, 'on printed polymer or metal'),
  }) as const

let table: ReturnType<typeof build> | undefined

function build() {
  return {
    'UHMWPE high grade': {
      ...fibre('0.975 g/cm^3', [3.3, 3.6, 3.9], [109, 120, 132], fibreMaker, '20 °C'),
      ...polyethylene(),
    },
    'UHMWPE standard': {
      ...fibre('0.975 g/cm^3', [2.4, 2.8, 3.3], [65, 85, 100], fibreMaker, '20 °C'),
      ...polyethylene(),
    },
    aramid: {
      ...fibre(
        '1.44 g/cm^3',
        [2.9, 3.0, 3.6],
        [70, 72, 83],
        sheet("an aramid maker's comparison table (data of a seller); upper end National Academies, NAP 1824, table 3-1"),
        '20 °C, regular',
      ),
      ...paraAramid(),
    },
    'aramid high modulus': {
      ...fibre(
        '1.45 g/cm^3',
        [3.0, 3.05, 3.6],
        [104, 110, 131],
        sheet("an aramid maker's comparison table (data of a seller, 104 GPa); National Academies, NAP 1824, table 3-1 (124-131 GPa)"),
        '20 °C',
      ),
      ...paraAramid(),
    },
    LCP: {
      ...fibre('1.41 g/cm^3', [2.6, 3.24, 3.3], [74, 74.6, 106], aramidTable, '20 °C'),
      ...heat([100, 130, 150], [300, 320, 340], 'melts', unverified('fibre maker of polyarylate LCP')),
      creep: 'logarithmic',
      creepPerDecade: perDecade(),
      expansion: expansion(-6, -4.8, -3, unverified('fibre maker of polyarylate LCP')),
      friction: friction(0.1, 0.15, 0.2, 'on printed polymer'),
    },
    PBO: {
      ...fibre('1.54 g/cm^3', [5.2, 5.8, 5.8], [180, 180, 270], mtu, '20 °C'),
      ...heat([150, 200, 250], [600, 650, 650], 'chars, does not melt', unverified('fibre maker of PBO')),
      creep: 'logarithmic',
      creepPerDecade: perDecade(),
      expansion: expansion(-7, -6, -4, unverified('fibre maker of PBO')),
      friction: friction(0.1, 0.15, 0.25, 'on printed polymer'),
    },
  } as const
}

/** Names of the fibres in the table. */
export type FibreName = 'UHMWPE high grade' | 'UHMWPE standard' | 'aramid' | 'aramid high modulus' | 'LCP' | 'PBO'

/**
 * Filament properties with range and source, and the creep family of a cord fibre: `activated` (temperature-driven, its rate must be measured)
 * or `logarithmic` (`creepPerDecade`). Throws an `InputError` that lists near names.
 */
export function cordFibre(name: FibreName) {
  table ??= build()
  const found = Object.hasOwn(table, name) ? table[name] : undefined
  if (found === undefined) {
    const near = nearNames(String(name), Object.keys(table))
    refuse('capstan.cordFibre', 'name', name, `must be one of ${(near.length > 0 ? near : Object.keys(table)).join(', ')}`)
  }
  return found
}

/** All fibre names of the table. */
export function fibreNames(): FibreName[] {
  table ??= build()
  return Object.keys(table) as FibreName[]
}
