import { spawnSync } from 'node:child_process'
import { mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { strideTable } from '../../src/kinematics/index.js'
import { assess, checksTable, controlSheet, describeLeg, legMotion, legUrdf, strideTrajectory, withFields } from '../../src/leg/index.js'

const EXAMPLES = new URL('../../examples/', import.meta.url)
const example = (name: string) => describeLeg(readFileSync(new URL(name, EXAMPLES), 'utf8'))
const examples = readdirSync(EXAMPLES).filter((name) => name.endsWith('.yaml'))
const leg = example('mudflat-leg-revised.yaml')

/** Limits and friction of the knee in a URDF text. */
const kneeOf = (text: string) => {
  const found = text.slice(text.indexOf('<joint name="knee"')).match(/effort="([^"]+)" velocity="([^"]+)".*?friction="([^"]+)"/s)!
  const [effort, velocity, friction] = found.slice(1).map(Number) as [number, number, number]
  return { effort, velocity, friction }
}

test('the kinematics of a document have its lengths, limits and gait', () => {
  const { leg: made, path, dynamics, coupling } = legMotion(leg, { gait: 'trot' })
  const straight = made.footPosition({ sidewaysHip: '0 deg', hip: '0 deg', knee: '20 deg' })
  const [upper, lower] = [leg.links.upper.length.si, leg.links.lower.length.si]
  const bent = (20 * Math.PI) / 180
  expect(straight.z.si).toBeCloseTo(-upper - lower * Math.cos(bent), 12)
  expect(straight.y.si).toBeCloseTo(leg.links.hipOffset.si, 12)
  expect(path.bodySpeed.si).toBeCloseTo(leg.gaits.trot?.speed.si as number, 12)
  const stride = strideTable({
    leg: made,
    path,
    dynamics,
    coupling,
    load: { mass: leg.robot.mass, legShare: 0.25, shape: 'halfSine' },
    rate: [200 / path.si.period, 'Hz'],
  })
  expect(stride.walkable).toBe(true)
  // Held level, the hip bears both links at their centres of mass: the shell in its middle, the rest of 0.66 kg on the plate 47 mm from the hip.
  const shell = leg.links.upper.mass.si
  const moment = shell * 0.5 * upper + (0.66 - shell) * 0.047 + 0.16 * (upper + 0.09)
  const level = dynamics.gravityTorque({ sidewaysHip: '0 deg', hip: '-90 deg', knee: '0 deg' })
  expect(Math.abs(level.hip.si)).toBeCloseTo(9.80665 * moment, 9)
  expect(() => legMotion(leg, { gait: 'tort' })).toThrow(/gait is 'tort'.*trot/)
})

test('a trajectory has a fixed rate, closes, and drives the motor by ratio and sign', () => {
  const table = strideTrajectory(leg, { gait: 'walk', rate: '500 Hz' })
  const time = table.in('time', 'ms')
  expect(time[1]! - time[0]!).toBeCloseTo(2, 9)
  const gait = leg.gaits.walk!
  const period = gait.stepLength.si / gait.speed.si / gait.dutyFactor.si
  expect(Math.abs(table.rows / 500 - period)).toBeLessThanOrEqual(0.001)
  const { ratio, sign } = controlSheet(leg).joints.knee
  const [drum, motor] = [table.in('drum angle knee', 'rad'), table.in('motor angle knee', 'rad')]
  expect(motor[7]).toBeCloseTo(sign * ratio.si * drum[7]!, 12)
  // The same power at drum and motor: the table has no losses.
  const power = (part: string) => table.in(`${part} rate knee`, 'rad/s')[7]! * table.in(`${part} torque knee`, 'N m')[7]!
  expect(power('motor')).toBeCloseTo(power('drum'), 9)
  expect(table.toCSV().split('\n')[0]).toContain('motor torque hip [N m]')
})

const urdf = spawnSync('check_urdf', ['--help']).error === undefined

test('the leg as URDF has its masses, limits and lengths', () => {
  const text = legUrdf(leg, { name: 'left "front" leg' })
  expect(text).toContain('<robot name="left &quot;front&quot; leg">')
  // The document states 0.66 kg with motor, plate and sink; the bare link is a seventh of it.
  const masses = [...text.matchAll(/<mass value="([^"]+)"/g)].map(([, mass]) => Number(mass))
  expect(masses[0]).toBeCloseTo(0.66, 9)
  expect(masses[1]).toBeCloseTo(0.16, 9)
  expect(text).toContain(`<origin xyz="0 0 -${leg.links.upper.length.si}"/><axis xyz="0 1 0"/>`)
  expect(text).not.toMatch(/NaN|undefined|Infinity/)
  const knee = text.slice(text.indexOf('<joint name="knee"'))
  const limit = knee
    .match(/<limit lower="([^"]+)" upper="([^"]+)" effort="([^"]+)" velocity="([^"]+)"/)!
    .slice(1)
    .map(Number)
  expect(limit[0]).toBeCloseTo(leg.joints.knee.range.lowest.si, 8)
  const { ratio, currentLimits } = controlSheet(leg).joints.knee
  expect(limit[2]).toBeCloseTo(Math.max(...currentLimits.map(({ jointTorque }) => jointTorque.si)), 6)
  // Speed constant times voltage, through the reduction: revolutions a minute and volts, worked by hand.
  expect(limit[3]).toBeCloseTo((110 * 22 * 2 * Math.PI) / 60 / ratio.si, 6)
  expect(legUrdf(leg, { side: 'right' })).toContain('xyz="0 -0.058 0"')
})

test('the drag of a motor at the joint is that of the motor times the ratio', () => {
  const { ratio, dragTorque } = controlSheet(leg).joints.knee
  expect(kneeOf(legUrdf(leg)).friction).toBeCloseTo(ratio.si * dragTorque.si, 8)
})

test('a knee that a rod drives has the least torque and speed over its travel', () => {
  const heath = example('heath-leg-revised.yaml')
  const { coupling } = legMotion(heath)
  const { lowest, highest } = heath.joints.knee.range
  const ratios = Array.from({ length: 2001 }, (_, i) => Math.abs(coupling.si.kneeRatio(lowest.si + ((highest.si - lowest.si) * i) / 2000)))
  const { ratio, dragTorque, currentLimits } = controlSheet(heath).joints.knee
  const motor = heath.motors[heath.joints.knee.motor as string]!
  const drum = {
    torque: Math.max(...currentLimits.map(({ jointTorque }) => jointTorque.si)),
    speed: (motor.speedConstant.si * heath.supply.voltage.si) / ratio.si,
  }
  const knee = kneeOf(legUrdf(heath))
  // A hundred poses find the extremes to a thousandth.
  expect(knee.effort / (drum.torque * Math.min(...ratios))).toBeCloseTo(1, 3)
  expect(knee.velocity / (drum.speed / Math.max(...ratios))).toBeCloseTo(1, 3)
  expect(knee.friction / (ratio.si * dragTorque.si * Math.max(...ratios))).toBeCloseTo(1, 3)
})

/** The largest torque of the limits that a control sheet lists. */
const sheetTorque = (of: ReturnType<typeof describeLeg>, joint: 'sidewaysHip' | 'hip' | 'knee') =>
  Math.max(...controlSheet(of).joints[joint]!.currentLimits.map(({ jointTorque }) => jointTorque.si))

test.each(['desk-leg-revised.yaml', 'orchard-leg-revised.yaml', 'mudflat-leg-revised.yaml'])(
  'the knee of %s has the torque of its control sheet',
  (name) => {
    const one = example(name)
    expect(kneeOf(legUrdf(one)).effort / sheetTorque(one, 'knee')).toBeCloseTo(1, 8)
  },
)

test('a belt that jumps sooner has less torque in a simulator, at the same current limit', () => {
  const orchard = example('orchard-leg-revised.yaml')
  const slack = withFields(orchard, { 'joints.knee.drive.pretension': '600 N' })
  expect(kneeOf(legUrdf(slack)).effort).toBeLessThan(0.9 * kneeOf(legUrdf(orchard)).effort)
})

test('the motor of a direct drive turns with the joint', () => {
  const desk = example('desk-leg-revised.yaml')
  const table = strideTrajectory(desk, { rate: '500 Hz' })
  expect(table.in('motor angle knee', 'rad')[5]).toBeCloseTo(table.in('drum angle knee', 'rad')[5]!, 12)
})

/** The orchard carrier with a motor and gearbox at its sideways hip. */
const driven = (changes: object = {}) =>
  withFields(example('orchard-leg-revised.yaml'), {
    'plates.sidePlate': {
      mountedOn: 'body',
      material: 'aluminium 6061-T6',
      emissivity: 0.9,
      thickness: '6 mm',
      size: { width: '120 mm', height: '130 mm' },
    },
    'bearings.side': {
      size: '12x21x5',
      spacing: '60 mm',
      overhang: '30 mm',
      seatMaterial: 'aluminium 6061-T6',
      seatInterference: '0.01 mm',
    },
    'joints.sidewaysHip': {
      range: { lowest: '-20 deg', highest: '20 deg' },
      motor: 'outrunner',
      controller: 'bridge',
      plate: 'sidePlate',
      bearings: 'side',
      drive: {
        kind: 'gearbox',
        ratio: 16,
        efficiency: 0.85,
        backlash: '0.2 deg',
        stiffness: '2 kN m/rad',
        ratedTorque: '28 N m',
        peakTorque: '450 N m',
        highestSpeed: '30000 rpm',
        mass: '0.4 kg',
        ...changes,
      },
    },
  } as never)
const sidewaysOf = (text: string) => {
  const [, effort, velocity, friction] =
    /<joint name="sideways_hip" type="revolute">.*?effort="([^"]+)" velocity="([^"]+)"\/><dynamics damping="0" friction="([^"]+)"/s.exec(
      text,
    )!
  return { effort: Number(effort), velocity: Number(velocity), friction: Number(friction) }
}

test('a driven sideways hip has the torque of its control sheet, the speed of its motor and the drag of both', () => {
  const one = driven()
  const motor = one.motors.outrunner!
  const { effort, velocity, friction } = sidewaysOf(legUrdf(one))
  expect(effort / sheetTorque(one, 'sidewaysHip')).toBeCloseTo(1, 8)
  expect(velocity / ((motor.speedConstant.si * one.supply.voltage.si) / 16)).toBeCloseTo(1, 8)
  expect(friction).toBeGreaterThan(0)
})

test('a gearbox bears no more than its largest torque and speed', () => {
  const weak = driven({ peakTorque: '31 N m', highestSpeed: '900 rpm' })
  const { effort, velocity } = sidewaysOf(legUrdf(weak))
  expect(effort).toBeLessThanOrEqual(31 * (1 + 1e-5))
  expect(effort / sheetTorque(weak, 'sidewaysHip')).toBeCloseTo(1, 8)
  expect(velocity).toBeCloseTo((900 * 2 * Math.PI) / 60 / 16, 8)
})

test('a held sideways hip has the torque that holds it, and no speed', () => {
  expect(sidewaysOf(legUrdf(example('orchard-leg-revised.yaml')))).toEqual({ effort: 40, velocity: 0, friction: 0 })
})

test.each(examples)('%s goes to trajectories, tables and JSON', async (name) => {
  const arrow = await import('apache-arrow')
  const one = example(name)
  for (const gait of Object.keys(one.gaits)) {
    const table = strideTrajectory(one, { gait, rate: '200 Hz' })
    const [head = '', ...lines] = table.toCSV().trim().split('\n')
    expect(lines).toHaveLength(table.rows)
    for (const line of lines) expect(line.split(',').map(Number).filter(Number.isFinite)).toHaveLength(head.split(',').length)
    const back = arrow.tableFromIPC(arrow.tableToIPC(table.toArrow(arrow)))
    expect([back.numRows, back.numCols]).toEqual([table.rows, head.split(',').length])
  }
  expect(JSON.stringify(describeLeg(JSON.parse(JSON.stringify(one))))).toBe(JSON.stringify(one))
})

test.runIf(urdf).each([...examples, 'a driven sideways hip'])("Debian's reader of the format takes %s", (name) => {
  const file = join(mkdtempSync(join(tmpdir(), 'urdf-')), 'leg.urdf')
  writeFileSync(file, legUrdf(name.endsWith('.yaml') ? example(name) : driven()))
  const { status, stdout } = spawnSync('check_urdf', [file], { encoding: 'utf8' })
  expect(status).toBe(0)
  expect(stdout.replaceAll(/\s+/g, ' ')).toMatch(/body.*hip_link.*upper_link.*lower_link.*foot/)
})

test('results go to Arrow and JSON and come back', async () => {
  const arrow = await import('apache-arrow')
  const table = checksTable(assess(leg, { cases: ['stand'] }))
  const back = arrow.tableFromIPC(arrow.tableToIPC(table.toArrow(arrow)))
  expect(back.numRows).toBe(table.rows)
  expect(back.getChild('reserve [1]')?.get(3)).toBe(table.in('reserve', '1')[3])
  expect(back.getChild('check')?.get(3)).toBe(table.row(3).check)
  const again = describeLeg(JSON.parse(JSON.stringify(leg)))
  expect(JSON.stringify(again)).toBe(JSON.stringify(leg))
})

type Trajectory = ReturnType<typeof strideTrajectory>

test('a knee that bends backward has a trajectory: in the middle of its stance the mirror image of one that bends forward', () => {
  const desk = example('desk-leg-revised.yaml')
  const mirrored = withFields(desk, {
    'joints.hip.range': { lowest: '-45 deg', highest: '70 deg' },
    'joints.knee.range': { lowest: '-130 deg', highest: '-20 deg' },
  })
  const [forward, backward] = [desk, mirrored].map((one) => strideTrajectory(one, { rate: '6 kHz' })) as [Trajectory, Trajectory]
  const middle = Math.round(0.375 * forward.rows)
  expect(backward.rows).toBe(forward.rows)
  for (const joint of ['hip', 'knee'])
    for (const column of [`joint angle ${joint}`, `motor angle ${joint}`, `motor torque ${joint}`]) {
      const [one, other] = [forward, backward].map(
        (table) => table.in(column, column.includes('torque') ? 'N m' : 'rad')[middle] as number,
      ) as [number, number]
      expect(Math.abs(one), column).toBeGreaterThan(0.01)
      expect(other / one, column).toBeCloseTo(-1, 2)
    }
})
