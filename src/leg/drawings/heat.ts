import { barBlock, type Drawing, Figure, plain } from '../../drawing/index.js'
import { type DrivenJoint, jointWords } from '../numbers.js'
import { airTemperature } from '../parts/load/fields.js'
import * as motor from '../parts/motors/fields.js'
import { heat } from '../parts/motors/heat.js'
import { allowableTemperature } from '../parts/plates/checks.js'
import { type Facts, resultSentence } from './facts.js'
import type { Names } from './leg-values.js'
import { hasMotor } from './present.js'
import { amount, answerOf, celsius, checked, resultLines } from './words.js'

const CHECKS = ['motor.plate', 'motor.winding', 'motor.magnet', 'motor.touch', 'motor.runaway']

/** Note on a motor whose temperatures never settle. */
const ASSUMED_NOTE = 'The temperatures of winding, mount and can are assumed: where every film formula ends.'

/** Temperatures along the heat path of a motor in the load case that is hardest for it. */
export function heatDrawing(facts: Facts, joint: DrivenJoint): Drawing | undefined {
  if (!hasMotor(facts, joint)) return undefined
  const worst = facts.worst(CHECKS, joint)
  if (worst === undefined) return undefined
  const at = { ...facts.case(worst.case), joint }
  const state = facts.tried(heat, at)
  if (state === undefined) return undefined
  const figure = new Figure({
    id: `heat-${joint}`,
    title: `Temperatures along the heat path of the motor of the ${jointWords(joint)}`,
    ...answerOf(`Heat of the ${jointWords(joint)}’s motor`, worst),
  })
  figure.text(`${worst.caseTitle}.`)
  const air = celsius(facts.get(airTemperature, at))
  if (state.unsettled !== undefined) figure.text(`No steady temperature: ${state.unsettled}. ${ASSUMED_NOTE}`, 'bad')
  const stations = stationsOf(facts, at, state, air)
  const top = Math.max(air + 1, ...stations.map((station) => station.at)) + 4
  figure.block(`Degrees Celsius, from the air at ${plain(air, 3)} °C up`, (y) =>
    barBlock(
      {
        from: air,
        to: top,
        bars: stations.map((station) => ({
          name: station.limit === undefined ? station.name : `${station.name}; limit ${plain(station.limit, 3)} °C`,
          from: air,
          to: station.at,
          text: `${plain(station.at, 3)} °C`,
          ...(station.limit !== undefined && station.at > station.limit ? { line: 'bad' as const, ink: 'bad' as const } : {}),
        })),
      },
      y,
    ),
  )
  figure.text(
    `Copper loss ${plain(state.loss, 3)} W, iron and bearings ${plain(state.ironLoss, 3)} W. Winding to mounting face ${plain(facts.get(motor.windingToMount, at), 3)} K/W, to the can ${plain(facts.get(motor.mountToCan, at), 3)} K/W more.`,
  )
  figure.results(resultLines(facts, CHECKS, joint))
  figure
    .say(
      ...(state.unsettled === undefined ? [] : [ASSUMED_NOTE]),
      `${worst.caseTitle}: ${stations.map((station) => `${station.name} ${plain(station.at, 3)} °C`).join(', ')}.`,
      ...facts.checks(CHECKS, joint).slice(0, 1).map(resultSentence),
    )
    .rows(
      ...stations.flatMap((station) => [
        amount(station.name, station.at, '°C', state.unsettled === undefined || station.name === 'air' ? 'result' : 'assumed'),
        ...(station.limit === undefined ? [] : [amount(`limit of the ${station.name}`, station.limit, '°C', 'standard')]),
      ]),
      amount('copper loss', state.loss, 'W'),
      amount('loss in iron and bearings', state.ironLoss, 'W'),
      ...facts.checks(CHECKS, joint).map(checked),
    )
  return figure.done()
}

/** The stations of the heat path with their limits, °C. */
function stationsOf(
  facts: Facts,
  at: Names,
  state: { readonly winding: number; readonly mount: number; readonly can: number },
  air: number,
) {
  const limit = (kelvin: number) => celsius(kelvin)
  const allowed = facts.get(allowableTemperature, at)
  return [
    { name: 'winding, hottest phase', at: celsius(state.winding), limit: limit(facts.get(motor.windingLimit, at)) },
    { name: 'mounting face and plate at the ring', at: celsius(state.mount), limit: Number.isFinite(allowed) ? limit(allowed) : undefined },
    { name: 'can and magnets', at: celsius(state.can), limit: limit(facts.get(motor.magnetLimit, at)) },
    { name: 'air', at: air, limit: undefined },
  ]
}
