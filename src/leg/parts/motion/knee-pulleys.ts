import { value } from '../../run/index.js'
import { efficiency, signedRatio } from '../transmission/questions.js'
import { stageIn } from '../transmission/through-hip/stage.js'

/** Turns of the pulley on the hip axis for one of the knee, and what is lost between them; absent without belt or cord along the upper link. */
export const kneePulleys = value('motion.kneePulleys', [], (use) => {
  const joint = stageIn(use)
  return joint === undefined ? undefined : { ratio: use.at(signedRatio, { joint }), efficiency: use.at(efficiency, { joint }) }
})
