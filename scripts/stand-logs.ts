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

function write(log: string, story: string, columns: string, rows: readonly string[]): void {
  const head = [
    '# INVENTED LOG for the example: made by a script from the model with other values and scatter; nothing was measured.',
    '# Mudflat walker, left front leg, revised design',
    `# log: ${log}`,
    `# ${story}`,
    columns,
  ]
  writeFileSync(new URL(`stand-logs/${log.replace(' ', '-')}.csv`, examples), `${[...head, ...rows].join('\n')}\n`)
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

for (const log of [cordFriction, pretension, windup, heating]) log()
