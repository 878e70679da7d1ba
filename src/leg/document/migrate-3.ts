import { linksOf } from './migrate-3-links.js'
import { gaitsOf, loadCasesOf } from './migrate-3-loads.js'
import { type Document, present, renamed, sectionOf, si, split } from './old-sections.js'

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
    usage: usage === undefined ? undefined : usageOf(usageSection),
    gaits: gaitsOf(usageSection),
    loadCases: loadCasesOf(usageSection, environmentSection),
  })
}

/** How the leg is used, without the load cases that were there. Names that no version knew stay, so that they are reported. */
function usageOf(usage: Document | undefined): Document {
  const [kept, other] = split(usage, ['standingTime', 'walkingTime', 'stridesPerDay'])
  const [, unknown] = split(other, [
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
  ])
  return present({ ...kept, ...unknown, requiredReserve: usage?.wantedReserve })
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
