import type { Assessment } from '../result.js'
import { type Block, points, section, text } from './blocks.js'
import { fieldName } from './fields-list.js'

/** Values to check before the verdict is relied on; nothing where none is unusual. */
export const unusualSection = ({ unusual }: Assessment): Block[] =>
  unusual.length === 0
    ? []
    : [
        section('unusual', 'Values to check first', [
          text('These values are accepted, but no usual leg has them. Check unit and digits: the verdict is as right as they are.'),
          points(
            unusual.map(
              ({ path, given, others, why }) =>
                `${fieldName(path)}, ${given}: ${why}.${others.length === 0 ? '' : ` The slip may be in ${others.map(fieldName).join('; ')} as well.`}`,
            ),
          ),
        ]),
      ]
