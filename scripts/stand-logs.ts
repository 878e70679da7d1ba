/**
 * Writes the invented logs of the demo's test stand: `tsx scripts/stand-logs.ts`. Nothing was measured. The readings are what the library predicts
 * for a leg with other values than the document has, with scatter, one gap and one slip.
 */
import { readFileSync, writeFileSync } from 'node:fs'
import { tensionRatio } from '../src/capstan/index.js'
import { describeLeg, legNumbers } from '../src/leg/index.js'
import { HeatingRun } from '../src/leg/learning/heating-run.js'
import { lossOf } from '../src/leg/learning/model-heating.js'
import { legModel } from '../src/leg/leg-model.js'
import { driveOf, motorOf } from '../src/leg/numbers.js'
import { sure } from '../src/leg/ranges.js'
import { windups } from '../src/leg/windup.js'
import { randomStream } from '../src/numeric/index.js'

/** What the stand is to find out. */
const TRUE = {
  friction: 0.175,
  pretension: 276,
  axialRigidity: 19_500,
  /** Loss of tension for each tenfold time, over what is left. */
  relaxation: 0.058,
  coolingFactor: 0.83,
  specificHeat: 480,
  windingToMount: 0.82,
}

const examples = new URL('../examples/', import.meta.url)
const x = legNumbers(describeLeg(readFileSync(new URL('mudflat-leg-revised.yaml', examples), 'utf8')))
const drive = { ...driveOf(x, 'knee', 'cord'), friction: sure(TRUE.friction), pretension: TRUE.pretension }
const leg = legModel({ ...x, joints: { ...x.joints, knee: { ...x.joints.knee, drive } } })
const random = randomStream(7)
/** A reading: the value, off by a share of the scatter between -1 and 1. */
const read = (value: number, scatter: number) => value + scatter * (2 * random.uniform() - 1)

interface Robot {
  readonly title: string
  readonly folder: string
}
const MUDFLAT: Robot = { title: 'Mudflat walker, left front leg, revised design', folder: '' }
const SHINGLE: Robot = { title: 'Shingle carrier, a torsion spring beside its knee', folder: 'shingle/' }

function write(log: string, story: string, columns: string, rows: readonly string[], robot: Robot = MUDFLAT): void {
  const head = [
    '# INVENTED LOG for the example: made by a script from the model with other values and scatter; nothing was measured.',
    `# ${robot.title}`,
    `# log: ${log}`,
    `# ${story}`,
    columns,
  ]
  writeFileSync(new URL(`stand-logs/${robot.folder}${log.replace(' ', '-')}.csv`, examples), `${[...head, ...rows].join('\n')}\n`)
}

function cordFriction(): void {
  const turn = (turns: number, readings: number) =>
    Array.from({ length: readings }, () => {
      const taut = 5 * tensionRatio.si({ friction: TRUE.friction, wrapAngle: 2 * Math.PI * turns })
      return `5.00,${read(taut, 0.08 * taut).toFixed(2)},${turns}`
    })
  const rows = [...turn(0.5, 4), ...turn(1, 2), '5.00,,1', ...turn(1, 2), ...turn(1.5, 4), '5.00,71.3,1']
  const story = '5 N of weight on the slack end, pulled until it creeps; one scale slipped off its hook'
  write('cordFriction knee', story, 'slack tension [N],taut tension [N],wrap angle [turn]', rows)
}

function pretension(): void {
  const hours = [1, 4, 10, 24, 48, 72, 120, 168, 240, 336, 480, 720]
  const rows = hours.map((hour) => {
    const tension = TRUE.pretension / (1 + TRUE.relaxation * Math.log10(hour))
    return `${(hour / 24).toFixed(3)},${read(tension, 0.8).toFixed(1)}`
  })
  write('pretension knee', 'read by the pitch of the plucked span, always at 20 degC', 'time [day],tension [N]', rows)
}

function windup(): void {
  const up = Array.from({ length: 13 }, (_, i) => i)
  const torques = [...up, ...[...up].reverse().slice(1)]
  const zero = 0.121
  const rows = windups(leg, 'knee', TRUE.axialRigidity, torques).map(
    (angle, i) => `${torques[i]?.toFixed(1)},${read((angle * 180) / Math.PI + zero, 0.003).toFixed(3)}`,
  )
  write('windup knee', 'motor locked, arm and weights on the joint, up and back', 'joint torque [N m],joint angle [deg]', rows)
}

function heating(): void {
  const zero = 273.15
  const times = Array.from({ length: 32 }, (_, i) => 120 * i)
  const air = times.map(() => read(18.5 + zero, 0.1))
  const current = times.map((_, i) => 6.5 + 0.0026 * i)
  const run = new HeatingRun(leg.x, 'knee')
  let winding = air
  let mount = air
  // The loss depends on the winding and the winding on the loss.
  for (let round = 0; round < 40; round++) {
    const loss = current.map((amps, i) => lossOf(motorOf(leg.x, 'knee'), amps, winding[i] as number))
    const moments = times.map((time, i) => ({ time, air: air[i] as number, loss: loss[i] as number }))
    mount = run.temperatures(TRUE.coolingFactor, TRUE.specificHeat, moments, air[0] as number)
    winding = mount.map((at, i) => at + TRUE.windingToMount * (loss[i] as number))
  }
  const celsius = (kelvin: number, scatter: number) => read(kelvin - zero, scatter).toFixed(1)
  const rows = times
    .map((time, i) =>
      [
        time / 60,
        current[i]?.toFixed(2),
        celsius(winding[i] as number, 0.15),
        celsius(mount[i] as number, 0.15),
        celsius(air[i] as number, 0),
      ].join(','),
    )
    .slice(2)
  write(
    'heating',
    'knee motor on its plate, field turned slowly, indoors, out of the wind',
    'time [min],peak phase current [A],winding temperature [degC],mount temperature [degC],air temperature [degC]',
    rows,
  )
}

const shingle = legNumbers(describeLeg(readFileSync(new URL('shingle-leg-revised.yaml', examples), 'utf8')))
/** What the stand is to find out of the shingle carrier. */
const TRUE_STAGE = { pretension: 770, yearLoss: 0.22, axialRigidity: 0.82, springRate: 2.31, freeAngle: 13 }
const degree = Math.PI / 180

function secondStage(): void {
  const belt = shingle.belts.link as NonNullable<typeof shingle.belts.link>
  const [large, small] = [48, 40].map((teeth) => (teeth * belt.pitch) / (2 * Math.PI)) as [number, number]
  const span = Math.sqrt(shingle.links.upper.length ** 2 - (large - small) ** 2)
  const days = [0.042, 0.17, 0.5, 1, 3, 7, 14, 21, 30]
  const pitch = days.map((day) => {
    const left = 1 - (TRUE_STAGE.yearLoss * Math.max(0, Math.log10(24 * day))) / Math.log10(24 * 365.25)
    const heard = Math.sqrt((TRUE_STAGE.pretension * left) / belt.massPerLength) / (2 * span)
    return `${day},${read(heard, 0.4).toFixed(1)}`
  })
  write('beltPitch throughHip', 'plucked beside a telephone, always at 20 degC', 'time [day],pitch [Hz]', pitch, SHINGLE)
  const stiffness = (2 * TRUE_STAGE.axialRigidity * belt.axialRigidity * large ** 2) / span
  const torques = [0, 5, 10, 15, 20, 25, 20, 15, 10, 5, 0, -5, -10, -15, -20, -25, -20, -15, -10, -5, 0]
  const loop = torques.map((torque) => {
    const angle = (torque / stiffness + (belt.clearance / large) * Math.sign(torque)) / degree
    return `${torque},${read(angle + 0.4, 0.002).toFixed(4)}`
  })
  const story = 'pulley on the hip axis pinned, lath and water bag on the knee'
  write('windup throughHip', story, 'joint torque [N m],joint angle [deg]', loop, SHINGLE)
}

function spring(): void {
  const rows = [20, 40, 60, 80, 100, 120, 110, 90, 70, 50, 30].map((angle) => {
    const bare = -0.9 * Math.sin(angle * degree)
    const pushed = -TRUE_STAGE.springRate * Math.max(0, angle - TRUE_STAGE.freeAngle) * degree
    return `${angle},${read(bare + pushed, 0.03).toFixed(2)},${read(bare, 0.03).toFixed(2)}`
  })
  const columns = 'joint angle [deg],torque with spring [N m],torque without spring [N m]'
  write('springTorque knee', 'drive loose, luggage scale on a lath of 300 mm, from both sides', columns, rows, SHINGLE)
}

for (const log of [cordFriction, pretension, windup, heating, secondStage, spring]) log()
