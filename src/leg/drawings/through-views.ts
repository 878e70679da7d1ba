import { type Circle, type Point, plain, tangent, View } from '../../drawing/index.js'
import type { BeltSetting } from '../plans/belt-setting.js'

/** Belt along the upper link, its pulleys by their pitch circles, mm. */
export interface BeltAlong {
  readonly hip: number
  readonly knee: number
  readonly link: number
  readonly adjustment: number
  readonly hipTeeth: number
  readonly kneeTeeth: number
  readonly behind: { readonly diameter: number; readonly name: string } | undefined
  readonly setting: BeltSetting
}

/** Both pulleys with the upper link straight down; the knee at both ends of its adjustment. */
export function beltAlongView({ hip: above, knee: below, link, adjustment, hipTeeth, kneeTeeth, behind, setting }: BeltAlong): View {
  const view = new View('From the robot’s left, hip above, knee below', { height: 400, template: true })
  const hip: Circle = { centre: [0, 0], radius: above }
  const knee: Circle = { centre: [0, -link], radius: below }
  if (behind !== undefined) {
    const { diameter, name } = behind
    view
      .circle({ centre: [0, 0], radius: diameter / 2 }, 'hidden')
      .label([diameter * 0.35, diameter * 0.357], `${name} Ø${plain(diameter)}`)
  }
  view.circle(hip, 'thick', 'tone').circle(knee, 'thick', 'tone').centre(hip, 1.15).centre(knee, 1.15)
  for (const sign of [1, -1])
    view.arc({ ...knee, centre: [0, -link + sign * adjustment] }, (sign * Math.PI) / 2 - 0.9, (sign * Math.PI) / 2 + 0.9, 'other')
  // Seen from the knee up, the span at the right pulls the knee to larger angles.
  const [low, high] = ([1, -1] as const).map((side) => tangent(knee, hip, side, false)) as [Span, Span]
  view.line(high, 'move').line(low, 'moveSecond').line([hip.centre, knee.centre], 'axis')
  const on = ([a, b]: Span, share: number): Point => [a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1])]
  const { belt, span, pitchAt, pretension } = setting
  return view
    .dimension(hip.centre, knee.centre, 'left')
    .dimension([0, -link - adjustment], [0, -link + adjustment], 'left', `±${plain(adjustment)}`)
    .label([above * 0.7, -above * 0.7], [`${hipTeeth} teeth`, `pitch Ø${plain(2 * above, 4)}`])
    .label(on(high, 0.62), ['pulls the knee to', 'larger angles'], { ink: 'move' })
    .label(on(low, 0.45), ['to smaller ones'], { ink: 'move' })
    .label(on(high, 0.35), [`span ${plain(1000 * span, 4)}`, `${plain(pitchAt(pretension), 4)} Hz`], { ink: 'move' })
    .label([below * 0.7, -link + below * 0.7], [`${kneeTeeth} teeth`, `pitch Ø${plain(2 * below, 4)}`])
    .label([below * 0.5, -link - below], [`belt ${belt.teeth} teeth`, `of ${plain(1000 * belt.pitch)}, ${plain(1000 * belt.width)} wide`], {
      end: 'none',
    })
}
type Span = readonly [Point, Point]
