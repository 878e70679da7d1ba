import { plain } from '../../drawing/index.js'
import { type DriveKind, driveKindOf, type Joint } from '../numbers.js'
import { canDiameter } from '../parts/motors/fields.js'
import { arrangement, centreDistance } from '../parts/transmission/cord/fields.js'
import { drumRadius, pinionRadius } from '../parts/transmission/cord/radii.js'
import { ratio, tensions } from '../parts/transmission/questions.js'
import { beltSetting } from '../plans/belt-setting.js'
import { gearSetting } from '../plans/gear-setting.js'
import type { Facts, Names } from './facts.js'
import { hasMotor } from './present.js'

/** The drive of a joint as the view of the whole leg shows it, mm. */
export interface SceneDrive {
  /** Part that turns with the joint, and its name. Of a drive on the axis of the joint, the motor. */
  readonly drum: number
  readonly name: string
  /** The same in one word, where two of them turn on the hip axis. */
  readonly turned: 'drum' | 'pulley' | 'wheel' | 'output'
  /** Radius of what turns with the motor, and the distance between the axes; both 0 for a drive on the axis of the joint. */
  readonly pinion: number
  readonly distance: number
  /** Whether cord or belt runs between them, and crosses. */
  readonly spans: boolean
  readonly crossed: boolean
  /** Diameter of the motor, where it is given. */
  readonly can: number | undefined
  /** Lines beside the drive: tensions of its spans, or its ratio. */
  readonly lines: readonly string[]
}

/** How each kind of drive is drawn; nothing where no motor drives the joint. */
const KINDS: { readonly [K in DriveKind]: (facts: Facts, names: Names, joint: Joint) => Omit<SceneDrive, 'can'> | undefined } = {
  cord: (facts, names, joint) => {
    const at = { joint }
    return {
      drum: facts.mm(drumRadius, at),
      name: 'drum',
      turned: 'drum',
      pinion: facts.mm(pinionRadius, at),
      distance: facts.mm(centreDistance, at),
      spans: true,
      crossed: facts.get(arrangement, at) === 'crossed',
      lines: spanLines(facts, names, joint),
    }
  },
  belt: (facts, names, joint) => {
    const { small, large, set } = beltSetting(facts.leg, joint)
    return {
      drum: 500 * large,
      name: 'belt pulley',
      turned: 'pulley',
      pinion: 500 * small,
      distance: 1000 * set,
      spans: true,
      crossed: false,
      lines: spanLines(facts, names, joint),
    }
  },
  gear: (facts, _, joint) => {
    const { wheel, pinion, standard } = gearSetting(facts.leg, joint)
    return {
      drum: 500 * wheel.pitch,
      name: 'gear wheel',
      turned: 'wheel',
      pinion: 500 * pinion.pitch,
      distance: 1000 * standard,
      spans: false,
      crossed: false,
      lines: [`${pinion.teeth} to ${wheel.teeth} teeth`],
    }
  },
  gearbox: (facts, _, joint) => ({ ...onAxis(facts, joint), name: 'gearbox', lines: [`${plain(facts.get(ratio, { joint }), 3)} : 1`] }),
  direct: (facts, _, joint) => ({ ...onAxis(facts, joint), name: 'direct drive', lines: [] }),
  held: () => undefined,
}

/** A motor on the axis of the joint itself. */
const onAxis = (facts: Facts, joint: Joint) => ({
  drum: facts.mm(canDiameter, { joint }) / 2,
  pinion: 0,
  distance: 0,
  spans: false,
  crossed: false,
  turned: 'output' as const,
})

/** Tensions of both spans of cord or belt, where they can be calculated. */
export function spanLines(facts: Facts, names: Names, joint: Joint): string[] {
  const found = facts.tried(tensions, { ...names, joint })
  return found === undefined ? [] : [`taut ${plain(found.taut, 3)} N`, `slack ${plain(found.slack, 3)} N`]
}

/** The drive of a joint; absent where no motor drives it. */
export function sceneDrive(facts: Facts, names: Names, joint: Joint): SceneDrive | undefined {
  const drawn = KINDS[driveKindOf(facts.leg.x, joint)](facts, names, joint)
  return drawn && { ...drawn, can: hasMotor(facts, joint) ? facts.mm(canDiameter, { joint }) : undefined }
}
