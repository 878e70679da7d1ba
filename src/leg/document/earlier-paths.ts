import { Quantity } from '../../units/index.js'

/** Where a field of version 3 is now: its path, and what its value is multiplied by there. */
export interface NewPlace {
  readonly path: string
  readonly factor?: number
  /** Kind where it is another one: a count of days that is a time now. */
  readonly kind?: 'time'
}

/** What names lead to in a leg, as far as the paths of version 3 need it. */
interface Named {
  readonly joints?: { readonly [joint: string]: { readonly [field: string]: unknown } | undefined }
  readonly plates?: { readonly [name: string]: { readonly bolts?: unknown } | undefined }
  readonly shafts?: { readonly [name: string]: { readonly bearings?: unknown } | undefined }
}

type Places = (leg: Named) => readonly NewPlace[]

const DAY = 86_400
const JOINTS = ['hip', 'knee'] as const
const ALL_JOINTS = ['sidewaysHip', 'hip', 'knee'] as const

const at = (...paths: readonly string[]): Places => {
  const places = paths.map((path) => ({ path }))
  return () => places
}
const name = (leg: Named, joint: string, field: string): string | undefined => {
  const found = leg.joints?.[joint]?.[field]
  return typeof found === 'string' ? found : undefined
}
const isName = (x: unknown): x is string => typeof x === 'string'
/** The things that hip and knee name in a field, below a section. */
const named =
  (section: string, field: string, rest = ''): Places =>
  (leg) =>
    [...new Set(JOINTS.map((joint) => name(leg, joint, field)))].filter(isName).map((id) => ({ path: `${section}.${id}${rest}` }))
const ofJoint =
  (joint: string, section: string, field: string, rest = ''): Places =>
  (leg) =>
    [name(leg, joint, field)].filter(isName).map((id) => ({ path: `${section}.${id}${rest}` }))
const plateBolts =
  (rest = ''): Places =>
  (leg) =>
    [leg.plates?.[name(leg, 'hip', 'plate') ?? '']?.bolts].filter(isName).map((id) => ({ path: `bolts.${id}${rest}` }))
const hipBearings =
  (rest: string): Places =>
  (leg) =>
    [leg.shafts?.[name(leg, 'hip', 'shaft') ?? '']?.bearings].filter(isName).map((id) => ({ path: `bearings.${id}${rest}` }))
const ends: Places = (leg) =>
  [...new Set(JOINTS.map((joint) => (leg.joints?.[joint]?.drive as { end?: unknown } | undefined)?.end))]
    .filter(isName)
    .map((id) => ({ path: `ends.${id}` }))

const EVENTS = 'loadCases.events'
const AIRS = 'loadCases.airs'
const AGES = 'loadCases.ages'

/** Paths of version 3 and where they are now. Names below a path stay the same. */
const EARLIER_PATHS: readonly (readonly [old: string, now: Places])[] = [
  ...JOINTS.flatMap((joint): [string, Places][] => [
    [`drives.${joint}.pinion.wraps`, at(`joints.${joint}.drive.pinion.turns`)],
    [`drives.${joint}`, at(`joints.${joint}.drive`)],
    [`pins.${joint}`, ofJoint(joint, 'pins', 'pin')],
    [`bosses.${joint}`, ofJoint(joint, 'bosses', 'boss')],
  ]),
  ...ALL_JOINTS.flatMap((joint): [string, Places][] => [
    [`joints.${joint}.from`, at(`joints.${joint}.range.lowest`)],
    [`joints.${joint}.to`, at(`joints.${joint}.range.highest`)],
  ]),
  ['joints.sidewaysHip.holdingTorque', at('joints.sidewaysHip.drive.torque')],
  ['joints.sidewaysHip.stiffness', at('joints.sidewaysHip.drive.stiffness')],
  ...['upper', 'lower'].flatMap((link): [string, Places][] => [
    [`links.${link}.width`, at(`links.${link}.section.box.width`)],
    [`links.${link}.depth`, at(`links.${link}.section.box.depth`)],
    [`links.${link}.wall`, at(`links.${link}.section.wall`)],
  ]),
  ['motor', named('motors', 'motor')],
  ['controller', named('controllers', 'controller')],
  ['plate.width', named('plates', 'plate', '.size.width')],
  ['plate.height', named('plates', 'plate', '.size.height')],
  ['plate', named('plates', 'plate')],
  ['sink.width', named('plates', 'plate', '.sink.size.width')],
  ['sink.height', named('plates', 'plate', '.sink.size.height')],
  ['sink', named('plates', 'plate', '.sink')],
  ['bolts.stack.rows', plateBolts('.pattern.distances')],
  ['bolts.stack.leverArm', plateBolts('.pattern.leverArm')],
  ['bolts.stack', plateBolts()],
  ['bolts.motor.circleDiameter', named('bolts', 'motorBolts', '.pattern.diameter')],
  ['bolts.motor', named('bolts', 'motorBolts')],
  ['shaft', ofJoint('hip', 'shafts', 'shaft')],
  ...['size', 'own', 'spacing', 'overhang', 'seatMaterial', 'seatInterference', 'retained'].map((field): [string, Places] => [
    `bearings.${field}`,
    hipBearings(`.${field}`),
  ]),
  ['bondedEnd', ends],
  ['print', at('prints.default')],
  ['foot.toes', at('foot.count')],
  ['foot.toeLength', at('foot.length')],
  ['foot.toeThickness', at('foot.thickness')],
  ['foot.toeWidth', at('foot.width')],
  ['environment.normalAir', at(`${AIRS}.normal.temperature`)],
  ['environment.hotAir', at(`${AIRS}.hot.temperature`)],
  ['environment.coldAir', at(`${AIRS}.cold.temperature`)],
  ['environment.wind', at(`${AIRS}.normal.wind`)],
  ['usage.walk', at('gaits.walk')],
  ['usage.trot', at('gaits.trot')],
  [
    'usage.traction',
    () =>
      ['walk', 'trot'].flatMap((gait) => [
        { path: `gaits.${gait}.traction.highest` },
        { path: `gaits.${gait}.traction.lowest`, factor: -1 },
      ]),
  ],
  [
    'usage.slope',
    () => [{ path: `${EVENTS}.slopeUp.angle` }, { path: `${EVENTS}.slopeDown.angle`, factor: -1 }, { path: `${EVENTS}.slopeAcross.angle` }],
  ],
  ['usage.hopHeight', at(`${EVENTS}.hop.height`)],
  ['usage.dropHeight', at(`${EVENTS}.drop.height`)],
  ['usage.landingTravel', at(`${EVENTS}.hop.travel`, `${EVENTS}.drop.travel`)],
  ['usage.touchDownHeight', at(`${EVENTS}.hop.touchDownHeight`, `${EVENTS}.drop.touchDownHeight`)],
  ['usage.stallTime', at(`${EVENTS}.stall.time`)],
  ['usage.days', () => [{ path: `${AGES}.season.daysWalked` }, { path: `${AGES}.season.time`, factor: DAY, kind: 'time' }]],
  ['usage.shelfTime', at(`${AGES}.aged.time`)],
  ['usage.shelfTemperature', at(`${AIRS}.shelf.temperature`)],
  ['usage.wantedReserve', at('usage.requiredReserve')],
]

const isUnder = (path: string, section: string) => path === section || path.startsWith(`${section}.`) || path.startsWith(`${section}[`)

/** The value at a path of plain data. */
export const valueAt = (data: unknown, path: string): unknown =>
  path
    .replaceAll(/\[(\d+)\]/g, '.$1')
    .split('.')
    .reduce<unknown>(
      (value, step) =>
        typeof value === 'object' && value !== null && !(value instanceof Quantity) && Object.hasOwn(value, step)
          ? (value as Record<string, unknown>)[step]
          : undefined,
      data,
    )

/** Where a path of version 3 leads to in a leg; nothing for a path that is no such path, or whose section the leg itself has. */
export function newPlaces(leg: object, path: string): readonly NewPlace[] | undefined {
  const found = EARLIER_PATHS.find(([old]) => isUnder(path, old))
  if (found === undefined) return undefined
  const [old, now] = found
  if (valueAt(leg, old) !== undefined) return undefined
  return now(leg as Named).map((place) => ({ ...place, path: place.path + path.slice(old.length) }))
}

/** Every path of version 3 with the places it leads to in a leg, sections before the fields in them. */
export const earlierPlaces = (leg: object): readonly (readonly [old: string, now: readonly NewPlace[]])[] =>
  EARLIER_PATHS.filter(([old]) => valueAt(leg, old) === undefined)
    .map(([old, now]) => [old, now(leg as Named)] as const)
    .filter(([, now]) => now.length > 0)
    .toReversed()

/** Names that the migration gives to what version 3 had once. */
const MIGRATED: Named = {
  joints: Object.fromEntries(
    JOINTS.map((joint) => [
      joint,
      {
        motor: 'main',
        controller: 'main',
        plate: joint === 'hip' ? 'bodyPlate' : 'kneePlate',
        motorBolts: 'motor',
        pin: `${joint}Pin`,
        boss: `${joint}Boss`,
        shaft: joint === 'hip' ? 'hip' : undefined,
        drive: { end: 'ferrule' },
      },
    ]),
  ),
  plates: { bodyPlate: { bolts: 'stack' } },
  shafts: { hip: { bearings: 'hip' } },
}

/** The path that a field of a migrated document had in version 3; the path itself where it has not moved. */
export function earlierPath(path: string): string {
  for (const [old, now] of EARLIER_PATHS) {
    const place = now(MIGRATED).find((place) => isUnder(path, place.path))
    if (place !== undefined) return old + path.slice(place.path.length)
  }
  if (path === 'bearings.hip') return 'bearings'
  return path.replace(/^(joints\.\w+)\.range/, '$1').replace(/^(links\.\w+)\.section(\.box)?/, '$1')
}
