import type { Note } from '../units/index.js'
import type { Material } from './record.js'
import { ROOM } from './temperature-factors.js'
import { shiftEndOf, timeAtRoom } from './warm-time.js'

const HOUR = 3600
const YEAR = 31557600
/** Longest time under load that tables of creep and creep rupture commonly reach. */
const LONGEST_TEST_HOURS = 1000

const two = (x: number) => Number(x.toPrecision(2))

/** Hours or years, whichever reads well. */
const timeText = (seconds: number): string => (seconds < YEAR ? `${two(seconds / HOUR)} h` : `${two(seconds / YEAR)} years`)

/** How much faster time runs at a temperature, from the low and the high end of the activation energy, in words. */
function hourText(material: Material, temperature: number): string | undefined {
  const energy = material.activationEnergy
  if (energy === undefined) return undefined
  const highest = shiftEndOf(material, 'typical')
  const hours = (e: number) => two(timeAtRoom(1, temperature, e, highest))
  return `an hour at this temperature ages the polymer like ${hours(energy.low)} to ${hours(energy.high)} hours at 23 °C`
}

interface Load {
  readonly temperature: number
  readonly duration: number
  readonly cycles?: number | undefined
}

/** What a result of a polymer under load for long must carry: how far its data reach, and how heat was counted. */
function timeNotes(material: Material, { temperature, duration }: Load, say: (text: string) => void): void {
  const energy = material.activationEnergy
  const longest = material.creepTestedHours ?? LONGEST_TEST_HOURS
  const counted = timeAtRoom(duration, temperature, energy?.si ?? 0, shiftEndOf(material, 'typical'))
  if (counted > longest * HOUR * (1 + 1e-9)) {
    const like = counted > duration * 1.01 ? ` (${timeText(duration)} at this temperature count as ${timeText(counted)} at 23 °C)` : ''
    const tests = material.creepTestedHours === undefined ? `usual tests, ${longest} h` : `the longest creep test read, ${longest} h`
    say(`creep and rupture are extrapolated beyond ${tests}${like}; ageing of a fresh print is not included`)
  }
  if (temperature > ROOM + 5 && duration > HOUR) {
    const text = hourText(material, temperature)
    say(text ?? 'time under load counts as at 23 °C: no activation energy is known, although heat makes creep faster')
  }
}

/** Notes of an allowable stress. */
export function allowableNotes(
  material: Material,
  load: Load,
  state: 'usable' | 'aboveLimit' | 'aboveTable',
  withoutStrain: boolean,
): Note[] {
  const notes: Note[] = []
  const say = (text: string) => notes.push({ formula: 'materials.allowableStress', text })
  for (const doubt of material.doubts ?? []) say(doubt)
  const polymer = !['metal', 'magnet'].includes(material.family)
  if (state === 'aboveLimit') say(`${material.name} may carry no continuous load here: within 15 K of its glass transition or above`)
  if (state === 'aboveTable') say(`no strength is known for ${material.name} at this temperature`)
  if ((load.cycles ?? 1) > 1e7) say('more than ten million cycles: the S-N line is extrapolated')
  if (polymer && state === 'usable') timeNotes(material, load, say)
  if (polymer && withoutStrain && load.duration > HOUR)
    say(`${material.name} has no design strain in the table: rupture alone is considered`)
  return notes
}

/** Notes of a modulus. */
export function modulusNotes(material: Material, load: Load, usable: boolean, transition: number | undefined): Note[] {
  const notes: Note[] = []
  const say = (text: string) => notes.push({ formula: 'materials.designModulus', text })
  for (const doubt of material.doubts ?? []) say(doubt)
  if (!usable) say(`${material.name} has no stiffness to count on at this temperature`)
  if (['metal', 'magnet'].includes(material.family) || !usable) return notes
  timeNotes(material, load, say)
  // Where the data at 23 °C are of a glass, they do not describe the rubber above the transition.
  const dry = material.glassTransitionTemperature?.si ?? 0
  if (material.activationEnergy !== undefined && transition !== undefined && dry > ROOM && load.temperature > transition)
    say('above the glass transition: the shift of time by Arrhenius is outside its range')
  return notes
}
