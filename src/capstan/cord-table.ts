import { property, type Source } from '../formula/index.js'
import { InputError, nearNames, show } from '../units/index.js'

const sheet = (where: string): Source => ({ level: 'published', where })
const memory = (where: string): Source => ({ level: 'memory', where })

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
    source: memory('fibre makers: advice on continuous use; stiffness and creep fade earlier'),
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

const friction = (low: number, typical: number, high: number, on: string) =>
  property('ratio', { typical, low, high, source: memory('wide range of cord-on-drum figures; measure yours'), conditions: on })

let table: ReturnType<typeof build> | undefined

function build() {
  return {
    'UHMWPE high grade': {
      ...fibre('0.975 g/cm^3', [3.3, 3.6, 3.9], [109, 120, 132], fibreMaker, '20 °C'),
      ...heat(
        [50, 60, 70],
        [144, 148, 152],
        'melts',
        sheet(
          'a general online encyclopedia (Polish): melts at 144-152 °C; the Michigan Technological University fibre table gives 150 °C as its limit',
        ),
      ),
      creep: 'activated',
      friction: friction(0.08, 0.12, 0.2, 'on printed polymer'),
    },
    'UHMWPE standard': {
      ...fibre('0.975 g/cm^3', [2.4, 2.8, 3.3], [65, 85, 100], fibreMaker, '20 °C'),
      ...heat(
        [50, 60, 70],
        [144, 148, 152],
        'melts',
        sheet(
          'a general online encyclopedia (Polish): melts at 144-152 °C; the Michigan Technological University fibre table gives 150 °C as its limit',
        ),
      ),
      creep: 'activated',
      friction: friction(0.08, 0.12, 0.2, 'on printed polymer'),
    },
    aramid: {
      ...fibre(
        '1.44 g/cm^3',
        [2.9, 3.0, 3.6],
        [70, 72, 83],
        sheet("an aramid maker's comparison table (data of a seller); upper end National Academies, NAP 1824, table 3-1"),
        '20 °C, regular',
      ),
      ...heat([140, 160, 180], [425, 450, 500], 'chars, does not melt', memory('aramid fibre makers')),
      creep: 'logarithmic',
      friction: friction(0.12, 0.18, 0.25, 'on printed polymer or metal'),
    },
    'aramid high modulus': {
      ...fibre(
        '1.45 g/cm^3',
        [3.0, 3.05, 3.6],
        [104, 110, 131],
        sheet("an aramid maker's comparison table (data of a seller, 104 GPa); National Academies, NAP 1824, table 3-1 (124-131 GPa)"),
        '20 °C',
      ),
      ...heat([140, 160, 180], [425, 450, 500], 'chars, does not melt', memory('aramid fibre makers')),
      creep: 'logarithmic',
      friction: friction(0.12, 0.18, 0.25, 'on printed polymer or metal'),
    },
    LCP: {
      ...fibre('1.41 g/cm^3', [2.6, 3.24, 3.3], [74, 74.6, 106], aramidTable, '20 °C'),
      ...heat([100, 130, 150], [300, 320, 340], 'melts', memory('fibre maker of polyarylate LCP')),
      creep: 'logarithmic',
      friction: friction(0.1, 0.15, 0.2, 'on printed polymer'),
    },
    PBO: {
      ...fibre('1.54 g/cm^3', [5.2, 5.8, 5.8], [180, 180, 270], mtu, '20 °C'),
      ...heat([150, 200, 250], [600, 650, 650], 'chars, does not melt', memory('fibre maker of PBO')),
      creep: 'logarithmic',
      friction: friction(0.1, 0.15, 0.25, 'on printed polymer'),
    },
  } as const
}

/** Names of the fibres in the table. */
export type FibreName = 'UHMWPE high grade' | 'UHMWPE standard' | 'aramid' | 'aramid high modulus' | 'LCP' | 'PBO'

/** Filament properties with range and source, and the creep family of a cord fibre. Throws an `InputError` that lists near names. */
export function cordFibre(name: FibreName) {
  table ??= build()
  const found = Object.hasOwn(table, name) ? table[name] : undefined
  if (found === undefined) {
    const near = nearNames(String(name), Object.keys(table))
    throw new InputError('capstan.cordFibre', [
      { path: 'name', given: show(name), accepts: `must be one of ${(near.length > 0 ? near : Object.keys(table)).join(', ')}` },
    ])
  }
  return found
}

/** All fibre names of the table. */
export function fibreNames(): FibreName[] {
  table ??= build()
  return Object.keys(table) as FibreName[]
}

/** One size of control cable: breaking strength of carbon and of corrosion-resistant steel. */
export interface ControlCable {
  /** Nominal diameter in inches, as the standard names it. */
  readonly size: string
  readonly construction: string
  /** Minimum breaking strength, newtons: carbon steel. */
  readonly carbon: number
  /** Minimum breaking strength, newtons: corrosion-resistant steel. */
  readonly stainless: number
}

const lbf = 4.4482216152605
const cable = (size: string, construction: string, carbon: number, stainless: number): ControlCable => ({
  size,
  construction,
  carbon: carbon * lbf,
  stainless: stainless * lbf,
})

/** Minimum breaking strengths of small control cables. Source: FAA AC 43.13-1B, table 7-3 (MIL-DTL-83420). */
export const controlCables: readonly ControlCable[] = [
  /* @__PURE__ */ cable('1/32', '3x7', 110, 110),
  /* @__PURE__ */ cable('3/64', '7x7', 270, 270),
  /* @__PURE__ */ cable('1/16', '7x7', 480, 480),
  /* @__PURE__ */ cable('1/16', '7x19', 480, 480),
  /* @__PURE__ */ cable('3/32', '7x7', 920, 920),
  /* @__PURE__ */ cable('3/32', '7x19', 1000, 920),
  /* @__PURE__ */ cable('1/8', '7x19', 2000, 1760),
  /* @__PURE__ */ cable('5/32', '7x19', 2800, 2400),
  /* @__PURE__ */ cable('3/16', '7x19', 4200, 3700),
]

/** How cord ends are made. */
export type CordEnd = 'resinSocket' | 'swagedSleeve' | 'splice' | 'bowline' | 'bowlineUHMWPE' | 'bondedFerrule'

/** Share of the cord's strength an end keeps, with range and source. */
export function endEfficiency(end: CordEnd) {
  const of = (low: number, typical: number, high: number, source: Source, conditions: string) =>
    property('ratio', { low, typical, high, source, conditions })
  switch (end) {
    case 'resinSocket':
      return of(
        0.95,
        1,
        1,
        sheet(
          'TM 5-3810-305-10, table 4 (spelter socket 100 %); J. Eng. Mater. Technol. 103 (1981) 164, abstract: true values lie below those on catalogue strength',
        ),
        'wire rope',
      )
    case 'swagedSleeve':
      return of(0.9, 0.95, 0.95, sheet('TM 5-3810-305-10, table 4 (swaged socket 95 %)'), 'wire rope')
    case 'splice':
      return of(0.8, 0.9, 0.95, sheet('Practical Sailor 27, no. 17, a magazine test: a neat splice costs about 10 %'), 'fibre rope')
    case 'bowline':
      return of(0.6, 0.7, 0.75, sheet('Cordage Institute, 67-75 %, as cited in Practical Sailor 27, no. 17'), 'conventional fibre rope')
    case 'bowlineUHMWPE':
      return of(
        0.25,
        0.33,
        0.4,
        sheet(
          'a thesis on synthetic rope in logging (Oregon State University), about a third, as cited on a private break-test page; Yachting Monthly, November 2017, p. 73, a magazine test: below 40 %',
        ),
        'slippery fibre',
      )
    case 'bondedFerrule':
      return of(
        0.2,
        0.5,
        0.9,
        {
          level: 'assumption',
          where:
            'range is ours; Hartter and Garland, Int. J. Forest Eng. 17 (2006), abstract: adhesive ends on UHMWPE rope vary and are not recommended. Pull-test yours',
        },
        'potted polymer cord',
      )
    default:
      throw new InputError('capstan.endEfficiency', [
        {
          path: 'end',
          given: show(end),
          accepts: 'must be one of resinSocket, swagedSleeve, splice, bowline, bowlineUHMWPE, bondedFerrule',
        },
      ])
  }
}
