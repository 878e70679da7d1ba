import { type Circle, distance, type Point, tangent, type View } from '../../drawing/index.js'
import type { SceneDrive } from './scene-drive.js'

/** The spans of a drive: solid and dashed, heavy where the drive is what the check is about. */
export function spans(
  view: View,
  drive: Pick<SceneDrive, 'drum' | 'pinion' | 'spans' | 'crossed'>,
  torque: number,
  [centre, motor]: readonly [Point, Point],
  heavy: boolean,
): void {
  const [drum, pinion]: [Circle, Circle] = [
    { centre, radius: drive.drum },
    { centre: motor, radius: drive.pinion },
  ]
  if (!drive.spans || distance(centre, motor) <= drive.drum + drive.pinion) return
  // A positive torque of the drive turns the drum counter-clockwise: the span on its right is then taut.
  const taut = torque > 0 ? -1 : 1
  for (const side of [1, -1] as const) {
    const isTaut = side === taut
    view.line(tangent(drum, pinion, side, drive.crossed), heavy ? (isTaut ? 'bad' : 'badSecond') : isTaut ? 'move' : 'moveSecond')
  }
}
