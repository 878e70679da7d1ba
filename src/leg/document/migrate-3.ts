import { type In, InputError, type Issue, type Kind, quantity, show } from '../../units/index.js'
import type { OwnMaterial } from '../schema/field.js'
import { materialOf } from '../schema/tables.js'

type Document = Record<string, unknown>

/** A section of a document, or nothing where it is none. */
const sectionOf = (value: unknown): Document | undefined =>
  typeof value === 'object' && value !== null && !Array.isArray(value) ? (value as Document) : undefined

/** Some fields moved under other names; what is absent stays absent. */
function renamed(section: Document, names: Readonly<Record<string, string>>): Document {
  return Object.fromEntries(Object.entries(section).map(([name, value]) => [names[name] ?? name, value]))
}

/** A record without what is undefined. */
const present = (record: Document): Document => Object.fromEntries(Object.entries(record).filter(([, value]) => value !== undefined))

function split(section: Document | undefined, names: readonly string[]): [picked: Document, rest: Document] {
  const entries = Object.entries(section ?? {})
  return [
    Object.fromEntries(entries.filter(([name]) => names.includes(name))),
    Object.fromEntries(entries.filter(([name]) => !names.includes(name))),
  ]
}

/**
 * Version 3 had one motor, controller, plate and sink for both joints, cord drives only, link masses that held what the link carries, and load cases
 * in `usage` and `environment`. Version 4 names each, and mounts each where it is. Throws an `InputError` where a link is lighter than what it
 * carries.
 */
export function fromVersion3(given: Document): Document {
  const {
    motor,
    plate,
    sink,
    controller,
    drives,
    pins,
    bosses,
    bolts,
    shaft,
    bearings,
    bondedEnd,
    print,
    usage,
    environment,
    joints,
    links,
    foot,
    ...rest
  } = given
  const usageSection = sectionOf(usage)
  const environmentSection = sectionOf(environment)
  const [, weather] = split(environmentSection, ['normalAir', 'hotAir', 'coldAir', 'wind'])
  const [kept, other] = split(usageSection, ['standingTime', 'walkingTime', 'stridesPerDay'])
  const unknown = split(other, [
    'walk',
    'trot',
    'traction',
    'hopHeight',
    'dropHeight',
    'slope',
    'stallTime',
    'days',
    'shelfTime',
    'shelfTemperature',
    'landingTravel',
    'touchDownHeight',
    'wantedReserve',
  ])[1]
  const both = (thing: unknown) => (thing === undefined ? undefined : sectionOf(thing))
  return present({
    ...rest,
    schemaVersion: 4,
    joints: jointsOf(sectionOf(joints), sectionOf(drives), {
      pins: sectionOf(pins),
      bosses: sectionOf(bosses),
      shaft,
      bolts: sectionOf(bolts),
    }),
    links: linksOf(sectionOf(links), given),
    motors: motor === undefined ? undefined : { main: motor },
    controllers: controller === undefined ? undefined : { main: controller },
    plates:
      plate === undefined ? undefined : platesOf(plate, sink, sectionOf(bolts), kneeMotorDistance(sectionOf(links), sectionOf(drives))),
    ends: bondedEnd === undefined ? undefined : { ferrule: bondedEnd },
    pins: pins === undefined ? undefined : byJoint(both(pins), 'Pin'),
    bosses: bosses === undefined ? undefined : byJoint(both(bosses), 'Boss'),
    bolts: bolts === undefined ? undefined : boltsOf(sectionOf(bolts)),
    shafts: shaft === undefined ? undefined : { hip: sectionOf(shaft) === undefined ? shaft : { ...sectionOf(shaft), bearings: 'hip' } },
    bearings: bearings === undefined ? undefined : { hip: bearings },
    foot: sectionOf(foot) === undefined ? foot : { kind: 'toes', ...renamed(foot as Document, TOES) },
    prints: print === undefined ? undefined : { default: print },
    environment: environment === undefined ? undefined : weather,
    usage: usage === undefined ? undefined : present({ ...kept, ...unknown, requiredReserve: usageSection?.wantedReserve }),
    gaits: gaitsOf(usageSection),
    loadCases: loadCasesOf(usageSection, environmentSection),
  })
}

const TOES = { toes: 'count', toeLength: 'length', toeThickness: 'thickness', toeWidth: 'width' }

const byJoint = (things: Document | undefined, what: string): Document | undefined =>
  things === undefined ? undefined : Object.fromEntries(Object.entries(things).map(([joint, thing]) => [`${joint}${what}`, thing]))

interface Parts {
  readonly pins: Document | undefined
  readonly bosses: Document | undefined
  readonly shaft: unknown
  readonly bolts: Document | undefined
}

function jointsOf(joints: Document | undefined, drives: Document | undefined, { pins, bosses, shaft, bolts }: Parts): unknown {
  if (joints === undefined) return undefined
  const sideways = sectionOf(joints.sidewaysHip)
  const driven = (name: 'hip' | 'knee') => {
    const limits = sectionOf(joints[name])
    const drive = sectionOf(drives?.[name])
    return present({
      ...rangeOf(limits),
      motor: 'main',
      controller: 'main',
      plate: name === 'hip' ? 'bodyPlate' : 'kneePlate',
      motorBolts: bolts?.motor === undefined ? undefined : 'motor',
      pin: pins?.[name] === undefined ? undefined : `${name}Pin`,
      boss: bosses?.[name] === undefined ? undefined : `${name}Boss`,
      shaft: name === 'hip' && shaft !== undefined ? 'hip' : undefined,
      drive: drive === undefined ? drives?.[name] : driveOf(drive),
    })
  }
  const { from: _, to: __, holdingTorque, stiffness, ...surplus } = sideways ?? {}
  return present({
    ...joints,
    sidewaysHip:
      sideways === undefined
        ? joints.sidewaysHip
        : { ...surplus, ...rangeOf(sideways), drive: present({ kind: 'held', torque: holdingTorque, stiffness }) },
    hip: driven('hip'),
    knee: driven('knee'),
  })
}

const rangeOf = (limits: Document | undefined): Document =>
  limits?.from === undefined || limits.to === undefined ? {} : { range: [limits.from, limits.to] }

function driveOf(drive: Document): Document {
  const pinion = sectionOf(drive.pinion)
  const drum = sectionOf(drive.drum)
  const bolted = drum?.throughBolts !== undefined && drum.throughBolts !== 0 && drum.throughBoltThread === undefined
  return present({
    kind: 'cord',
    ...drive,
    pinion: pinion === undefined ? drive.pinion : renamed(pinion, { wraps: 'turns' }),
    drum: bolted ? { ...drum, throughBoltThread: 'M3' } : drive.drum,
    end: drive.ends === 'bondedFerrule' ? 'ferrule' : undefined,
  })
}

/** Version 3's plate and sink, once on the body and once on the upper link. */
function platesOf(plate: unknown, sink: unknown, bolts: Document | undefined, distance: string | undefined): unknown {
  const section = sectionOf(plate)
  if (section === undefined) return { bodyPlate: plate }
  const sized = (part: Document): Document => {
    const { width, height, ...others } = part
    return present({ ...others, size: width === undefined || height === undefined ? undefined : [width, height] })
  }
  const one = { ...sized(section), ...(sectionOf(sink) === undefined ? {} : { sink: sized(sink as Document) }) }
  return {
    bodyPlate: present({ mountedOn: 'body', ...one, bolts: bolts?.stack === undefined ? undefined : 'stack' }),
    kneePlate: present({ mountedOn: 'upper', distance, ...one }),
  }
}

/** Where the knee's motor sits on the upper link: its pinion is the centre distance away from the knee. */
function kneeMotorDistance(links: Document | undefined, drives: Document | undefined): string | undefined {
  const length = si('length', sectionOf(links?.upper)?.length)
  const centreDistance = si('length', sectionOf(drives?.knee)?.centreDistance)
  return length === undefined || centreDistance === undefined
    ? undefined
    : `${Number((1000 * (length - centreDistance)).toPrecision(9))} mm`
}

function boltsOf(bolts: Document | undefined): unknown {
  const { stack, motor, ...surplus } = bolts ?? {}
  const [stackSection, motorSection] = [sectionOf(stack), sectionOf(motor)]
  const { rows, leverArm, ...stackRest } = stackSection ?? {}
  const { circleDiameter, ...motorRest } = motorSection ?? {}
  return present({
    ...surplus,
    stack: stackSection === undefined ? stack : { ...stackRest, pattern: present({ kind: 'rows', distances: rows, leverArm }) },
    motor: motorSection === undefined ? motor : { ...motorRest, pattern: present({ kind: 'circle', diameter: circleDiameter }) },
  })
}

function linksOf(links: Document | undefined, whole: Document): unknown {
  if (links === undefined) return whole.links
  const link = (name: 'upper' | 'lower') => {
    const section = sectionOf(links[name])
    if (section === undefined) return links[name]
    const { width, depth, wall, mass = '0.25 kg', ...others } = section
    const box = width === undefined || depth === undefined ? undefined : [width, depth]
    return present({
      ...others,
      mass: name === 'upper' ? bareMass(mass, whole) : mass,
      section: box === undefined && wall === undefined ? undefined : present({ box, wall }),
    })
  }
  return { ...links, upper: link('upper'), lower: link('lower') }
}

const si = (kind: Kind, given: unknown): number | undefined => {
  try {
    return quantity(kind, given as In<Kind>).si
  } catch {
    return undefined
  }
}

/** Mass of a plate or sink, where it can be read. */
function sheetMass(part: unknown, own: Document | undefined): number | undefined {
  const section = sectionOf(part)
  if (section === undefined) return part === undefined ? 0 : undefined
  const sizes = ['width', 'height', 'thickness'].map((name) => si('length', section[name]))
  if (sizes.includes(undefined)) return undefined
  try {
    const { density } = materialOf(String(section.material), own as Record<string, OwnMaterial> | undefined)
    return (sizes as number[]).reduce((product, x) => product * x, 1) * (density?.si ?? Number.NaN)
  } catch {
    return undefined
  }
}

/** Mass of the bare upper link, from a mass that held the knee's motor, plate and sink. */
function bareMass(given: unknown, { motor, plate, sink, materials }: Document): unknown {
  const own = sectionOf(materials)
  const parts = [si('mass', given), si('mass', sectionOf(motor)?.mass), sheetMass(plate, own), sheetMass(sink, own)]
  if (parts.some((part) => part === undefined || Number.isNaN(part))) return given
  const [all, motorMass, plateMass, sinkMass] = parts as [number, number, number, number]
  const bare = all - motorMass - plateMass - sinkMass
  if (bare > 0) return `${Number(bare.toPrecision(12))} kg`
  const grams = (x: number) => `${Number((1000 * x).toPrecision(3))} g`
  const issue: Issue = {
    path: 'links.upper.mass',
    given: show(given),
    accepts: `must be above what the link carries: motor ${grams(motorMass)}, plate ${grams(plateMass)}, sink ${grams(sinkMass)}. From version 4 on, write the mass of the bare link`,
  }
  throw new InputError('describeLeg', [issue])
}

function gaitsOf(usage: Document | undefined): unknown {
  const gait = (name: 'walk' | 'trot', defaults: Document) => {
    const given = usage?.[name]
    const written = usage?.traction
    const traction = si('ratio', written)
    if (given === undefined && written === undefined) return undefined
    const section = sectionOf(given) ?? (given === undefined ? {} : undefined)
    return section === undefined
      ? given
      : {
          ...defaults,
          ...section,
          ...(written === undefined ? {} : { traction: traction === undefined ? written : [-traction, traction] }),
        }
  }
  const gaits = present({
    walk: gait('walk', { speed: '0.3 m/s', dutyFactor: 0.75, stepLength: '120 mm', clearance: '40 mm' }),
    trot: gait('trot', { speed: '0.8 m/s', dutyFactor: 0.5, stepLength: '120 mm', clearance: '40 mm' }),
  })
  return Object.keys(gaits).length === 0 ? undefined : gaits
}

function loadCasesOf(usage: Document = {}, environment: Document = {}): unknown {
  const { normalAir, hotAir, coldAir, wind } = environment
  const { slope, hopHeight, dropHeight, landingTravel, touchDownHeight, stallTime, days, shelfTime, shelfTemperature } = usage
  const or = (given: unknown, otherwise: string) => (given === undefined ? otherwise : given)
  const travel = or(landingTravel, '60 mm')
  const angle = si('angle', slope)
  const degrees = (x: number) => `${Number(((x * 180) / Math.PI).toPrecision(12))} deg`
  const landing = [hopHeight, dropHeight, landingTravel, touchDownHeight].some((given) => given !== undefined)
  const airs = present({
    normal: normalAir === undefined && wind === undefined ? undefined : present({ temperature: normalAir ?? '20 degC', wind }),
    hot: hotAir === undefined ? undefined : { temperature: hotAir },
    cold: coldAir === undefined ? undefined : { temperature: coldAir },
    shelf: shelfTemperature === undefined ? undefined : { temperature: shelfTemperature },
  })
  const ages = present({
    season: days === undefined ? undefined : { time: typeof days === 'number' ? `${days} day` : days, daysWalked: days },
    aged: shelfTime === undefined ? undefined : { time: shelfTime },
  })
  const events = present({
    // A slope that cannot be read is handed on, so that it is named.
    ...(angle === undefined
      ? slope === undefined
        ? {}
        : { slopeUp: { kind: 'slope', gait: 'walk', angle: slope } }
      : {
          slopeUp: { kind: 'slope', gait: 'walk', angle: degrees(angle) },
          slopeDown: { kind: 'slope', gait: 'walk', angle: degrees(-angle) },
          slopeAcross: { kind: 'slope', gait: 'walk', angle: degrees(angle), direction: 'across' },
        }),
    hop: landing ? present({ kind: 'hop', height: or(hopHeight, '30 mm'), travel, touchDownHeight }) : undefined,
    drop: landing ? present({ kind: 'drop', height: or(dropHeight, '80 mm'), feet: 2, travel, touchDownHeight }) : undefined,
    stall: stallTime === undefined ? undefined : { kind: 'stall', gait: 'walk', time: stallTime },
  })
  const all = Object.fromEntries(Object.entries({ airs, ages, events }).filter(([, section]) => Object.keys(section).length > 0))
  return Object.keys(all).length === 0 ? undefined : all
}
