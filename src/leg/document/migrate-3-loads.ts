import { type Document, present, sectionOf, si } from './old-sections.js'

/** The gaits of version 3, which stood in its usage. */
export function gaitsOf(usage: Document | undefined): unknown {
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

/** The load cases of version 3, which stood in its usage and environment. */
export function loadCasesOf(usage: Document = {}, environment: Document = {}): unknown {
  const sections = { airs: airsOf(usage, environment), ages: agesOf(usage), events: eventsOf(usage) }
  const all = Object.fromEntries(Object.entries(sections).filter(([, section]) => Object.keys(section).length > 0))
  return Object.keys(all).length === 0 ? undefined : all
}

const airOf = (temperature: unknown): Document | undefined => (temperature === undefined ? undefined : { temperature })

const airsOf = ({ shelfTemperature }: Document, { normalAir, hotAir, coldAir, wind }: Document): Document =>
  present({
    normal: normalAir === undefined && wind === undefined ? undefined : present({ temperature: normalAir ?? '20 degC', wind }),
    hot: airOf(hotAir),
    cold: airOf(coldAir),
    shelf: airOf(shelfTemperature),
  })

const agesOf = ({ days, shelfTime }: Document): Document =>
  present({
    season: days === undefined ? undefined : { time: typeof days === 'number' ? `${days} day` : days, daysWalked: days },
    aged: shelfTime === undefined ? undefined : { time: shelfTime },
  })

/** What is written, also where it is nothing, which is reported later. */
const or = (given: unknown, otherwise: string) => (given === undefined ? otherwise : given)

function eventsOf({ slope, hopHeight, dropHeight, landingTravel, touchDownHeight, stallTime }: Document): Document {
  const lands = [hopHeight, dropHeight, landingTravel, touchDownHeight].some((given) => given !== undefined)
  const landing = { travel: or(landingTravel, '60 mm'), touchDownHeight }
  return present({
    ...slopesOf(slope),
    hop: lands ? present({ kind: 'hop', height: or(hopHeight, '30 mm'), ...landing }) : undefined,
    drop: lands ? present({ kind: 'drop', height: or(dropHeight, '80 mm'), feet: 2, ...landing }) : undefined,
    stall: stallTime === undefined ? undefined : { kind: 'stall', gait: 'walk', time: stallTime },
  })
}

/** Up, down and across. A slope that cannot be read is handed on, so that it is named. */
function slopesOf(slope: unknown): Document {
  const angle = si('angle', slope)
  const walked = (angle: unknown) => ({ kind: 'slope', gait: 'walk', angle })
  if (angle === undefined) return slope === undefined ? {} : { slopeUp: walked(slope) }
  const degrees = (x: number) => `${Number(((x * 180) / Math.PI).toPrecision(12))} deg`
  return {
    slopeUp: walked(degrees(angle)),
    slopeDown: walked(degrees(-angle)),
    slopeAcross: { ...walked(degrees(angle)), direction: 'across' },
  }
}
